import { edgeDrag } from '../water/edge-drag.ts';
import { gapDrag, rimPart } from '../water/gap-and-rim.ts';
import { outlineOf, type Plan } from '../water/lattice/plan.ts';
import type { PlateLattice } from '../water/lattice/plate-lattice.ts';
import { heaveByAmplitude, type HeaveAt } from '../water/moving-plate.ts';

/** At one amplitude, m: added mass in kg, drag coefficient of gaps and edges on the outline; null outside the edges' tests. */
export interface CurvePoint {
  readonly amplitude: number;
  readonly addedMass: number;
  readonly drag: number | null;
}

/** Added mass and drag of a plan at rising amplitudes, m; those whose losses did not settle are left out. solid: added mass
 *  of the solid plate of the same outline, kg. Beside each point the solution that it is of. */
export function heaveCurve(
  plan: Plan,
  lattice: PlateLattice,
  density: number,
  amplitudes: readonly number[],
  solid: number,
): readonly { readonly point: CurvePoint; readonly heave: HeaveAt }[] {
  const { x0, x1, y0, y1 } = outlineOf(plan);
  const [a, b] = [Math.min(x1 - x0, y1 - y0), Math.max(x1 - x0, y1 - y0)];
  return heaveByAmplitude(plan, lattice, density, amplitudes)
    .filter(({ settled }) => settled)
    .map((heave) => {
      const { amplitude, addedMass, damping } = heave;
      const edge = edgeDrag((2 * Math.PI * amplitude) / a, b / a);
      const drag = gapDrag(damping, density, a * b, amplitude) + edge.best * rimPart(addedMass, damping, solid);
      return { point: { amplitude, addedMass, drag: edge.outside ? null : drag }, heave };
    });
}
