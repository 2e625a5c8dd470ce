import { rowsLeft, type BoltRow, type BoltRows } from './rows-left.ts';
import { largestInGroup } from './eccentric-group.ts';

/** Largest shear in N of the bolts that are left when one row round a field is lost and the panel hangs on edge: its
 *  weight W (N) acts in the plane at the field's centre, along x or along y, beside the centroid of what is left; the
 *  worst of rows and directions. Source: elastic group, see `eccentricGroup`. */
export function rowLostInPlane(rows: BoltRows, W: number): number {
  const at = [rows.a / 2, rows.b / 2] as const;
  const largest = (lost: BoltRow): number => {
    const left = rowsLeft(rows, lost);
    return Math.max(largestInGroup(left, { Fx: W, Fy: 0, at }), largestInGroup(left, { Fx: 0, Fy: W, at }));
  };
  return Math.max(largest('xHigh'), largest('yHigh'));
}
