import type { ElementStiffness } from '../structure/element-stiffness.ts';
import type { StiffnessSystem } from './stiffness-system.ts';
import { strandsOf } from './strands.ts';

/** out ← K u by elements, strand by strand; forces of freedoms that are held are left in (the reactions). */
export function elementProduct({ elements }: StiffnessSystem, u: Float64Array, out: Float64Array): Float64Array {
  out.fill(0);
  let local = new Float64Array(48);
  let at = new Int32Array(48);
  for (const { nodes, stiffness } of elements) {
    const size = 6 * nodes.length;
    for (const members of strandsOf({ stiffness }).members) {
      const count = members.length;
      if (count > local.length) {
        local = new Float64Array(count);
        at = new Int32Array(count);
      }
      for (let k = 0; k < count; k++) {
        const a = members[k]!;
        const node = (a / 6) | 0;
        at[k] = 6 * nodes[node]! + (a - 6 * node);
        local[k] = u[at[k]!]!;
      }
      let k = 0;
      // Three rows side by side: each sums in its own order, and none waits for another's addition.
      for (; k + 2 < count; k += 3) {
        const row0 = members[k]! * size;
        const row1 = members[k + 1]! * size;
        const row2 = members[k + 2]! * size;
        let sum0 = 0;
        let sum1 = 0;
        let sum2 = 0;
        for (let j = 0; j < count; j++) {
          const m = members[j]!;
          const x = local[j]!;
          sum0 += stiffness[row0 + m]! * x;
          sum1 += stiffness[row1 + m]! * x;
          sum2 += stiffness[row2 + m]! * x;
        }
        out[at[k]!]! += sum0;
        out[at[k + 1]!]! += sum1;
        out[at[k + 2]!]! += sum2;
      }
      for (; k < count; k++) {
        const row = members[k]! * size;
        let sum = 0;
        for (let j = 0; j < count; j++) sum += stiffness[row + members[j]!]! * local[j]!;
        out[at[k]!]! += sum;
      }
    }
  }
  return out;
}

/** The largest column sum of |K| over free freedoms, bounded from above element by element: ‖K‖₁ = ‖K‖∞ up to where entries
 *  of neighbouring elements cancel. */
export function normBound({ elements, held }: StiffnessSystem): number {
  const sums = new Float64Array(held.length);
  for (const { nodes, stiffness } of elements) {
    const own = rowSums(stiffness, 6 * nodes.length);
    for (let a = 0; a < nodes.length; a++) for (let k = 0; k < 6; k++) sums[6 * nodes[a]! + k]! += own[6 * a + k]!;
  }
  return sums.reduce((most, sum, i) => (held[i] === 0 && sum > most ? sum : most), 0);
}

/** Σ_j |K_ij| of each row, found once for each matrix. */
function rowSums(stiffness: ElementStiffness['stiffness'], size: number): Float64Array {
  const known = sumsOf.get(stiffness);
  if (known) return known;
  const sums = new Float64Array(size);
  for (let i = 0, p = 0; i < size; i++) for (let j = 0; j < size; j++, p++) sums[i]! += Math.abs(stiffness[p]!);
  sumsOf.set(stiffness, sums);
  return sums;
}

const sumsOf = new WeakMap<Float64Array, Float64Array>();
