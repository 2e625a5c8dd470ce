import earcut from 'earcut';
import type { GrowingMesh } from './growing-mesh.ts';
import type { Ring } from './ring.ts';
import type { Vector } from './scene.ts';

/** Where a prism stands: its section lies in the plane of u and v, it runs along w = u × v. */
export interface Frame {
  readonly origin: Vector;
  readonly u: Vector;
  readonly v: Vector;
}

/** What a prism is cut from: an outer line, counter-clockwise, and holes, clockwise. */
export interface Section {
  readonly outer: Ring;
  readonly holes: readonly Ring[];
}

/**
 * Adds a closed prism: a section drawn out along w from one place to another, m. The two end faces are cut into
 * triangles (earcut); sides between sharp corners are flat, those of curves are shaded smoothly.
 * Edges: along the rims of both ends (of `quiet` holes left out) and along each corner.
 */
export function prism(
  into: GrowingMesh,
  { outer, holes }: Section,
  frame: Frame,
  ends: readonly [from: number, to: number],
  quiet: ReadonlySet<Ring> = new Set(),
): void {
  const flat: number[] = [];
  const starts: number[] = [];
  for (const ring of [outer, ...holes]) {
    if (ring !== outer) starts.push(flat.length / 2);
    for (const p of ring) flat.push(p.u, p.v);
  }
  const { u, v } = frame;
  const w: Vector = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
  const [low, high] = [placed(flat, frame, w, ends[0]), placed(flat, frame, w, ends[1])] as const;
  addEnds(into, flat, earcut(flat, starts), low, high, w);
  let start = 0;
  for (const ring of [outer, ...holes]) {
    addSides(into, ring, start, frame, low, high);
    addEdges(into, ring, start, low, high, !quiet.has(ring));
    start += ring.length;
  }
}

/** Points of the section at one place along the prism, 3 numbers each. */
function placed(flat: readonly number[], { origin, u, v }: Frame, w: Vector, at: number): Float64Array {
  const points = new Float64Array(1.5 * flat.length);
  for (let i = 0, k = 0; i < flat.length; i += 2, k += 3) {
    const [a, b] = [flat[i]!, flat[i + 1]!];
    for (let axis = 0; axis < 3; axis++) points[k + axis] = origin[axis]! + a * u[axis]! + b * v[axis]! + at * w[axis]!;
  }
  return points;
}

function addEnds(
  { positions, normals, indices }: GrowingMesh,
  flat: readonly number[],
  triangles: readonly number[],
  low: Float64Array,
  high: Float64Array,
  w: Vector,
): void {
  const first = positions.length / 3;
  const second = first + low.length / 3;
  for (let k = 0; k < low.length; k++) {
    positions.push(low[k]!);
    normals.push(-w[k % 3]!);
  }
  for (let k = 0; k < high.length; k++) {
    positions.push(high[k]!);
    normals.push(w[k % 3]!);
  }
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, p, q] = [triangles[i]!, triangles[i + 1]!, triangles[i + 2]!];
    const [x, y] = [flat[2 * a]!, flat[2 * a + 1]!];
    const turn = (flat[2 * p]! - x) * (flat[2 * q + 1]! - y) - (flat[2 * q]! - x) * (flat[2 * p + 1]! - y);
    const [b, c] = turn > 0 ? [p, q] : [q, p];
    indices.push(second + a, second + b, second + c, first + a, first + c, first + b);
  }
}

function addSides(
  { positions, normals, indices }: GrowingMesh,
  ring: Ring,
  start: number,
  { u, v }: Frame,
  low: Float64Array,
  high: Float64Array,
): void {
  for (let i = 0; i < ring.length; i++) {
    const j = (i + 1) % ring.length;
    const [p, q] = [ring[i]!, ring[j]!];
    const [du, dv] = [q.u - p.u, q.v - p.v];
    const length = Math.hypot(du, dv);
    const smooth = p.normal && q.normal;
    const first = positions.length / 3;
    for (const end of [p, q]) {
      const at = 3 * (start + (end === p ? i : j));
      const a = smooth ? end.normal![0] : dv / length;
      const b = smooth ? end.normal![1] : -du / length;
      for (let axis = 0; axis < 3; axis++) positions.push(low[at + axis]!);
      for (let axis = 0; axis < 3; axis++) positions.push(high[at + axis]!);
      for (let k = 0; k < 6; k++) normals.push(a * u[k % 3]! + b * v[k % 3]!);
    }
    indices.push(first, first + 2, first + 1, first + 1, first + 2, first + 3);
  }
}

function addEdges(
  { edges }: GrowingMesh,
  ring: Ring,
  start: number,
  low: Float64Array,
  high: Float64Array,
  rims: boolean,
): void {
  const put = (points: Float64Array, i: number): void => {
    edges.push(points[3 * i]!, points[3 * i + 1]!, points[3 * i + 2]!);
  };
  for (let i = start; i < start + ring.length; i++) {
    const next = i + 1 === start + ring.length ? start : i + 1;
    if (rims)
      for (const end of [low, high]) {
        put(end, i);
        put(end, next);
      }
    if (ring[i - start]!.edge) {
      put(low, i);
      put(high, i);
    }
  }
}
