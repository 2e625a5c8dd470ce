import { refusal } from '../../refusal.ts';
import { countedRandom } from '../../counted-random.ts';

export interface Sampling {
  readonly points: number;
  readonly seed: number;
}

/** Parts of a result's variance that each input has: by itself, and with all that it does together with others. */
export interface VarianceShares {
  readonly first: readonly number[];
  readonly total: readonly number[];
  readonly mean: number;
  readonly variance: number;
  /** Results at the sampled points, lowest first: the distribution. */
  readonly sorted: Float64Array;
}

/**
 * First-order and total indices of a function of d inputs, each uniform on [0, 1) (the caller maps them), by two
 * independent samples A, B and the d samples that are A with one column of B:
 *    V S_i  ≈ 1/n Σ f(B) (f(A_B^i) − f(A)),    V T_i ≈ 1/(2n) Σ (f(A) − f(A_B^i))²
 * n (d + 2) calls of f; yields how many of n are done. The seed decides all. The error falls as 1/√n. Refuses n under 8, and no spread at all.
 * Source: Saltelli et al. (2010), Computer Physics Communications 181, Table 2 (b) and (f), from memory.
 */
export function* varianceShares(
  f: (x: Float64Array) => number,
  d: number,
  { points: n, seed }: Sampling,
): Generator<number, VarianceShares> {
  if (!(Number.isInteger(n) && n >= 8))
    throw refusal({
      what: `${n} points are too few`,
      where: { field: 'points' },
      mend: 'Take at least 8; hundreds for one figure.',
    });
  const a = new Float64Array(d);
  const b = new Float64Array(d);
  const first = new Float64Array(d);
  const total = new Float64Array(d);
  const sorted = new Float64Array(2 * n);
  const rows: { readonly fA: number; readonly fB: number; readonly mixed: Float64Array }[] = [];
  for (let k = 0; k < n; k++) {
    yield k;
    for (let i = 0; i < d; i++) {
      a[i] = countedRandom(seed, 2 * (k * d + i));
      b[i] = countedRandom(seed, 2 * (k * d + i) + 1);
    }
    const [fA, fB] = [f(a), f(b)];
    const mixed = new Float64Array(d);
    for (let i = 0; i < d; i++) {
      const own = a[i]!;
      a[i] = b[i]!;
      mixed[i] = f(a);
      a[i] = own;
    }
    rows.push({ fA, fB, mixed });
    sorted[2 * k] = fA;
    sorted[2 * k + 1] = fB;
  }
  const mean = sorted.reduce((sum, value) => sum + value, 0) / (2 * n);
  const variance = sorted.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (2 * n - 1);
  if (!(variance > 0))
    throw refusal({
      what: 'None of these inputs moves the result',
      where: { field: 'tolerances' },
      mend: 'Give tolerances of inputs that the check reads.',
    });
  for (const { fA, fB, mixed } of rows)
    for (let i = 0; i < d; i++) {
      // Measured from the mean: the same in expectation, with less scatter.
      first[i]! += ((fB - mean) * (mixed[i]! - fA)) / (n * variance);
      total[i]! += (fA - mixed[i]!) ** 2 / (2 * n * variance);
    }
  return { first: [...first], total: [...total], mean, variance, sorted: sorted.sort() };
}
