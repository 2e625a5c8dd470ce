import { refusal, requirePositive } from '../refusal.ts';
import { boundedMemo } from './bounded-memo.ts';
import { plateAnswer, type PlateAnswer } from './plate-answer.ts';
import type { PlateShape } from './plate-shape.ts';
import type { PlateEdges } from './plate-ritz.ts';
import { readShape, ritzPair, type RitzPair } from './ritz-shape.ts';
import { sideRatio } from './side-ratio.ts';
import { requirePlate, type UniformPlate } from './uniform-plate.ts';

const { abs, hypot, min } = Math;

/** What holds the plate: points [x, y] in m from its corner, where it can neither sink nor lift but is free to turn, and
 *  edges, all free unless said. `exclusionRadius` in m: see `pointSupportedPlate`. */
export interface PlateSupports {
  readonly points: readonly (readonly [number, number])[];
  readonly edges?: Partial<PlateEdges>;
  readonly exclusionRadius: number;
}

/** Force of each point on the plate in N, in the order given, positive against q. A negative one (q positive) holds the
 *  plate down: a bolt that works in the other direction, or a place that would lift if it could. */
export interface PointSupportedAnswer extends PlateAnswer {
  readonly reactions: readonly number[];
  /** Estimate of the error of the reactions, relative to the largest. */
  readonly reactionError: number;
}

/** Solutions are small. Readings hold maps of the whole plate, but a new one is little work. */
const solutions = boundedMemo<RitzPair>(512);
const readings = boundedMemo<PlateShape>(64);
const free: PlateEdges = { x0: 'free', xa: 'free', y0: 'free', yb: 'free' };

/** A plate under uniform pressure on rigid points, and on edges if some are hinged or held: Ritz's method with
 *  polynomials and Lagrange multipliers; mirrored supports are found and need a quarter of the unknowns.
 *  A point force makes the moment of a thin plate infinite (like ln r), where a real bolt has a head, a washer and a
 *  clamped ring: moments and stress are therefore read outside discs of `exclusionRadius` round the points, their rims
 *  included. Take the radius of the washer or of the bearing; a smaller one gives a larger stress, without end.
 *  `deflectionLargest` counts everywhere. Refuses supports that leave the plate free to move, and says how.
 *  Error: equilibrium to round-off; deflections and reactions typically 0.1 %, moments between the points 0.5 %; moments
 *  on the rims of small discs only 10 %, since polynomials follow ln r badly. `error` shows it where a rim governs.
 *  Source: T&WK, Theory of Plates and Shells, 2nd ed., arts. 51 to 53 (plates on points); method: art. 80. */
export function pointSupportedPlate(plate: UniformPlate, supports: PlateSupports): PointSupportedAnswer {
  requirePlate(plate);
  requireDiscs(plate, supports.exclusionRadius);
  const { key, solved } = solvedOn(plate, supports);
  const radius = sideRatio(supports.exclusionRadius, plate.a);
  const shape = readings(`${radius} ${key}`, () => readShape(solved, { centres: solved.plate.points, radius }));
  const { reactionError } = solved;
  return { ...plateAnswer(plate, shape), reactions: reactionsOf(plate, solved), reactionError };
}

/** The reactions of such a plate alone, N: they do not depend on discs, and no moments are read. */
export function pointReactions(
  plate: UniformPlate,
  supports: Omit<PlateSupports, 'exclusionRadius'>,
): readonly number[] {
  return reactionsOf(plate, solvedOn(plate, supports).solved);
}

const reactionsOf = ({ a, q }: UniformPlate, { fine }: RitzPair): readonly number[] =>
  Array.from(fine.reactions, (r) => r * q * a ** 2);

