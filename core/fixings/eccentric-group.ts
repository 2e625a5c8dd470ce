import { refusal } from '../refusal.ts';

const { hypot } = Math;

/** A place in the plane of a group of bolts, m. */
export type BoltPoint = readonly [x: number, y: number];

/** A force in the plane of a group of bolts (N) and a point on its line (m). */
export interface InPlaneForce {
  readonly Fx: number;
  readonly Fy: number;
  readonly at: BoltPoint;
}

/** Shear force of each bolt of an equal group under a force in its plane, N, as [Fx, Fy] on the bolt:
 *    F_i = F / n + M (-y_i, x_i) / Σ (x² + y²),   x, y and M from the centroid of the group
 *  Refuses an empty group, and a moment on bolts that all stand on one place. Error: exact for a rigid plate on equal
 *  linear bolts; on the safe side against the instantaneous centre of rotation where there are three bolts or more.
 *  Source: J. E. Shigley, Mechanical Engineering Design, "shear joints with eccentric loading". */
export function eccentricGroup(
  bolts: readonly BoltPoint[],
  { Fx, Fy, at }: InPlaneForce,
): readonly (readonly [number, number])[] {
  const [cx, cy] = centroidOf(bolts);
  const n = bolts.length;
  const polar = bolts.reduce((sum, [x, y]) => sum + (x - cx) ** 2 + (y - cy) ** 2, 0);
  const M = (at[0] - cx) * Fy - (at[1] - cy) * Fx;
  if (polar === 0 && M !== 0)
    throw refusal({
      what: 'the bolts all stand on one place and cannot carry a moment',
      where: { field: 'bolts' },
      mend: 'Give bolts at two places at least',
    });
  const turn = polar === 0 ? 0 : M / polar;
  return bolts.map(([x, y]) => [Fx / n - turn * (y - cy), Fy / n + turn * (x - cx)]);
}

/** The largest force of a bolt in such a group, N. */
export const largestInGroup = (bolts: readonly BoltPoint[], force: InPlaneForce): number =>
  Math.max(...eccentricGroup(bolts, force).map(([x, y]) => hypot(x, y)));

/** Centre of equal bolts, m. Refuses an empty group. */
export function centroidOf(bolts: readonly BoltPoint[]): BoltPoint {
  const n = bolts.length;
  if (n === 0)
    throw refusal({ what: 'no bolt is left in the group', where: { field: 'bolts' }, mend: 'Give it bolts' });
  return [bolts.reduce((sum, [x]) => sum + x, 0) / n, bolts.reduce((sum, [, y]) => sum + y, 0) / n];
}
