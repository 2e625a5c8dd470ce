import { modelOf } from '../../core/appraise.ts';
import { designBasis } from '../../core/catalogue/design-basis.ts';
import type { Check } from '../../core/checks/check.ts';
import { readDocument } from '../../core/document/read-document.ts';
import { startingDocument } from '../../core/document/starting-document.ts';
import type { Situation } from '../../core/loads/situation.ts';
import type { Model } from '../../core/model.ts';

type Change = (document: ReturnType<typeof startingDocument>) => void;

/** The starting document, changed, with geometry, mass and loads derived. */
export function modelWith(change: Change = () => {}, units: 'metric' | 'inch' = 'metric'): Model {
  const document = structuredClone(startingDocument(units));
  change(document);
  return modelOf(readDocument(document));
}

/** The same model under the other kind of basis, its loads as they were. */
export const allowable = (model: Model): Model => ({ ...model, basis: designBasis('AISC 360 ASD', []) });

/** Changes the fixing of the bolted design. */
export const fixing =
  (changes: Record<string, unknown>): Change =>
  (document) =>
    Object.assign(document.designs.bolted.fixing, changes);

/** Changes the bolted design itself. */
export const design =
  (changes: Record<string, unknown>): Change =>
  (document) =>
    Object.assign(document.designs.bolted, changes);

export function situationOf(
  model: Model,
  loadCase: Situation['loadCase'],
  direction: Situation['direction'],
): Situation {
  const found = model.loads.situations.find((s) => s.loadCase === loadCase && s.direction === direction);
  if (!found)
    throw new Error(`no ${loadCase} ${direction} among ${model.loads.situations.map(({ id }) => id).join(', ')}`);
  return found;
}

/** What an input reads in the model: a number, or the text of what is missing. */
export function readOf(check: Check, symbol: string, model: Model, bay: string, situation: Situation): number | string {
  const value = check.inputs[symbol]!.read(model, bay, situation);
  return typeof value === 'number' ? value : value.missing;
}
