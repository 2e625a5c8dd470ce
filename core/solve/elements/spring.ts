import { refusal } from '../../refusal.ts';
import type { Vector } from '../vector.ts';

/** A spring between two points, or between a point and the ground when it has one node.
 *  offsets: from each node to the spring's end, m, global axes, rigid. axes: rows x y z of the spring's own directions, orthonormal, 9 by rows; global
 *  axes if left out. stiffness: along and about x y z, N/m and N·m/rad; 0 lets go. */
export interface SpringInput {
  readonly stiffness: readonly [number, number, number, number, number, number];
  readonly offsets: readonly [Vector] | readonly [Vector, Vector];
  readonly axes?: ArrayLike<number>;
}

/** A spring ready for use. stiffness: (6n)² over its nodes' global freedoms, n = 1 or 2. forces: what it carries along and
 *  about its axes (N ×3, N·m ×3) under the nodes' displacements u (6n): positive where the second end (to the ground: the
 *  point, seen from the ground) has moved along the axis away from the first, so a pull along x is positive. */
export interface Spring {
  readonly stiffness: Float64Array;
  readonly forces: (u: Float64Array) => Float64Array;
}

/** Bᵀ k B with B how far the two ends part: R (u_2 + θ_2 × o_2 - u_1 - θ_1 × o_1) and R (θ_2 - θ_1). Both ends
 *  must lie at one place: the offsets say where, and are not checked against the nodes.
 *  Refuses a stiffness that is negative or not finite, and axes that are not orthonormal. */
export function spring({ stiffness: k, offsets, axes }: SpringInput): Spring {
  k.forEach((value, freedom) => {
    if (!(value >= 0 && value < Infinity))
      throw refusal({
        what: `A spring’s stiffness must be zero or more and finite, it is ${value}`,
        where: { freedom },
        mend: 'Give its stiffness; tie parts that cannot part by a beam or a shared node',
      });
  });
  const R = axes ?? [1, 0, 0, 0, 1, 0, 0, 0, 1];
  for (let r = 0; r < 3; r++)
    for (let c = 0; c <= r; c++) {
      const product = R[3 * r]! * R[3 * c]! + R[3 * r + 1]! * R[3 * c + 1]! + R[3 * r + 2]! * R[3 * c + 2]!;
      if (!(Math.abs(product - (r === c ? 1 : 0)) < 1e-9))
        throw refusal({
          what: 'A spring’s axes are not square to each other and of length 1',
          mend: 'Give three unit vectors',
        });
    }
  const width = 6 * offsets.length;
  const B = new Float64Array(6 * width);
  offsets.forEach(([x, y, z], end) => {
    const sign = end === 0 && offsets.length === 2 ? -1 : 1;
    for (let r = 0; r < 3; r++) {
      const [a, b, c] = [sign * R[3 * r]!, sign * R[3 * r + 1]!, sign * R[3 * r + 2]!];
      // e · (θ × o) = θ · (o × e)
      B.set([a, b, c, y * c - z * b, z * a - x * c, x * b - y * a], r * width + 6 * end);
      B.set([a, b, c], (3 + r) * width + 6 * end + 3);
    }
  });
  const K = new Float64Array(width * width);
  for (let i = 0; i < width; i++)
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      for (let r = 0; r < 6; r++) sum += B[r * width + i]! * k[r]! * B[r * width + j]!;
      K[i * width + j] = K[j * width + i] = sum;
    }
  const forces = (u: Float64Array): Float64Array =>
    Float64Array.from(k, (value, r) => {
      let parting = 0;
      for (let c = 0; c < width; c++) parting += B[r * width + c]! * u[c]!;
      return value * parting;
    });
  return { stiffness: K, forces };
}
