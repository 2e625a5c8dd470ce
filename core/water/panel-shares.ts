import type { Rectangle } from './lattice/plan.ts';
import type { LatticeFrame } from './lattice/cover.ts';

/** How much of the plate's force a part carries. */
export interface PanelShare {
  /** Of inertia: its pressure in the flow over the whole. */
  readonly inertia: number;
  /** Of drag: the larger of the next two. */
  readonly drag: number;
  readonly byArea: number;
  readonly byEdges: number;
}

/**
 * Shares of rectangles of a plate: of inertia from the jump of potential (re, each cell, with the part of it that the plate
 * feels); of drag by area, and weighted towards edges, since drag is shed there: each solid cell counts with one over the root of
 * its distance to the nearest water (the pressure of a shed vortex falls so near an edge). The worse of the two bounds the drag's.
 * open: open part of each cell. Shares of all that is solid add to one, each for itself.
 */
export function panelShares(
  frame: LatticeFrame,
  felt: Float64Array,
  open: Float64Array,
  parts: Readonly<Record<string, Rectangle>>,
): Readonly<Record<string, PanelShare>> {
  const edge = edgeWeights(frame, open);
  const area = open.map((part) => 1 - Math.min(1, part));
  const sums = (weights: Float64Array) => {
    const all = weights.reduce((sum, value) => sum + value, 0);
    const over = overCells(frame, weights);
    return (part: Rectangle): number => (all > 0 ? over(part) / all : 0);
  };
  const [inertia, byArea, byEdges] = [sums(felt), sums(area), sums(edge)];
  return Object.fromEntries(
    Object.entries(parts).map(([id, part]) => {
      const [a, e] = [byArea(part), byEdges(part)];
      return [id, { inertia: inertia(part), drag: Math.max(a, e), byArea: a, byEdges: e }];
    }),
  );
}

/** What each cell counts where drag is weighted towards edges: its solid part over the root of its distance to the nearest water. */
export function edgeWeights({ nx, ny }: Pick<LatticeFrame, 'nx' | 'ny'>, open: Float64Array): Float64Array {
  const distance = distanceToWater(nx, ny, open);
  return open.map((part, k) => (1 - Math.min(1, part)) / Math.sqrt(distance[k]!));
}

/** Sum of cells' weights over a rectangle, of a cell that it cuts its part. */
export function overCells({ nx, ny, h, x, y }: LatticeFrame, weights: Float64Array): (over: Rectangle) => number {
  const span = (i: number, from: number, to: number, origin: number): number =>
    Math.max(0, Math.min(to, origin + (i + 1) * h) - Math.max(from, origin + i * h)) / h;
  return ({ x0, x1, y0, y1 }) => {
    let sum = 0;
    for (let j = Math.max(0, Math.floor((y0 - y) / h)); j < Math.min(ny, Math.ceil((y1 - y) / h)); j++) {
      const v = span(j, y0, y1, y);
      for (let i = Math.max(0, Math.floor((x0 - x) / h)); i < Math.min(nx, Math.ceil((x1 - x) / h)); i++)
        sum += v * span(i, x0, x1, x) * weights[j * nx + i]!;
    }
    return sum;
  };
}

/** Cells to the nearest water, half a cell at least: chamfer distance in two sweeps, 4 % off a circle's. */
function distanceToWater(nx: number, ny: number, open: Float64Array): Float64Array {
  const d = Float64Array.from(open, (part) => (part > 0.5 ? 0 : Infinity));
  const at = (i: number, j: number): number => (i < 0 || j < 0 || i >= nx || j >= ny ? 0 : d[j * nx + i]!);
  for (const back of [false, true])
    for (let b = 0; b < ny; b++)
      for (let a = 0; a < nx; a++) {
        const [i, j, s] = back ? [nx - 1 - a, ny - 1 - b, 1] : [a, b, -1];
        const near = Math.min(at(i + s, j) + 1, at(i, j + s) + 1, at(i + s, j + s) + Math.SQRT2, at(i - s, j + s) + Math.SQRT2); // prettier-ignore
        if (near < d[j * nx + i]!) d[j * nx + i] = near;
      }
  return d.map((value) => Math.max(0.5, value - 0.5));
}
