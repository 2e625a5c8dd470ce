import { appraise, asksSolver } from '../../core/appraise.ts';
import type { RawDocument } from '../../core/document/read-document.ts';
import type { PlateDocument } from '../../core/document/schema.ts';
import type { SolvedForces } from '../../core/loads/solved-forces.ts';
import type { Model } from '../../core/model.ts';
import { solvedForcesOf } from '../../core/plate/solved-forces-of.ts';

/** Hears what is being done, where it takes long. */
export interface Heard {
  readonly err: (text: string) => void;
}

/** Forces of the whole plate under an option, where its document asks for them or `always` does; tells what is done. */
export function solvedFor(
  raw: RawDocument,
  document: PlateDocument,
  option: string | null,
  always: boolean,
  on: Heard,
): SolvedForces | undefined {
  const { model } = appraise(raw, document, option);
  if (!always && !asksSolver(model.document)) return undefined;
  return solved(model, option ?? 'base', on);
}

function solved(model: Model, option: string, on: Heard): SolvedForces {
  on.err(`Solving the whole plate of “${option}” …`);
  const work = solvedForcesOf(model);
  let said = '';
  for (let step = work.next(); ; step = work.next()) {
    if (step.done) return step.value;
    // contact and buckling take many steps each: a line for each loading is enough
    const what = step.value.what.replace(/(contact|buckling).*$/, '$1');
    if (what !== said) on.err(`  ${(said = what)}`);
  }
}
