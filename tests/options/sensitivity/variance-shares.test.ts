import { expect, it } from 'vitest';
import { countedRandom } from '../../../core/counted-random.ts';
import { drained } from '../../../core/solve/drained.ts';
import { varianceShares } from '../../../core/options/sensitivity/variance-shares.ts';

const { PI: π, sin } = Math;

/** Ishigami & Homma (1990) with a = 7, b = 0.1, each input uniform on (−π, π). */
const ishigami = (u: Float64Array): number => {
  const [x1, x2, x3] = [...u].map((value) => π * (2 * value - 1)) as [number, number, number];
  return sin(x1) + 7 * sin(x2) ** 2 + 0.1 * x3 ** 4 * sin(x1);
};

it('gives the indices of the Ishigami function: S = 0.3139, 0.4424, 0 and T = 0.5576, 0.4424, 0.2437 (closed form; Saltelli et al., Global Sensitivity Analysis, 2008, from memory)', () => {
  const n = 40_000;
  const { first, total, mean, variance } = drained(varianceShares(ishigami, 3, { points: n, seed: 20 }));
  // The estimators scatter by about 2/√n of the variance.
  const scatter = 4 / Math.sqrt(n);
  [0.3139, 0.4424, 0].forEach((value, i) => expect(Math.abs(first[i]! - value)).toBeLessThan(scatter));
  [0.5576, 0.4424, 0.2437].forEach((value, i) => expect(Math.abs(total[i]! - value)).toBeLessThan(scatter));
  // Mean a/2; variance a²/8 + b π⁴/5 + b² π⁸/18 + 1/2, in closed form.
  expect(Math.abs(mean - 3.5)).toBeLessThan(0.06);
  expect(Math.abs(variance / (49 / 8 + (0.1 * π ** 4) / 5 + (0.01 * π ** 8) / 18 + 0.5) - 1)).toBeLessThan(0.02);
});

it('gives the same for the same seed, another sample for another', () => {
  const of = (seed: number) => drained(varianceShares(ishigami, 3, { points: 64, seed }));
  expect(of(1)).toEqual(of(1));
  expect(of(1).mean).not.toBe(of(2).mean);
});

it('counts numbers that fill [0, 1) evenly: mean 1/2 and variance 1/12 within four standard errors', () => {
  const n = 100_000;
  const values = Array.from({ length: n }, (_, i) => countedRandom(7, i));
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  expect(Math.abs(mean - 0.5)).toBeLessThan(4 / Math.sqrt(12 * n));
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / n;
  expect(Math.abs(variance - 1 / 12)).toBeLessThan(4 / Math.sqrt(180 * n));
  expect(Math.min(...values.slice(0, 1000)) >= 0 && Math.max(...values.slice(0, 1000)) < 1).toBe(true);
});

it('refuses a result that nothing moves', () => {
  expect(() => drained(varianceShares(() => 1, 2, { points: 16, seed: 1 }))).toThrow(/None of these inputs/);
});
