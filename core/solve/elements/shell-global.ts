import type { ShellShape } from './shell-shape.ts';

/** Which three local freedoms of each node a matrix of a flat element has: [u v θz] or [w θx θy]. */
export type ShellPart = 'membrane' | 'bending';

/** The three local freedoms of node i at the element's plane from its six global ones: 3 × 6 by rows. A node that stands
 *  h above the plane takes it along by a rigid link: u = u_node - h θy, v = v_node + h θx. */
export function localFromGlobal({ axes, height }: ShellShape, i: number, part: ShellPart): Float64Array {
  const T = new Float64Array(18);
  const h = height[i]!;
  for (let c = 0; c < 3; c++) {
    const [e1, e2, e3] = [axes[c]!, axes[3 + c]!, axes[6 + c]!];
    if (part === 'membrane') {
      T[c] = e1;
      T[3 + c] = -h * e2;
      T[6 + c] = e2;
      T[9 + c] = h * e1;
      T[15 + c] = e3;
    } else {
      T[c] = e3;
      T[9 + c] = e1;
      T[15 + c] = e2;
    }
  }
  return T;
}

/** Tᵀ K T: a matrix (3n)² over one part's local freedoms, as (6n)² over the nodes' global freedoms; exactly symmetric. */
export function globalFromLocal(shape: ShellShape, K: Float64Array, part: ShellPart): Float64Array {
  const { count } = shape;
  const [local, global] = [3 * count, 6 * count];
  const T = Array.from({ length: count }, (_, i) => localFromGlobal(shape, i, part));
  const KT = new Float64Array(local * global);
  for (let r = 0; r < local; r++)
    for (let i = 0; i < count; i++)
      for (let c = 0; c < 6; c++) {
        let sum = 0;
        for (let k = 0; k < 3; k++) sum += K[r * local + 3 * i + k]! * T[i]![6 * k + c]!;
        KT[r * global + 6 * i + c] = sum;
      }
  const out = new Float64Array(global * global);
  for (let i = 0; i < count; i++)
    for (let r = 0; r < 6; r++)
      for (let c = 0; c <= 6 * i + r; c++) {
        let sum = 0;
        for (let k = 0; k < 3; k++) sum += T[i]![6 * k + r]! * KT[(3 * i + k) * global + c]!;
        out[(6 * i + r) * global + c] = out[c * global + 6 * i + r] = sum;
      }
  return out;
}
