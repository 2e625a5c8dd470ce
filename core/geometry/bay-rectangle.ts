import type { PlainBay } from './bays-between.ts';
import type { Side } from './geometry.ts';

/** Bays that lie in a rectangle, and the one tube along each of its sides: null where they do not fill it. */
export interface BayRectangle {
  readonly bays: readonly PlainBay[];
  readonly tubes: Readonly<Record<Side, string>> | null;
}

/** The rectangle of cells around some bays (one is its own), filled from all bays of the grid. */
export function bayRectangle(around: readonly PlainBay[], all: readonly PlainBay[]): BayRectangle {
  const x0 = Math.min(...around.map((b) => b.cell.x0));
  const y0 = Math.min(...around.map((b) => b.cell.y0));
  const x1 = Math.max(...around.map((b) => b.cell.x1));
  const y1 = Math.max(...around.map((b) => b.cell.y1));
  const bays =
    around.length === 1
      ? around
      : all.filter(({ cell }) => cell.x0 >= x0 && cell.x1 <= x1 && cell.y0 >= y0 && cell.y1 <= y1);
  const area = bays.reduce((sum, { cell }) => sum + (cell.x1 - cell.x0) * (cell.y1 - cell.y0), 0);
  const full = Math.abs(area - (x1 - x0) * (y1 - y0)) <= 1e-9 * area;
  const side = (edge: (bay: PlainBay) => boolean, tube: (bay: PlainBay) => string): string | null => {
    const [first, ...others] = new Set(bays.filter(edge).map(tube));
    return first !== undefined && others.length === 0 ? first : null;
  };
  const mainLow = side(
    (b) => b.cell.y0 === y0,
    (b) => b.main[0],
  );
  const mainHigh = side(
    (b) => b.cell.y1 === y1,
    (b) => b.main[1],
  );
  const crossLow = side(
    (b) => b.cell.x0 === x0,
    (b) => b.cross[0],
  );
  const crossHigh = side(
    (b) => b.cell.x1 === x1,
    (b) => b.cross[1],
  );
  const closed = full && mainLow !== null && mainHigh !== null && crossLow !== null && crossHigh !== null;
  return { bays, tubes: closed ? { mainLow, mainHigh, crossLow, crossHigh } : null };
}
