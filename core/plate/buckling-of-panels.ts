import type { Finding } from '../finding.ts';
import { significant } from '../quantity/format-quantity.ts';
import { activeSupports } from './results/active-supports.ts';
import { factoriser, type ReadyPlate, type SolvedLoading } from './solve-plate.ts';
import type { MakeKernels } from '../solve/sparse/front-kernels.ts';
import { geometricElements, structureBuckling, type BucklingSet } from '../solve/structure/buckling-of-structure.ts';
import { modeSupport } from '../solve/structure/modes-support.ts';

export interface PanelBuckling extends BucklingSet {
  readonly findings: readonly Finding[];
  readonly cautions: readonly string[];
}

/** Factors by which a solved loading may grow before a panel buckles under its membrane forces, on the supports that carried
 *  it and with the contact that it settled in. Yields the solves done so far. */
export function* panelBuckling(
  plate: ReadyPlate,
  solved: SolvedLoading,
  { count, kernels }: { readonly count: number; readonly kernels?: MakeKernels },
): Generator<number, PanelBuckling> {
  const { structure, elements } = plate;
  const { parts, active } = activeSupports(plate, solved);
  const { closed, u } = solved.answer;
  const support = modeSupport(structure, elements, factoriser(kernels), { supports: active.map((i) => parts[i]!), closed });
  const set = yield* structureBuckling(support, geometricElements(plate, u), count);
  const [lowest] = set.modes;
  const place = solved.situation.id;
  const findings: Finding[] = [];
  if (lowest && lowest.factor < 1)
    findings.push({
      id: 'panel-buckles',
      place: `${place}, ${lowest.most.kind} ${lowest.most.id}`,
      text: `${solved.situation.title}: ${lowest.most.kind} ${lowest.most.id} buckles at ${significant(lowest.factor, 3)} times this loading, by elastic theory.`,
      mend: 'Take a thicker panel or nearer tubes, or judge the panel with large deflections.',
    });
  if (!set.converged)
    findings.push({
      id: 'buckling-not-converged',
      place,
      text: `${solved.situation.title}: the buckling factors did not settle${lowest ? `: the lowest stands at ${significant(lowest.factor, 3)}` : ''}.`,
      mend: 'Ask for fewer factors, or take a coarser mesh.',
    });
  return {
    ...set,
    findings,
    cautions: [
      'Elastic and from a flat start: no yielding, no first bow, no stress from welding. A factor is no resistance.',
      'Contact that was closed stays closed while the panel buckles, and a bulge finds no tube where it was open.',
    ],
  };
} // prettier-ignore
