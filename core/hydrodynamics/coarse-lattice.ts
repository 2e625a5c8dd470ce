import type { PlateDocument } from '../document/schema.ts';
import { nearImages } from '../water/gap-and-rim.ts';
import { outlineOf, type Plan } from '../water/lattice/plan.ts';
import { plateLattice, type PlateLattice } from '../water/lattice/plate-lattice.ts';
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
