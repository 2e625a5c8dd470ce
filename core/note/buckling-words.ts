import type { SolvedForces } from '../loads/solved-forces.ts';
import type { Model } from '../model.ts';
import { significant } from '../quantity/format-quantity.ts';
import { situationWords } from './situation-words.ts';

/** The lowest buckling factor of all cases in a sentence, with its case and part. */
export function bucklingWords(model: Model, { situations }: SolvedForces): string {
  const found = Object.entries(situations).flatMap(([id, { buckling }]) => (buckling ? [{ id, ...buckling }] : []));
  const lost = Object.keys(situations).length - found.length;
  const unsettled = lost > 0 ? ` In ${lost} ${lost === 1 ? 'case' : 'cases'} the factors did not settle.` : '';
  const lowest = found.filter(({ part }) => part !== '').sort((a, b) => a.factor - b.factor)[0];
  if (!lowest)
    return `Nothing buckles up to ${found[0]?.within ?? 0} times any loading, by elastic theory.${unsettled}`;
  return `Lowest buckling factor ${significant(lowest.factor, 3)}, at ${lowest.part} in ${situationWords(model, lowest.id)}, by elastic theory.${unsettled}`;
}
