import { refusal } from '../refusal.ts';
import type { BoltPoint, InPlaneForce } from './eccentric-group.ts';

const { hypot } = Math;

/** A straight run of weld in the plane of its group, m. */
export type WeldLine = readonly [from: BoltPoint, to: BoltPoint];

/** Length L (m), centroid (m) and second moments about it (m³) of lines of weld: those of a section of unit throat. */
export interface WeldSection {
  readonly L: number;
  readonly centroid: BoltPoint;
  readonly xx: number;
  readonly yy: number;
  readonly xy: number;
}

/** Refuses a group without a run. Source: integrals over a line, derived by hand. */
export function weldSection(lines: readonly WeldLine[]): WeldSection {
  const L = lines.reduce((sum, line) => sum + lengthOf(line), 0);
  if (!(L > 0))
    throw refusal({ what: 'no weld is left in the group', where: { field: 'welds' }, mend: 'Give it a run' });
  const mean = (of: (line: WeldLine) => number): number => lines.reduce((s, line) => s + lengthOf(line) * of(line), 0) / L; // prettier-ignore
  const [cx, cy] = [mean(([p, q]) => (p[0] + q[0]) / 2), mean(([p, q]) => (p[1] + q[1]) / 2)];
  const second = (of: (x: BoltPoint) => number, and: (x: BoltPoint) => number): number =>
    L * mean(([p, q]) => (2 * of(p) * and(p) + of(p) * and(q) + of(q) * and(p) + 2 * of(q) * and(q)) / 6);
  const [x, y] = [(p: BoltPoint) => p[0] - cx, (p: BoltPoint) => p[1] - cy];
  return { L, centroid: [cx, cy], xx: second(x, x), yy: second(y, y), xy: second(x, y) };
}

export const lengthOf = ([p, q]: WeldLine): number => hypot(q[0] - p[0], q[1] - p[1]);

/** Largest force per length of a group of equal welds under a force in its plane, N/m:
 *    f = F / L + M (-y, x) / J,   J = ∫ (x² + y²) dl,   x, y and M from the centroid; largest at an end of a run
 *  Refuses an empty group. Error: exact for rigid parts on linear welds; below what the instantaneous centre finds.
 *  Source: Shigley, Mechanical Engineering Design, "welded joints in torsion"; EN 1993-1-8:2005, 4.9(1), elastic. */
export function largestInWeldGroup(lines: readonly WeldLine[], { Fx, Fy, at }: InPlaneForce): number {
  const { L, centroid, xx, yy } = weldSection(lines);
  const [cx, cy] = centroid;
  const turn = ((at[0] - cx) * Fy - (at[1] - cy) * Fx) / (xx + yy);
  return Math.max(...lines.flat().map(([x, y]) => hypot(Fx / L - turn * (y - cy), Fy / L + turn * (x - cx))));
}

/** Largest force per length, square to the plane, of such a group under a force F (N) square to it at a point, N/m:
 *    f = F (1 / L + α x + β y),   α ∫x² + β ∫xy = e_x,   α ∫xy + β ∫y² = e_y
 *  Refuses a group on one line: the part turns about it. Error: exact for rigid parts on linear welds.
 *  Source: Shigley, Mechanical Engineering Design, "welded joints in bending" (a section of unit throat). */
export function largestAcrossWeldGroup(lines: readonly WeldLine[], F: number, at: BoltPoint): number {
  const { L, centroid, xx, yy, xy } = weldSection(lines);
  const [cx, cy] = centroid;
  const [ex, ey] = [at[0] - cx, at[1] - cy];
  const determinant = xx * yy - xy * xy;
  // Runs on one line have none; what is left of it by rounding is far below this part of its scale.
  if (determinant <= 1e-12 * (xx + yy) ** 2)
    throw refusal({
      what: 'the welds that are left lie on one line, and the panel turns about it',
      where: { field: 'welds' },
      mend: 'Weld it on three sides at least, or prop it until its other side is welded',
    });
  const [α, β] = [(yy * ex - xy * ey) / determinant, (xx * ey - xy * ex) / determinant];
  return Math.max(...lines.flat().map(([x, y]) => Math.abs(F * (1 / L + α * (x - cx) + β * (y - cy)))));
}
