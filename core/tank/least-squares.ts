import { refusal } from '../refusal.ts';

export interface Fit {
  /** Coefficients θ (k). */
  readonly theta: Float64Array;
  /** y − Xθ (n). */
  readonly residual: Float64Array;
  /** (XᵀX)⁻¹, k × k by rows. */
  readonly inverse: Float64Array;
  /** Condition number of X with its columns scaled to unit length: 1 when they are orthogonal. */
  readonly condition: number;
}

/**
 * θ that makes ‖y − Xθ‖ least, by Householder's QR of X with its columns scaled to unit length:
 *   QᵀX = R,   R θ = Qᵀy,   (XᵀX)⁻¹ = R⁻¹ R⁻ᵀ
 * X: k columns of n numbers each, any units. Refuses fewer rows than columns, and columns that are not independent
 * (a diagonal of R under 1e-12). Error: about condition × 2e-16.
 * Source: Golub & Van Loan, Matrix Computations, 5.3 (from memory).
 */
export function leastSquares(X: readonly Float64Array[], y: Float64Array): Fit {
  const [k, n] = [X.length, y.length];
  if (n < k)
    throw refusal({
      what: `${n} readings cannot give ${k} unknowns`,
      where: { field: 'record' },
      mend: 'Give a longer record, or ask for fewer unknowns.',
    });
  const length = X.map(norm);
  const Q = X.map((column, j) => {
    const scale = length[j]! > 0 ? 1 / length[j]! : 0;
    const own = new Float64Array(n);
    for (let i = 0; i < n; i++) own[i] = column[i]! * scale;
    return own;
  });
  const b = Float64Array.from(y);
  const R = new Float64Array(k * k);
  for (let j = 0; j < k; j++) {
    const v = Q[j]!;
    const alpha = -Math.sign(v[j]! || 1) * norm(v.subarray(j));
    if (Math.abs(alpha) < 1e-12)
      throw refusal({
        what: 'Two of the unknowns cannot be told apart by this record',
        where: { field: 'model' },
        mend: 'Ask for fewer unknowns, or give a record with more than one amplitude and period.',
      });
    v[j]! -= alpha;
    const half = dot(v, v, j) / 2;
    for (const target of [...Q.slice(j + 1), b]) {
      const scale = dot(v, target, j) / half;
      for (let i = j; i < n; i++) target[i]! -= scale * v[i]!;
    }
    R[j * k + j] = alpha;
    for (let c = j + 1; c < k; c++) R[j * k + c] = Q[c]![j]!;
  }
  const Rinv = new Float64Array(k * k);
  for (let c = 0; c < k; c++)
    for (let i = c; i >= 0; i--) {
      let sum = i === c ? 1 : 0;
      for (let p = i + 1; p <= c; p++) sum -= R[i * k + p]! * Rinv[p * k + c]!;
      Rinv[i * k + c] = sum / R[i * k + i]!;
    }
  const theta = new Float64Array(k);
  const inverse = new Float64Array(k * k);
  for (let i = 0; i < k; i++) {
    for (let c = i; c < k; c++) theta[i]! += (Rinv[i * k + c]! * b[c]!) / length[i]!;
    for (let j = 0; j < k; j++)
      for (let c = Math.max(i, j); c < k; c++)
        inverse[i * k + j]! += (Rinv[i * k + c]! * Rinv[j * k + c]!) / (length[i]! * length[j]!);
  }
  const residual = Float64Array.from(y);
  X.forEach((column, j) => {
    for (let i = 0; i < n; i++) residual[i]! -= theta[j]! * column[i]!;
  });
  return { theta, residual, inverse, condition: (frobenius(R) * frobenius(Rinv)) / k };
}

const dot = (a: Float64Array, b: Float64Array, from = 0): number => {
  let sum = 0;
  for (let i = from; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
};
const norm = (a: Float64Array): number => Math.sqrt(dot(a, a));
/** Bounds the 2-norm's condition within a factor k, and is 1 for orthogonal columns. */
const frobenius = norm;
