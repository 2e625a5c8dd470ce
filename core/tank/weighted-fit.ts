import { leastSquares } from './least-squares.ts';

/**
 * θ that makes Σ w_i (y − Xθ)_i² least, by its normal equations XᵀWX θ = XᵀWy with columns scaled to unit length: one
 * pass over the readings and nothing allocated, for fits that are made many times. Error: about the square of X's
 * condition × 2e-16, so only for columns that an unweighted fit (`leastSquares`) was found to tell apart.
 * X: k columns of n numbers; w: of each reading, not negative.
 */
export function weightedFit(X: readonly Float64Array[], y: Float64Array, w: (i: number) => number): Float64Array {
  const [k, n] = [X.length, y.length];
  const A = Array.from({ length: k }, () => new Float64Array(k));
  const b = new Float64Array(k);
  for (let i = 0; i < n; i++) {
    const weight = w(i);
    for (let j = 0; j < k; j++) {
      const own = weight * X[j]![i]!;
      b[j]! += own * y[i]!;
      for (let c = j; c < k; c++) A[j]![c]! += own * X[c]![i]!;
    }
  }
  const length = A.map((row, j) => Math.sqrt(row[j]!) || 1);
  for (let j = 0; j < k; j++) {
    b[j]! /= length[j]!;
    for (let c = j; c < k; c++) A[c]![j] = A[j]![c] = A[j]![c]! / (length[j]! * length[c]!);
  }
  return leastSquares(A, b).theta.map((scaled, j) => scaled / length[j]!);
}
