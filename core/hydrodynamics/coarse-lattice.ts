import type { PlateDocument } from '../document/schema.ts';
import { nearImages } from '../water/gap-and-rim.ts';
import { outlineOf, type Plan } from '../water/lattice/plan.ts';
import { plateLattice, plateProblem, type PlateLattice } from '../water/lattice/plate-lattice.ts';
import { solvePair } from '../water/lattice/solve-pair.ts';
import { wellPlaced } from '../water/lattice/well-placed.ts';

/** Cells along the longer side for what is compared with each other only. */
const cells = 48;

/** The lattice for curves, maps and gains of a plan in a document's water: with the surface and the bed where they are near. */
export function coarseLattice(
  { water, hydrodynamics }: Pick<PlateDocument, 'water' | 'hydrodynamics'>,
  plan: Plan,
): PlateLattice {
  const { x0, x1, y0, y1 } = outlineOf(plan);
  const aboveBed = hydrodynamics?.bed ? hydrodynamics.bed.si - water.depth.si : null;
  return plateLattice(plan, wellPlaced(plan, cells), nearImages(Math.max(x1 - x0, y1 - y0), water.depth.si, aboveBed));
}

/** Added mass in potential flow of a plan and of its solid outline on one lattice, kg: not extrapolated, for what is compared with each other. */
export function massesOn(
  { frame, lattice }: PlateLattice,
  plan: Plan,
  density: number,
): { still: number; solid: number } {
  const ours = plateProblem(plan, frame);
  const full = plateProblem({ rectangles: [outlineOf(plan)], holes: [], thickness: plan.thickness }, frame);
  const found = solvePair(lattice, [
    { D: ours.D, v: ours.grip },
    { D: full.D, v: full.grip },
  ]);
  const [still, solid] = [ours, full].map(({ grip }, i) => density * frame.h ** 2 * grip.reduce((sum, part, k) => sum + part * found[i]!.mu[k]!, 0)) as [number, number]; // prettier-ignore
  return { still, solid };
}
