import { pointReactions, pointSupportedPlate } from '../solve/point-supported-plate.ts';
import type { UniformPlate } from '../solve/uniform-plate.ts';
import { rowsLeft, type BoltRow } from './rows-left.ts';

const { abs, max, min } = Math;

/** The plate of a field whose a and b reach between the rows of bolts; overhang beyond them ix, iy in m. */
export interface PlateOnRows extends UniformPlate {
  readonly nx: number;
  readonly ny: number;
  readonly ix: number;
  readonly iy: number;
}

/** By symmetry a row of low x or y does as its opposite. */
const rows: readonly BoltRow[] = ['xHigh', 'yHigh'];

/** Largest tension in N of the bolts that are left when one row round a field is lost, corners with it, with the plate
 *  bending between rigid bolts: the bolts beside the gap take more than the elastic group of a rigid plate gives them
 *  (about twice as much on a square field of thin plate). The worst of the four rows; zero without pressure.
 *  Refuses what is left on one line. Error: 0.5 %, see `pointSupportedPlate`.
 *  Source: T&WK, Theory of Plates and Shells, 2nd ed., arts. 51 to 53 (plates on points). */
export function rowLostReaction(plate: PlateOnRows): number {
  if (plate.q === 0) return 0;
  return max(...rowsGone(plate).map(({ whole, points }) => max(...pointReactions(whole, { points }))));
}

/** Largest von Mises stress in Pa of the plate on the same bolts, read outside discs of `exclusionRadius` (m) round those
 *  that are left. The worst of the four rows; zero without pressure. Refuses what is left on one line. Error: 0.5 %
 *  between the bolts, 10 % on the rims of the discs, see `pointSupportedPlate`.
 *  Source: T&WK, Theory of Plates and Shells, 2nd ed., arts. 51 to 53 (plates on points). */
export function rowLostStress({
  exclusionRadius,
  ...plate
}: PlateOnRows & { readonly exclusionRadius: number }): number {
  if (plate.q === 0) return 0;
  return max(
    ...rowsGone(plate).map(
      ({ whole, points }) => pointSupportedPlate(whole, { points, exclusionRadius }).stressLargest,
    ),
  );
}

/** The plate from edge to edge, and its bolts, for each row that may be gone. */
const rowsGone = ({ a, b, nx, ny, ix, iy, ...plate }: PlateOnRows) =>
  rows.map((lost) => ({
    whole: { ...plate, a: a + 2 * ix, b: b + 2 * iy, q: abs(plate.q) },
    points: rowsLeft({ a, b, nx, ny }, lost).map(([x, y]) => [x + ix, y + iy] as const),
  }));

/** Largest moment (N·m/m, magnitude) across the middle of the held edges of a field that has lost one of its four: three
 *  edges held, one free, the worst of the four. Zero without pressure. Error: 0.5 %; nearer the free edge's ends thin
 *  plate theory has larger moments, over a short length. Source: T&WK, Theory of Plates and Shells, 2nd ed., art. 48. */
export function rowLostEdgeMoment(plate: UniformPlate): number {
  if (plate.q === 0) return 0;
  const held = { x0: 'held', xa: 'held', y0: 'held', yb: 'held' } as const;
  const largest = (free: 'xa' | 'yb'): number => {
    const { momentEdgeX, momentEdgeY } = pointSupportedPlate(plate, {
      points: [],
      edges: { ...held, [free]: 'free' },
      exclusionRadius: min(plate.a, plate.b) / 20,
    });
    return max(abs(momentEdgeX), abs(momentEdgeY));
  };
  return max(largest('xa'), largest('yb'));
}
