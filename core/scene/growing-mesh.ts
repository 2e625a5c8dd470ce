import type { Box, Material, SceneMesh, Vector } from './scene.ts';

/** A mesh while parts are added to it. */
export interface GrowingMesh {
  readonly positions: number[];
  readonly normals: number[];
  readonly indices: number[];
  readonly edges: number[];
}

export const emptyMesh = (): GrowingMesh => ({ positions: [], normals: [], indices: [], edges: [] });

/** Adds one mesh to another. */
export function append(to: GrowingMesh, more: GrowingMesh): void {
  const first = to.positions.length / 3;
  for (const value of more.positions) to.positions.push(value);
  for (const value of more.normals) to.normals.push(value);
  for (const index of more.indices) to.indices.push(first + index);
  for (const value of more.edges) to.edges.push(value);
}

/** A finished mesh; `starts`: for each of its parts the number, and where its vertices and edges end. */
export function finishedMesh(
  material: Material,
  { positions, normals, indices, edges }: GrowingMesh,
  ends: readonly { readonly part: number; readonly vertices: number; readonly edges: number }[],
): SceneMesh {
  const parts = new Float32Array(positions.length / 3);
  const edgeParts = new Float32Array(edges.length / 3);
  let [vertex, edge] = [0, 0];
  for (const end of ends) {
    parts.fill(end.part, vertex, (vertex = end.vertices / 3));
    edgeParts.fill(end.part, edge, (edge = end.edges / 3));
  }
  return {
    material,
    positions: Float32Array.from(positions),
    normals: Float32Array.from(normals),
    indices: Uint32Array.from(indices),
    parts,
    edges: Float32Array.from(edges),
    edgeParts,
  };
}

/** Box around points, 3 numbers each, from one place in the array on. */
export function boxAround(positions: ArrayLike<number>, from = 0): Box {
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (let i = from; i < positions.length; i++) {
    const axis = (i % 3) as 0 | 1 | 2;
    const value = positions[i]!;
    if (value < low[axis]) low[axis] = value;
    if (value > high[axis]) high[axis] = value;
  }
  return { low, high };
}

export const middleOf = ({ low, high }: Box): Vector => [
  (low[0] + high[0]) / 2,
  (low[1] + high[1]) / 2,
  (low[2] + high[2]) / 2,
];

/** Box around boxes. */
export const around = (boxes: readonly Box[]): Box => boxAround(boxes.flatMap(({ low, high }) => [...low, ...high]));
