import { median } from '../record/median.ts';
import { summedFit } from './summed-fit.ts';

/** Least squares in which a reading far off counts less: Huber's weights, c = 1.345 deviations. */
export interface RobustFit {
  readonly theta: Float64Array;
  /** Readings more than four deviations off. */
  readonly outliers: number;
}

const tuning = 1.345;
const outlying = 4;
/** Of a coefficient, when the turns end: far under what its interval leaves open. */
const settled = 1e-7;

/**
 * Fits y = Xθ by iterated weights w = min(1, c s / |e|), s = 1.4826 median |e|, from a first θ.
 * X: k columns of n, which an unweighted fit was found to tell apart. Settles, or stops after 50 turns.
 * Source: Huber, Robust Statistics (1981), 7.8 (from memory).
 */
export function robustFit(X: readonly Float64Array[], y: Float64Array, start: Float64Array): RobustFit {
  const [k, n] = [X.length, y.length];
  let theta = start;
  for (let turn = 0; turn < 50; turn++) {
    const s = deviation(X, y, theta);
    if (s === 0) break;
    const next = summedFit(n, k, (i, x) => {
      const root = Math.sqrt(Math.min(1, (tuning * s) / Math.abs(leftOver(X, y, theta, i))));
      for (let j = 0; j < k; j++) x[j] = root * X[j]![i]!;
      return root * y[i]!;
    }).theta;
    const change = next.reduce((most, value, j) => Math.max(most, Math.abs(value - theta[j]!) / (Math.abs(value) || 1)), 0); // prettier-ignore
    theta = next;
    if (change < settled) break;
  }
  const s = deviation(X, y, theta);
  let outliers = 0;
  if (s > 0) for (let i = 0; i < n; i++) if (Math.abs(leftOver(X, y, theta, i)) > outlying * s) outliers++;
  return { theta, outliers };
}

/** (y − Xθ)_i */
function leftOver(X: readonly Float64Array[], y: Float64Array, theta: Float64Array, i: number): number {
  let e = y[i]!;
  for (let j = 0; j < X.length; j++) e -= theta[j]! * X[j]![i]!;
  return e;
}

/** 1.4826 times the median of |e|, of at most some 50,000 readings at even places. */
function deviation(X: readonly Float64Array[], y: Float64Array, theta: Float64Array): number {
  const every = Math.ceil(y.length / 50_000);
  const e = new Float64Array(Math.ceil(y.length / every));
  for (let i = 0; i < e.length; i++) e[i] = Math.abs(leftOver(X, y, theta, i * every));
  return 1.4826 * median(e);
}
