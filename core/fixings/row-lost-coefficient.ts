import { boltGroupCoefficient } from './bolt-group-coefficient.ts';
import { rowsLeft, type BoltRow, type BoltRows } from './rows-left.ts';

/** Number of bolts that those left are worth when one row round a field is lost and the panel hangs on edge: its weight
 *  acts in the plane at the field's centre, along x or along y; the least of rows and directions, by the instantaneous
 *  centre. Source and error: see `boltGroupCoefficient`. */
export function rowLostCoefficient(rows: BoltRows): number {
  const at = [rows.a / 2, rows.b / 2] as const;
  const least = (lost: BoltRow): number => {
    const left = rowsLeft(rows, lost);
    return Math.min(
      boltGroupCoefficient(left, { direction: [1, 0], at }),
      boltGroupCoefficient(left, { direction: [0, 1], at }),
    );
  };
  return Math.min(least('xHigh'), least('yHigh'));
}