/** The plate in units of its side, solved once for all sizes, thicknesses, pressures and discs. */
function solvedOn(
  plate: UniformPlate,
  supports: Omit<PlateSupports, 'exclusionRadius'>,
): { readonly key: string; readonly solved: RitzPair } {
  requirePlate(plate);
  const { a, b, nu } = plate;
  const edges = { ...free, ...supports.edges };
  const ratio = sideRatio(b, a);
  // Places are compared to a millionth of a millionth of a, so that round-off in them does not spoil symmetry.
  const points = supports.points.map(([x, y]) => [round(x / a), round(y / a)] as const);
  const key = `${ratio} ${nu} ${edges.x0} ${edges.xa} ${edges.y0} ${edges.yb} ${points.join(' ')}`;
  const solved = solutions(key, () => {
    requireSupports(plate, supports.points, edges);
    const places = (of: 0 | 1): number => new Set(points.map((p) => p[of].toFixed(6))).size;
    return ritzPair({ ratio, nu, edges, points }, [places(0), places(1)]);
  });
  return { key, solved };
}

const round = (x: number): number => Math.round(x * 1e12) / 1e12;

function requireDiscs({ a, b }: UniformPlate, exclusionRadius: number): void {
  requirePositive({ exclusionRadius });
  if (exclusionRadius >= min(a, b) / 4)
    throw refusal({
      what: `discs of ${exclusionRadius} m would hide the plate itself (shorter side ${min(a, b)} m)`,
      where: { field: 'exclusionRadius' },
      mend: 'Take the radius of the washer or of the bearing',
    });
}

function requireSupports({ a, b }: UniformPlate, points: PlateSupports['points'], edges: PlateEdges): void {
  const slack = 1e-9 * min(a, b);
  points.forEach(([x, y], i) => {
    if (!(x >= -slack && x <= a + slack && y >= -slack && y <= b + slack))
      throw refusal({
        what: `point ${i + 1} at x = ${x} m, y = ${y} m lies outside the plate (${a} m × ${b} m)`,
        where: { field: 'points', point: i + 1 },
        mend: 'Move it onto the plate; x and y count from its corner',
      });
    const twin = points.findIndex(([px, py]) => hypot(px - x, py - y) < 1e-6 * min(a, b));
    if (twin < i)
      throw refusal({
        what: `points ${twin + 1} and ${i + 1} share one place (x = ${x} m, y = ${y} m)`,
        where: { field: 'points', point: i + 1 },
        mend: 'Leave one of them out',
      });
    const onEdge = (
      [
        ['x0', x],
        ['xa', a - x],
        ['y0', y],
        ['yb', b - y],
      ] as const
    ).find(([edge, distance]) => edges[edge] !== 'free' && abs(distance) < 1e-6 * min(a, b));
    if (onEdge)
      throw refusal({
        what: `point ${i + 1} stands on edge ${onEdge[0]}, which is supported along its length already`,
        where: { field: 'points', point: i + 1 },
        mend: 'Leave the point out, or let the edge be free',
      });
  });
  if (Object.values(edges).includes('held')) return;
  const held = [...points];
  if (edges.x0 === 'hinged') held.push([0, 0], [0, b]);
  if (edges.xa === 'hinged') held.push([a, 0], [a, b]);
  if (edges.y0 === 'hinged') held.push([0, 0], [a, 0]);
  if (edges.yb === 'hinged') held.push([0, b], [a, b]);
  const [first] = held;
  const second = first && held.reduce((far, p) => (distance(p, first) > distance(far, first) ? p : far));
  const mend = 'Give at least three points that do not lie on one line';
  const where = { field: 'points' };
  if (!first || !second)
    throw refusal({ what: 'nothing holds the plate: it can move along its normal and turn', where, mend });
  const length = distance(first, second);
  if (length < 1e-6 * min(a, b))
    throw refusal({
      what: `the plate stands on one point (x = ${first[0]} m, y = ${first[1]} m) and can tip over it to any side`,
      where,
      mend,
    });
  const offLine = (p: readonly [number, number]): number =>
    abs((p[0] - first[0]) * (second[1] - first[1]) - (p[1] - first[1]) * (second[0] - first[0])) / length;
  if (held.every((p) => offLine(p) < 1e-6 * min(a, b)))
    throw refusal({
      what: `all supports lie on one line, and the plate can turn about it: from x = ${first[0]} m, y = ${first[1]} m to x = ${second[0]} m, y = ${second[1]} m`,
      where,
      mend,
    });
}

const distance = (p: readonly [number, number], q: readonly [number, number]): number =>
  hypot(p[0] - q[0], p[1] - q[1]);
