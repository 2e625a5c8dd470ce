import type { WeldedFixing } from '../document/schema.ts';
import { refusal } from '../refusal.ts';
import type { Bearing, Point, Rectangle, WeldRun } from './geometry.ts';

export interface WeldedEdge {
  readonly id: string;
  readonly fixing: WeldedFixing;
  readonly outline: Rectangle;
  readonly notch: number;
  readonly bearings: readonly Bearing[];
}

/**
 * Fillet welds along the panel's edge on the sides that are fixed, notches left out. m.
 * All round: every fixed side. Two sides: the pair that the design relies on, the longer pair where it relies on four.
 * Intermittent: runs of the stated length, one at each end, equal gaps not longer than stated (as EN 1993-1-8:2005,
 * 4.3.2 asks; from memory). Refuses an intermittent weld without run or gap.
 */
export function weldRunsOf({ id, fixing, outline, notch, bearings }: WeldedEdge): WeldRun[] {
  const { x0, y0, x1, y1 } = outline;
  const fixed = bearings.filter((b) => b.fixed);
  const pairs = ['main', 'cross']
    .map((set) => fixed.filter((b) => b.side.startsWith(set)))
    .filter((pair) => pair.length === 2);
  const mainIsLonger = x1 - x0 >= y1 - y0;
  const chosen =
    fixing.pattern === 'two sides' ? (pairs.length === 1 ? pairs[0]! : pairs[mainIsLonger ? 0 : 1]!) : fixed;
  return chosen.flatMap(({ side, tube }) => {
    const line: [Point, Point] = {
      mainLow: [
        [x0 + notch, y0],
        [x1 - notch, y0],
      ] as [Point, Point],
      mainHigh: [
        [x0 + notch, y1],
        [x1 - notch, y1],
      ] as [Point, Point],
      crossLow: [
        [x0, y0 + notch],
        [x0, y1 - notch],
      ] as [Point, Point],
      crossHigh: [
        [x1, y0 + notch],
        [x1, y1 - notch],
      ] as [Point, Point],
    }[side];
    const [from, to] = line;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const along = (s: number): Point => [
      from[0] + ((to[0] - from[0]) * s) / length,
      from[1] + ((to[1] - from[1]) * s) / length,
    ];
    return runs(length, fixing, id).map(([start, end]) => ({
      side,
      tube,
      length: end - start,
      from: along(start),
      to: along(end),
    }));
  });
}

function runs(length: number, fixing: WeldedFixing, id: string): [number, number][] {
  if (fixing.pattern !== 'intermittent') return [[0, length]];
  if (!fixing.run || !fixing.gap)
    throw refusal({
      what: `The intermittent weld of panel ${id} has no ${fixing.run ? 'gap' : 'run'}`,
      where: { panel: id, field: 'fixing' },
      mend: 'Give “run” and “gap”, or weld all round.',
    });
  const [run, gap] = [fixing.run.si, fixing.gap.si];
  if (length <= 2 * run) return [[0, length]];
  const n = Math.max(2, Math.ceil((length + gap) / (run + gap) - 1e-9));
  const pitch = (length - run) / (n - 1);
  if (pitch <= run) return [[0, length]];
  return Array.from({ length: n }, (_, i): [number, number] => [i * pitch, i * pitch + run]);
}
