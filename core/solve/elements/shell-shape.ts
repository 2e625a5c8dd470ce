import { refusal } from '../../refusal.ts';
import type { Vector } from '../vector.ts';

/** A flat element in its own plane: nodes run round it counter-clockwise seen from +z.
 *  axes: rows e1, e2, e3 of the local axes in global components. xy: 2n, nodes in the plane from the middle, m.
 *  height: n, how far each node stands off the plane (zero for three nodes and for four in one plane). area in m². */
export interface ShellShape {
  readonly count: 3 | 4;
  readonly axes: Float64Array;
  readonly xy: Float64Array;
  readonly height: Float64Array;
  readonly area: number;
}

/** The plane of three or four nodes (xyz: 9 or 12, m): e3 along the product of the diagonals (of two sides for three
 *  nodes), through the mean of the nodes; e1 along the bisector of the diagonals (along the first side for three
 *  nodes), so that turning the numbers of the nodes turns nothing else. A warped quadrilateral stands on its plane by
 *  equal heights, +h -h +h -h. Refuses an element without area and one with a corner that is not convex. */
export function shellShape(xyz: Float64Array): ShellShape {
  const count = xyz.length / 3;
  if (count !== 3 && count !== 4)
    throw refusal({ what: `A shell element has 3 or 4 nodes, not ${count}`, mend: 'Give 9 or 12 coordinates' });
  const node = (i: number): Vector => [xyz[3 * i]!, xyz[3 * i + 1]!, xyz[3 * i + 2]!];
  const middle = [0, 1, 2].map((k) => {
    let sum = 0;
    for (let i = 0; i < count; i++) sum += xyz[3 * i + k]!;
    return sum / count;
  });
  const [a, b] =
    count === 4
      ? [minus(node(2), node(0)), minus(node(3), node(1))]
      : [minus(node(1), node(0)), minus(node(2), node(0))];
  const product = cross(a, b);
  const area = Math.hypot(...product) / 2;
  const size = Math.max(Math.hypot(...a), Math.hypot(...b));
  if (!(area > 1e-9 * size * size)) throw flat(xyz, 'has no area');
  const e3 = scaled(product, 1 / (2 * area));
  const along = count === 4 ? minus(scaled(a, 1 / Math.hypot(...a)), scaled(b, 1 / Math.hypot(...b))) : a;
  const e1 = scaled(along, 1 / Math.hypot(...along));
  const e2 = cross(e3, e1);
  const axes = Float64Array.of(...e1, ...e2, ...e3);
  const xy = new Float64Array(2 * count);
  const height = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const from = [0, 1, 2].map((k) => xyz[3 * i + k]! - middle[k]!) as unknown as Vector;
    xy[2 * i] = dot(from, e1);
    xy[2 * i + 1] = dot(from, e2);
    if (count === 4) height[i] = dot(from, e3);
  }
  for (let i = 0; i < count; i++) {
    const [p, q, r] = [2 * i, 2 * ((i + 1) % count), 2 * ((i + 2) % count)];
    const turn = (xy[q]! - xy[p]!) * (xy[r + 1]! - xy[q + 1]!) - (xy[q + 1]! - xy[p + 1]!) * (xy[r]! - xy[q]!);
    if (!(turn > 1e-9 * size * size)) throw flat(xyz, 'has a corner that is not convex');
  }
  return { count, axes, xy, height, area };
}

const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const scaled = (a: Vector, s: number): Vector => [a[0] * s, a[1] * s, a[2] * s];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

const flat = (xyz: Float64Array, fault: string) =>
  refusal({
    what: `A shell element ${fault}`,
    where: { x: xyz[0]!, y: xyz[1]!, z: xyz[2]! },
    mend: 'Give its nodes in turn round a convex outline, none twice',
  });
