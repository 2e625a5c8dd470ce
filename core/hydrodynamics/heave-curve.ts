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

/** The point at one amplitude, m, or nothing where its losses did not settle. From potential flow at once the iteration would
 *  take longer: it starts at a tenth of it. */
export const heaveAt = (plan: Plan, lattice: PlateLattice, density: number, amplitude: number, solid: number): CurvePoint | undefined =>
  heaveCurve(plan, lattice, density, [amplitude / 10, amplitude], solid).find(({ point }) => point.amplitude === amplitude)?.point; // prettier-ignore

/** A point of a curve on which drag is known everywhere. */
export interface KnownPoint extends CurvePoint {
  readonly drag: number;
}

/** The points of a curve at which drag is known. */
export const knownPoints = (curve: readonly CurvePoint[]): readonly KnownPoint[] =>
  curve.flatMap((point) => (point.drag === null ? [] : [{ ...point, drag: point.drag }]));

/** Straight between two points, a part of the way. */
export const between = (a: KnownPoint, b: KnownPoint, part: number): KnownPoint => ({
  amplitude: a.amplitude + part * (b.amplitude - a.amplitude),
  addedMass: a.addedMass + part * (b.addedMass - a.addedMass),
  drag: a.drag + part * (b.drag - a.drag),
});
