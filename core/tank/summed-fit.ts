import { refusal } from '../refusal.ts';

/** What a fit by its normal equations gives. */
export interface SummedFit {
  readonly theta: Float64Array;
  /** (XᵀX)⁻¹, k × k by rows. */
  readonly inverse: Float64Array;
}

/**
 * θ that makes ‖y − Xθ‖ least, by normal equations summed reading by reading, XᵀX scaled to a unit diagonal, Cholesky:
 *   XᵀX θ = Xᵀy
 * One pass and nothing kept of X, for fits over millions of readings and for those that are made many times. Error: about
 * the square of X's condition × 2e-16, so for columns that are nearly orthogonal or that `leastSquares` was found to tell
 * apart. `row` fills x with the k numbers of reading i and gives its y; a weight is in both as its square root.
 * Refuses columns that are not independent (a pivot under 1e-12).
 */
export function summedFit(n: number, k: number, row: (i: number, x: Float64Array) => number): SummedFit {
  const A = new Float64Array(k * k);
  const b = new Float64Array(k);
  const x = new Float64Array(k);
  for (let i = 0; i < n; i++) {
    const y = row(i, x);
    for (let j = 0; j < k; j++) {
      const own = x[j]!;
      b[j]! += own * y;
      for (let c = j * k, d = j; d < k; d++) A[c + d]! += own * x[d]!;
    }
  }
  const length = b.map((_, j) => Math.sqrt(A[j * k + j]!) || 1);
  const L = new Float64Array(k * k);
  for (let j = 0; j < k; j++)
    for (let i = j; i < k; i++) {
      let sum = A[j * k + i]! / (length[i]! * length[j]!);
      for (let p = 0; p < j; p++) sum -= L[i * k + p]! * L[j * k + p]!;
      if (i === j && !(sum > 1e-12))
        throw refusal({
          what: 'Two of the unknowns cannot be told apart by this record',
          where: { field: 'model' },
          mend: 'Ask for fewer unknowns, or give a record with more than one amplitude and period.',
        });
      L[i * k + j] = i === j ? Math.sqrt(sum) : sum / L[j * k + j]!;
    }
  // columns of L⁻¹, then (XᵀX)⁻¹ = L⁻ᵀ L⁻¹
  const M = new Float64Array(k * k);
  for (let c = 0; c < k; c++)
    for (let i = c; i < k; i++) {
      let sum = i === c ? 1 : 0;
      for (let p = c; p < i; p++) sum -= L[i * k + p]! * M[p * k + c]!;
      M[i * k + c] = sum / L[i * k + i]!;
    }
  const inverse = new Float64Array(k * k);
  for (let i = 0; i < k; i++)
    for (let j = 0; j < k; j++) {
      let sum = 0;
      for (let p = Math.max(i, j); p < k; p++) sum += M[p * k + i]! * M[p * k + j]!;
      inverse[i * k + j] = sum / (length[i]! * length[j]!);
    }
  const theta = b.map((_, i) => b.reduce((sum, own, j) => sum + inverse[i * k + j]! * own, 0));
  return { theta, inverse };
}
