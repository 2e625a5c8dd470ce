import { largestAcrossWeldGroup, largestInWeldGroup, type WeldLine } from './eccentric-weld.ts';
import { weldGroupLength } from './weld-group-length.ts';
import type { BoltPoint } from './eccentric-group.ts';

/** Weld round a rectangle a by b (along x and y, m): on each side along x, n_x runs of r_x over a length l_x in its
 *  middle, one at each end; on each side along y the same. No runs where a pair of sides is not welded. */
export interface WeldedSides {
  readonly a: number;
  readonly b: number;
  readonly lx: number;
  readonly ly: number;
  readonly nx: number;
  readonly ny: number;
  readonly rx: number;
  readonly ry: number;
}

/** Runs that are left when the side of high x or of high y is not there. */
export function weldsLeft(sides: WeldedSides, lost: 'x' | 'y'): readonly WeldLine[] {
  const { a, b, lx, ly, nx, ny, rx, ry } = sides;
  const along = (l: number, n: number, r: number, at: (s: number) => BoltPoint): WeldLine[] =>
    Array.from({ length: n }, (_, i): WeldLine => {
      const start = n > 1 ? (i * (l - r)) / (n - 1) : 0;
      return [at(start), at(start + r)];
    });
  const onX = (y: number) => along(lx, nx, rx, (s) => [(a - lx) / 2 + s, y]);
  const onY = (x: number) => along(ly, ny, ry, (s) => [x, (b - ly) / 2 + s]);
  return [...onX(0), ...(lost === 'y' ? [] : onX(b)), ...onY(0), ...(lost === 'x' ? [] : onY(a))];
}

/** Each side that may be lost: one of a pair that is welded. */
const losses = ({ nx, ny }: WeldedSides): readonly ('x' | 'y')[] => [...(ny > 0 ? (['x'] as const) : []), ...(nx > 0 ? (['y'] as const) : [])]; // prettier-ignore

const over = (sides: WeldedSides, value: (lines: readonly WeldLine[]) => readonly number[]): number[] =>
  losses(sides).flatMap((lost) => value(weldsLeft(sides, lost)));
const axes = [[1, 0], [0, 1]] as const; // prettier-ignore

/** Largest force per length in N/m when one side is lost and a weight W (N) hangs in the plane at the middle, along x or
 *  y; the worst of sides and directions. Source: elastic group, see `largestInWeldGroup`. */
export const sideLostInPlane = (sides: WeldedSides, W: number): number =>
  Math.max(...over(sides, (lines) => axes.map(([x, y]) => largestInWeldGroup(lines, { Fx: W * x, Fy: W * y, at: [sides.a / 2, sides.b / 2] })))); // prettier-ignore

/** The same with the weight square to the plane. Refuses welds on two sides alone: with one lost the panel turns about the other. */
export const sideLostAcross = (sides: WeldedSides, W: number): number =>
  Math.max(...over(sides, (lines) => [largestAcrossWeldGroup(lines, W, [sides.a / 2, sides.b / 2])]));

/** Length of weld in m that the rest is worth in the plane, by the instantaneous centre: the least of sides and
 *  directions. Source and error: see `weldGroupLength`. */
export const sideLostLength = (sides: WeldedSides, rise: number): number =>
  Math.min(...over(sides, (lines) => axes.map((direction) => weldGroupLength(lines, { direction, at: [sides.a / 2, sides.b / 2] }, rise)))); // prettier-ignore
