import type { StiffnessSystem } from './stiffness-system.ts';

/** out ← K u by elements; forces of freedoms that are held are left in (the reactions). */
export function elementProduct({ elements }: StiffnessSystem, u: Float64Array, out: Float64Array): Float64Array {
  out.fill(0);
  const local = new Float64Array(elements.reduce((most, { nodes }) => Math.max(most, 6 * nodes.length), 0));
  for (const { nodes, stiffness } of elements) {
    const size = 6 * nodes.length;
    for (let a = 0; a < nodes.length; a++) for (let k = 0; k < 6; k++) local[6 * a + k] = u[6 * nodes[a]! + k]!;
    for (let i = 0, p = 0; i < size; i++) {
      let sum = 0;
      for (let j = 0; j < size; j++, p++) sum += stiffness[p]! * local[j]!;
      out[6 * nodes[(i / 6) | 0]! + (i % 6)]! += sum;
    }
  }
  return out;
}

/** The largest column sum of |K| over free freedoms, bounded from above element by element: ‖K‖₁ = ‖K‖∞ up to where entries
 *  of neighbouring elements cancel. */
export function normBound({ elements, held }: StiffnessSystem): number {
  const sums = new Float64Array(held.length);
  for (const { nodes, stiffness } of elements) {
    const size = 6 * nodes.length;
    for (let i = 0, p = 0; i < size; i++) {
      let sum = 0;
      for (let j = 0; j < size; j++, p++) sum += Math.abs(stiffness[p]!);
      sums[6 * nodes[(i / 6) | 0]! + (i % 6)]! += sum;
    }
  }
  return sums.reduce((most, sum, i) => (held[i] === 0 && sum > most ? sum : most), 0);
}
