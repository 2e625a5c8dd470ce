import { weightedFit } from './weighted-fit.ts';

/** Least squares in which a reading far off counts less: Huber's weights, c = 1.345 deviations. */
export interface RobustFit {
  readonly theta: Float64Array;
  /** Readings more than four deviations off. */
  readonly outliers: number;
}

const tuning = 1.345;
const outlying = 4;

/**
 * Fits y = Xθ by iterated weights w = min(1, c s / |e|), s = 1.4826 median |e|, from a first θ.
 * X: k columns of n. Settles to 1e-8 of θ or stops after 50 turns.
 * Source: Huber, Robust Statistics (1981), 7.8 (from memory).
 */
export function robustFit(X: readonly Float64Array[], y: Float64Array, start: Float64Array): RobustFit {
  let theta = start;
  let e = leftOver(X, y, theta);
  for (let turn = 0; turn < 50; turn++) {
    const s = deviation(e);
    if (s === 0) break;
    const next = weightedFit(X, y, (i) => Math.min(1, (tuning * s) / Math.abs(e[i]!)));
    const change = next.reduce(
      (most, value, j) => Math.max(most, Math.abs(value - theta[j]!) / (Math.abs(value) || 1)),
      0,
    );
    theta = next;
    e = leftOver(X, y, theta);
    if (change < 1e-8) break;
  }
  const s = deviation(e);
  return { theta, outliers: s === 0 ? 0 : e.reduce((count, one) => count + (Math.abs(one) > outlying * s ? 1 : 0), 0) };
}

/** y − Xθ. */
function leftOver(X: readonly Float64Array[], y: Float64Array, theta: Float64Array): Float64Array {
  const e = Float64Array.from(y);
  X.forEach((column, j) => {
    const own = theta[j]!;
    for (let i = 0; i < e.length; i++) e[i]! -= own * column[i]!;
  });
  return e;
}

/** 1.4826 times the median of |e|, of at most some 50,000 readings at even places: a million are not sorted for each turn. */
const deviation = (e: Float64Array): number => {
  const every = Math.ceil(e.length / 50_000);
  const sorted = new Float64Array(Math.ceil(e.length / every));
  for (let i = 0; i < sorted.length; i++) sorted[i] = Math.abs(e[i * every]!);
  sorted.sort();
  return 1.4826 * sorted[sorted.length >> 1]!;
};
