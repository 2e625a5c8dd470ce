import { refusal } from '../refusal.ts';
import { mirrorsOf, plateRitz, type RitzPlate, type RitzSolution } from './plate-ritz.ts';
import { plateShape, withError, type PlateShape, type PointMoments } from './plate-shape.ts';

const { PI: π, abs, ceil, cos, max, min, sin, sqrt } = Math;

/** Discs round points where moments are not read, in units of a. */
export interface Discs {
  readonly centres: RitzPlate['points'];
  readonly radius: number;
}

/** Largest number of unknowns that one plate may take (about a second of work). */
const mostUnknowns = 1200;

/** A plate solved and read once: see `ritzPair` and `readShape`. */
export function ritzShape(plate: RitzPlate, discs: Discs): { readonly shape: PlateShape } {
  return { shape: readShape(ritzPair(plate), discs) };
}

/** A plate solved twice, degrees 4 apart, and the grid to read it on: all that does not depend on discs. */
export interface RitzPair {
  readonly plate: RitzPlate;
  readonly coarse: RitzSolution;
  readonly fine: RitzSolution;
  readonly grid: readonly [number, number];
  /** Largest change of a reaction between the two degrees, relative to the largest reaction. */
  readonly reactionError: number;
}

/** Solves a plate by Ritz's method twice, degrees 4 apart. `along` is the number of different places of points along x
 *  and along y: each needs polynomials of its own. Degree: 20 on a square, growing with the root of the side ratio
 *  (polynomials resolve an edge layer of that width). */
export function ritzPair(plate: RitzPlate, along: readonly [number, number] = [0, 0]): RitzPair {
  const { ratio } = plate;
  const degreeFor = (stretch: number, places: number): number =>
    2 * ceil(max(20 * sqrt(max(1, stretch)), 2 * places + 12) / 2);
  const degrees = [degreeFor(1 / ratio, along[0]), degreeFor(ratio, along[1])] as const;
  const steps = (stretch: number, places: number): number => 2 * ceil(max(16 * min(3, max(1, stretch)), 4 * places));
  const grid = [1 + steps(1 / ratio, along[0]), 1 + steps(ratio, along[1])] as const;
  const mirrors = mirrorsOf(plate);
  if ((degrees[0] / (mirrors.x ? 2 : 1) + 1) * (degrees[1] / (mirrors.y ? 2 : 1) + 1) > mostUnknowns)
    throw refusal({
      what: `the plate has ${plate.points.length} points at ${along[0]} × ${along[1]} different places: more than this kernel resolves`,
      where: { field: 'points' },
      mend: 'Where points stand that close, treat the edge as supported along its length',
    });
  const [coarse, fine] = [4, 0].map((less) => {
    const solution = plateRitz(plate, degrees[0] - less, degrees[1] - less);
    if (!solution)
      throw refusal({
        what: 'some points lie so close together, or so close to a supported edge, that their forces cannot be told apart',
        where: { field: 'points' },
        mend: 'Leave out points that share a place, and points on edges that are supported already',
      });
    return solution;
  }) as [RitzSolution, RitzSolution];
  const largest = max(...fine.reactions.map(abs));
  const reactionError = max(0, ...fine.reactions.map((r, p) => abs(r - coarse.reactions[p]!) / largest));
  return { plate, coarse, fine, grid, reactionError };
}

/** Reads the largest values off a grid of about 32 steps to the shorter side, discs left out: the finer answer, with its
 *  relative change from the coarser as `error`. */
export function readShape({ plate, coarse, fine, grid }: RitzPair, discs: Discs): PlateShape {
  return withError(shapeOf(fine, plate, discs, grid), shapeOf(coarse, plate, discs, grid));
}

/** A rim point on an edge, less the round-off of its cosine. */
const snap = (x: number): number => (abs(x) < 1e-12 ? 0 : x);

function shapeOf(solution: RitzSolution, plate: RitzPlate, discs: Discs, grid: readonly [number, number]): PlateShape {
  const { ratio, nu, edges } = plate;
  const { derivative, mirrors } = solution;
  const value = (x: number, y: number, p: 0 | 1 | 2 | 3, s: 0 | 1 | 2 | 3): number => derivative([x], [y], p, s)[0]!;
  const farther = (...values: number[]): number => values.reduce((most, v) => (abs(v) > abs(most) ? v : most), 0);

  const excluded = (x: number, y: number): boolean =>
    discs.centres.some(([cx, cy]) => (x - cx) ** 2 + (y - cy) ** 2 < (discs.radius * (1 - 1e-9)) ** 2);
  const rim: PointMoments[] = [];
  for (const [cx, cy] of discs.radius > 0 ? discs.centres : []) {
    if ((mirrors.x && cx > 0.5 + 1e-9) || (mirrors.y && cy > ratio / 2 + 1e-9)) continue;
    for (let k = 0; k < 16; k++) {
      const [x, y] = [snap(cx + discs.radius * cos((π * k) / 8)), snap(cy + discs.radius * sin((π * k) / 8))];
      if (x < 0 || x > 1 || y < 0 || y > ratio || excluded(x, y)) continue;
      const [xx, yy, xy] = [value(x, y, 2, 0), value(x, y, 0, 2), value(x, y, 1, 1)];
      rim.push({ at: [x, y], Mx: -(xx + nu * yy), My: -(yy + nu * xx), Mxy: -(1 - nu) * xy });
    }
  }

  const inner = Array.from({ length: 37 }, (_, i) => 0.05 + (0.9 * i) / 36);
  const innerY = inner.map((y) => y * ratio);
  const reactionX = (x: number): number => {
    const [xxx, xyy] = [derivative([x], innerY, 3, 0), derivative([x], innerY, 1, 2)];
    return max(...xxx.map((v, i) => abs(v + (2 - nu) * xyy[i]!)));
  };
  const reactionY = (y: number): number => {
    const [yyy, xxy] = [derivative(inner, [y], 0, 3), derivative(inner, [y], 2, 1)];
    return max(...yyy.map((v, i) => abs(v + (2 - nu) * xxy[i]!)));
  };
  const corner = (x: 0 | 1, y: 0 | 1): number => {
    const holds = [x === 0 ? edges.x0 : edges.xa, y === 0 ? edges.y0 : edges.yb];
    if (holds.every((hold) => hold === 'free') || holds.includes('held')) return 0;
    return (x === y ? 2 : -2) * (1 - nu) * value(x, y * ratio, 1, 1);
  };
  const acrossX = (x: number): number => -(value(x, ratio / 2, 2, 0) + nu * value(x, ratio / 2, 0, 2));
  const acrossY = (y: number): number => -(value(0.5, y, 0, 2) + nu * value(0.5, y, 2, 0));

  return plateShape(solution.field(...grid), {
    ratio,
    momentEdgeX: farther(edges.x0 === 'held' ? acrossX(0) : 0, edges.xa === 'held' ? acrossX(1) : 0),
    momentEdgeY: farther(edges.y0 === 'held' ? acrossY(0) : 0, edges.yb === 'held' ? acrossY(ratio) : 0),
    edgeReactionLargest: max(
      edges.x0 === 'free' ? 0 : reactionX(0),
      edges.xa === 'free' ? 0 : reactionX(1),
      edges.y0 === 'free' ? 0 : reactionY(0),
      edges.yb === 'free' ? 0 : reactionY(ratio),
    ),
    cornerForce: farther(corner(0, 0), corner(0, 1), corner(1, 0), corner(1, 1)),
    rim,
    mirrors,
    excluded,
  });
}
