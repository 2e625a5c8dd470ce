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
export function rowLostReaction({ a, b, nx, ny, ix, iy, ...plate }: PlateOnRows): number {
  if (plate.q === 0) return 0;
  const whole = { ...plate, a: a + 2 * ix, b: b + 2 * iy, q: abs(plate.q) };
  const largest = (lost: BoltRow): number => {
    const points = rowsLeft({ a, b, nx, ny }, lost).map(([x, y]) => [x + ix, y + iy] as const);
    return max(...pointReactions(whole, { points }));
  };
  return max(...rows.map(largest));
}

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
