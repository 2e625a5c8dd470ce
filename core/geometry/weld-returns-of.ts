import type { Bearing, Point, Side, WeldReturn, WeldRun } from './geometry.ts';
import type { WeldedEdge } from './weld-runs-of.ts';

/** The sides that meet a side at its low and high end. */
const meets: Readonly<Record<Side, readonly [low: Side, high: Side]>> = {
  mainLow: ['crossLow', 'crossHigh'],
  mainHigh: ['crossLow', 'crossHigh'],
  crossLow: ['mainLow', 'mainHigh'],
  crossHigh: ['mainLow', 'mainHigh'],
};

/** An end of a side's weld at a corner, where no weld of the next side takes it up: there it starts or stops. */
export interface WeldEnd {
  readonly run: WeldRun;
  readonly at: Point;
  /** The side whose edge begins at that corner. */
  readonly edge: Side;
}

/** Ends of welds at the corners of a panel. A corner with a notch ends both. */
export function weldEndsOf(runs: readonly WeldRun[], notch: number): WeldEnd[] {
  const sides = new Set(runs.map(({ side }) => side));
  return [...sides].flatMap((side) => {
    const own = runs.filter((run) => run.side === side);
    const [low, high] = [own[0]!, own.at(-1)!];
    return [
      { run: low, at: low.from, edge: meets[side][0] },
      { run: high, at: high.to, edge: meets[side][1] },
    ].filter(({ edge }) => notch > 0 || !sides.has(edge));
  });
}

/** Welds returned round those corners, over the stated length, towards the middle of the panel and so along the tube's flat. m */
export function weldReturnsOf({ fixing, notch }: WeldedEdge, runs: readonly WeldRun[]): WeldReturn[] {
  const length = fixing.endReturn?.si;
  if (length === undefined) return [];
  return weldEndsOf(runs, notch).map(({ run: { side, tube }, at: [x, y], edge }) => {
    const inward = side.endsWith('Low') ? length : -length;
    const to: Point = side.startsWith('main') ? [x, y + inward] : [x + inward, y];
    return { side, tube, edge, length, from: [x, y], to };
  });
}

/** Room for a return: the flat of the tube under the lap and, in a notch, the notch's own edge, m. */
export const roomForReturn = (bearings: readonly Bearing[], notch: number): number =>
  Math.min(...bearings.filter(({ fixed }) => fixed).map(({ flatLap }) => flatLap), ...(notch > 0 ? [notch] : []));
