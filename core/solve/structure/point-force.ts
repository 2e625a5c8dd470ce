import type { Vector } from '../vector.ts';

/** Adds a force and a moment that act at a point, off a node by a rigid arm, to the loads f (6N) of the node:
 *    F_node = F,   M_node = M + r × F   */
export function addPointForce(
  f: Float64Array,
  node: number,
  [rx, ry, rz]: Vector,
  [Fx, Fy, Fz]: Vector,
  [Mx, My, Mz]: Vector = [0, 0, 0],
): void {
  const i = 6 * node;
  f[i]! += Fx;
  f[i + 1]! += Fy;
  f[i + 2]! += Fz;
  f[i + 3]! += Mx + ry * Fz - rz * Fy;
  f[i + 4]! += My + rz * Fx - rx * Fz;
  f[i + 5]! += Mz + rx * Fy - ry * Fx;
}

/** Displacement of such a point, m: u + θ × r. */
export function pointMotion(u: Float64Array, node: number, [rx, ry, rz]: Vector): Vector {
  const i = 6 * node;
  const [θx, θy, θz] = [u[i + 3]!, u[i + 4]!, u[i + 5]!];
  return [u[i]! + θy * rz - θz * ry, u[i + 1]! + θz * rx - θx * rz, u[i + 2]! + θx * ry - θy * rx];
}

/** Resultant of nodal loads about the origin: three forces and three moments. */
export function resultantOf(coordinates: Float64Array, f: Float64Array): Float64Array {
  const sum = new Float64Array(6);
  for (let n = 0; 3 * n < coordinates.length; n++) {
    const [x, y, z] = [coordinates[3 * n]!, coordinates[3 * n + 1]!, coordinates[3 * n + 2]!];
    const [Fx, Fy, Fz] = [f[6 * n]!, f[6 * n + 1]!, f[6 * n + 2]!];
    sum[0]! += Fx;
    sum[1]! += Fy;
    sum[2]! += Fz;
    sum[3]! += f[6 * n + 3]! + y * Fz - z * Fy;
    sum[4]! += f[6 * n + 4]! + z * Fx - x * Fz;
    sum[5]! += f[6 * n + 5]! + x * Fy - y * Fx;
  }
  return sum;
}

/** Adds a rigid motion q (three shifts of the origin, three turns) to the displacements of all nodes. */
export function addRigidMotion(coordinates: Float64Array, q: Float64Array, u: Float64Array): void {
  const [a, b, c, θx, θy, θz] = q as unknown as [number, number, number, number, number, number];
  for (let n = 0; 3 * n < coordinates.length; n++) {
    const [x, y, z] = [coordinates[3 * n]!, coordinates[3 * n + 1]!, coordinates[3 * n + 2]!];
    u[6 * n]! += a + θy * z - θz * y;
    u[6 * n + 1]! += b + θz * x - θx * z;
    u[6 * n + 2]! += c + θx * y - θy * x;
    u[6 * n + 3]! += θx;
    u[6 * n + 4]! += θy;
    u[6 * n + 5]! += θz;
  }
}
