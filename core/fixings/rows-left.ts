import { boltRing } from '../solve/bolt-ring.ts';
import type { BoltPoint } from './eccentric-group.ts';

/** Rows of bolts round a panel field: a and b between the rows' corner bolts, along x and y, m; nx and ny bolts in each
 *  row along x and along y, corners counted in both. Two of them in a row are its corners alone. */
export interface BoltRows {
  readonly a: number;
  readonly b: number;
  readonly nx: number;
  readonly ny: number;
}

/** One of the four rows: of low or high y (along x), of low or high x (along y). */
export type BoltRow = 'yLow' | 'yHigh' | 'xLow' | 'xHigh';

/** Evenly spaced bolts that are left round a field when a row is lost, its corner bolts with it, m from the field's low
 *  corner bolt. Refuses what `boltRing` refuses. */
export function rowsLeft({ a, b, nx, ny }: BoltRows, lost: BoltRow): readonly BoltPoint[] {
  const stays: Record<BoltRow, (p: BoltPoint) => boolean> = {
    yLow: ([, y]) => y > 0,
    yHigh: ([, y]) => y < b,
    xLow: ([x]) => x > 0,
    xHigh: ([x]) => x < a,
  };
  return boltRing({ a, b }, { nx, ny, insetX: 0, insetY: 0 }).filter(stays[lost]);
}
