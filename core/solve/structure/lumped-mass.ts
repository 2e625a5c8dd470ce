import { addPointForce } from './point-force.ts';
import type { Structure } from './structure.ts';
import type { Vector } from '../vector.ts';

/** Mass at a point that a node carries on a rigid arm, kg. */
export interface PointMass {
  readonly node: number;
  readonly offset: Vector;
  readonly mass: number;
}

/** Masses of tubes (kg/m of each, water inside them with it) and of panels' plates (kg/m² of each), lumped: half of each
 *  beam at either end, a quarter of each rectangle at its corners. What the plate's inertia, and its modes, are made of. */
export function lumpedMasses(
  { beams, shells }: Structure,
  perLength: readonly number[],
  perArea: readonly number[],
): PointMass[] {
  const masses: PointMass[] = [];
  for (const { tube, nodes, offsets, from, to } of beams)
    for (const end of [0, 1] as const)
      masses.push({ node: nodes[end], offset: offsets[end], mass: (perLength[tube]! * (to - from)) / 2 });
  const corner = new Map<number, number>();
  for (const { panel, nodes, a, b } of shells)
    for (const node of nodes) corner.set(node, (corner.get(node) ?? 0) + (perArea[panel]! * a * b) / 4);
  for (const [node, mass] of corner) masses.push({ node, offset: [0, 0, 0], mass });
  return masses;
}

/** Forces of inertia -m a on the nodes as the whole moves rigidly with acceleration c: three of the origin, m/s², three
 *  of turning, rad/s². 6N. */
export function inertiaForces(
  { coordinates }: Pick<Structure, 'coordinates'>,
  masses: readonly PointMass[],
  c: ArrayLike<number>,
): Float64Array {
  const f = new Float64Array(2 * coordinates.length);
  for (const { node, offset, mass } of masses) {
    const x = coordinates[3 * node]! + offset[0];
    const y = coordinates[3 * node + 1]! + offset[1];
    const z = coordinates[3 * node + 2]! + offset[2];
    addPointForce(f, node, offset, [
      -mass * (c[0]! + c[4]! * z - c[5]! * y),
      -mass * (c[1]! + c[5]! * x - c[3]! * z),
      -mass * (c[2]! + c[3]! * y - c[4]! * x),
    ]);
  }
  return f;
}
