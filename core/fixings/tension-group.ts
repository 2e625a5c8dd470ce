import { refusal } from '../refusal.ts';
import { centroidOf, type BoltPoint } from './eccentric-group.ts';

/** Tension of each bolt of an equal group under a force F (N) square to its plane, at a point of the plane (m):
 *    R_i = F (1 / n + α x_i + β y_i),   x, y from the centroid, with
 *    α Σx² + β Σxy = e_x,   α Σxy + β Σy² = e_y
 *  Refuses a force beside bolts that all stand on one line: the plate turns about that line. Error: exact for a rigid
 *  plate on equal linear bolts; a limp plate puts more on the bolts beside the force.
 *  Source: J. E. Shigley, Mechanical Engineering Design, bolted joints in tension under a moment (elastic group). */
export function tensionGroup(bolts: readonly BoltPoint[], F: number, at: BoltPoint): readonly number[] {
  const [cx, cy] = centroidOf(bolts);
  const own = bolts.map(([x, y]) => [x - cx, y - cy] as const);
  const sum = (of: (x: number, y: number) => number): number => own.reduce((s, [x, y]) => s + of(x, y), 0);
  const [xx, xy, yy] = [sum((x) => x * x), sum((x, y) => x * y), sum((_, y) => y * y)];
  const [ex, ey] = [at[0] - cx, at[1] - cy];
  const n = bolts.length;
  if (F === 0) return bolts.map(() => 0);
  const determinant = xx * yy - xy * xy;
  // Bolts on one line have no determinant; what is left of it by rounding is far below this part of its scale.
  if (determinant <= 1e-12 * (xx + yy) ** 2) {
    const along = xx + yy;
    const off =
      along === 0 ? Math.hypot(ex, ey) : Math.hypot(ex - (xx * ex + xy * ey) / along, ey - (xy * ex + yy * ey) / along);
    if (off > 1e-9 * Math.hypot(ex, ey, Math.sqrt(along)))
      throw refusal({
        what: 'the bolts that are left stand on one line, and the panel turns about it',
        where: { field: 'bolts' },
        mend: 'Bolt the panel on three sides at least, or keep a lost row from happening',
      });
    const slope = along === 0 ? 0 : 1 / along;
    return own.map(([x, y]) => F * (1 / n + slope * (x * ex + y * ey)));
  }
  const α = (yy * ex - xy * ey) / determinant;
  const β = (xx * ey - xy * ex) / determinant;
  return own.map(([x, y]) => F * (1 / n + α * x + β * y));
}
