import { describe, expect, it } from 'vitest';
import { beamBasis } from '../../core/solve/beam-basis.ts';
import { boundedMemo } from '../../core/solve/bounded-memo.ts';
import { envelope, envelopeCholesky, solveLower, solveUpper } from '../../core/solve/envelope-cholesky.ts';
import { gaussLegendre } from '../../core/solve/gauss-legendre.ts';
import { monotoneCubic } from '../../core/solve/monotone-cubic.ts';

it('Gauss-Legendre: Abramowitz & Stegun, Table 25.4, n = 5, and exact for the highest degree it should be', () => {
  const { x, weight } = gaussLegendre(5);
  expect(x[4]).toBeCloseTo(0.906179845938664, 14);
  expect(weight[4]).toBeCloseTo(0.236926885056189, 14);
  expect(weight[2]).toBeCloseTo(0.568888888888889, 14);
  for (const n of [4, 17, 50]) {
    const rule = gaussLegendre(n);
    const integral = rule.x.reduce((sum, at, i) => sum + rule.weight[i]! * at ** (2 * n - 2), 0);
    expect(Math.abs(integral - 2 / (2 * n - 1))).toBeLessThan(1e-14);
  }
});

describe('envelope Cholesky', () => {
  it('solves a banded and a full system: K u = f to round-off', () => {
    for (const band of [2, 40]) {
      const n = 40;
      const first = Int32Array.from({ length: n }, (_, i) => Math.max(0, i - band));
      const K = envelope(first);
      const value = (i: number, j: number): number => (i === j ? 3 + band : Math.cos(i * j) * 0.9);
      for (let i = 0; i < n; i++) for (let j = first[i]!; j <= i; j++) K.entries[K.start[i]! + j] = value(i, j);
      const u = Float64Array.from({ length: n }, (_, i) => Math.sin(i + 1));
      const f = new Float64Array(n);
      for (let i = 0; i < n; i++)
        for (let j = 0; j < n; j++) if (Math.abs(i - j) <= band) f[i]! += value(Math.max(i, j), Math.min(i, j)) * u[j]!;
      expect(envelopeCholesky(K)).toBe(-1);
      solveUpper(K, solveLower(K, f));
      f.forEach((got, i) => expect(Math.abs(got - u[i]!)).toBeLessThan(1e-12));
    }
  });
  it('names the row that has no stiffness left', () => {
    const K = envelope(Int32Array.of(0, 0, 0));
    K.entries.set([1, 1, 2, 1, 1, 1]); // third row: 1 1 1, depends on the first
    expect(envelopeCholesky(K)).toBe(2);
  });
});

describe('polynomials for plate strips', () => {
  it('meet their ends: free, hinged and held', () => {
    for (const [ends, size] of [
      [['free', 'free'], 9],
      [['hinged', 'held'], 6],
      [['held', 'held'], 5],
      [['free', 'hinged'], 8],
    ] as const) {
      const basis = beamBasis(ends, 8, false);
      expect(basis.size).toBe(size);
      for (const [side, x] of [
        [0, -1],
        [1, 1],
      ] as const) {
        if (ends[side] !== 'free') for (const value of basis.at(x, 0)) expect(Math.abs(value)).toBeLessThan(1e-14);
        if (ends[side] === 'held') for (const value of basis.at(x, 1)) expect(Math.abs(value)).toBeLessThan(1e-14);
      }
    }
  });
  it('has derivatives that match differences, and even functions that are even', () => {
    const basis = beamBasis(['free', 'free'], 11, false);
    const h = 1e-5;
    for (const x of [-0.9, 0.13, 0.77])
      for (const order of [1, 2, 3] as const) {
        const lower = (order - 1) as 0 | 1 | 2;
        const [up, down] = [basis.at(x + h, lower), basis.at(x - h, lower)];
        basis
          .at(x, order)
          .forEach((value, i) => expect(Math.abs((up[i]! - down[i]!) / (2 * h) - value)).toBeLessThan(1e-4));
      }
    const even = beamBasis(['free', 'free'], 12, true);
    even.at(0.3, 0).forEach((value, i) => expect(even.at(-0.3, 0)[i]).toBeCloseTo(value, 14));
  });
});

it('the memo forgets the value longest unused, and makes each once', () => {
  const memo = boundedMemo<number>(2);
  let made = 0;
  const get = (key: string): number => memo(key, () => ++made);
  expect([get('a'), get('b'), get('a'), get('c'), get('a'), get('b')]).toEqual([1, 2, 1, 3, 1, 4]);
});

it('the monotone cubic passes its points, keeps straight lines straight and never overshoots', () => {
  const straight = monotoneCubic([0, 1, 3, 4], [1, 3, 7, 9]);
  for (const x of [0, 0.3, 2.2, 4]) expect(straight(x)).toBeCloseTo(1 + 2 * x, 12);
  const steep = monotoneCubic([0, 1, 2, 3], [0, 0, 1, 1]);
  for (let x = 0; x <= 3; x += 0.01) {
    expect(steep(x)).toBeGreaterThanOrEqual(-1e-12);
    expect(steep(x)).toBeLessThanOrEqual(1 + 1e-12);
  }
});
