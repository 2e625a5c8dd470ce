import { rowsLeft, type BoltRow, type BoltRows } from './rows-left.ts';
import { tensionGroup } from './tension-group.ts';

/** Largest tension in N of the bolts that are left when one row round a field is lost, corners with it: the force
 *  F = q (a + 2 ix)(b + 2 iy) at the field's centre on the rest as an elastic group, the worst of the four rows.
 *  a, b, ix, iy in m (rows, and the plate's overhang beyond them), q in Pa. Zero without pressure.
 *  Refuses what is left on one line: the panel turns about it. Error: see `tensionGroup` (rigid plate).
 *  Source: elastic group, J. E. Shigley, Mechanical Engineering Design; the lost row is a stated accident. */
export function rowLostTension(
  rows: BoltRows,
  { q, ix, iy }: { readonly q: number; readonly ix: number; readonly iy: number },
): number {
  if (q === 0) return 0;
  const { a, b } = rows;
  const F = Math.abs(q) * (a + 2 * ix) * (b + 2 * iy);
  const largest = (lost: BoltRow): number => Math.max(...tensionGroup(rowsLeft(rows, lost), F, [a / 2, b / 2]));
  // The field is symmetric: a row of low x or y does as its opposite.
  return Math.max(largest('xHigh'), largest('yHigh'));
}
