import { modelOf } from '../../core/appraise.ts';
import type { Check } from '../../core/checks/check.ts';
import type { Situation } from '../../core/loads/situation.ts';
import type { Model } from '../../core/model.ts';
import { demoDocument } from '../geometry/demo-document.ts';

/** The invented document with changes laid on it, with geometry, mass and loads derived. */
export const demoModel = (...changes: unknown[]): Model => modelOf(demoDocument(...changes));

/** The situation of this id, or the first one. */
export function situationOf(model: Model, id?: string): Situation {
  const found =
    id === undefined ? model.loads.situations[0] : model.loads.situations.find((situation) => situation.id === id);
  if (!found) throw new Error(`no situation ${id}: ${model.loads.situations.map((s) => s.id).join(', ')}`);
  return found;
}

/** What a check's input reads at a place. */
export function reads(
  check: Check,
  symbol: string,
  model: Model,
  place: string,
  situation: Situation = situationOf(model),
): number {
  const value = check.inputs[symbol]!.read(model, place, situation);
  if (typeof value !== 'number') throw new Error(`${symbol} is missing: ${value.missing}`);
  return value;
}

/** What a check's input says is missing at a place. */
export function missingFrom(
  check: Check,
  symbol: string,
  model: Model,
  place: string,
  situation: Situation = situationOf(model),
): string {
  const value = check.inputs[symbol]!.read(model, place, situation);
  if (typeof value === 'number') throw new Error(`${symbol} is ${value}`);
  return value.missing;
}
