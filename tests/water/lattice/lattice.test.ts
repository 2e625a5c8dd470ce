import { describe, expect, it } from 'vitest';
import { doubletKernel } from '../../../core/water/lattice/doublet-kernel.ts';
import { fourier, fourierLength, fourierPlan } from '../../../core/water/lattice/fourier.ts';
import { lattice } from '../../../core/water/lattice/lattice.ts';
import { solvePair } from '../../../core/water/lattice/solve-pair.ts';

/** Numbers between −1 and 1 from a linear congruence (constants of ISO C’s example). */
function numbers(count: number, seed: number): Float64Array {
  let state = seed;
  return Float64Array.from({ length: count }, () => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return state / 1073741824 - 1;
  });
}

describe('the transform', () => {
  it.each([1, 2, 3, 4, 5, 8, 12, 60, 64, 100])('of length %d is the sum that defines it, for several series', (n) => {
    const batch = 3;
    const [re, im] = [numbers(n * batch, 1), numbers(n * batch, 2)];
    const [x, y] = [re.slice(), im.slice()];
    const spare = [new Float64Array(n * batch), new Float64Array(n * batch)] as const;
    const [X, Y] = fourier(fourierPlan(n), x, y, spare[0], spare[1], batch) ? spare : [x, y];
    for (let k = 0; k < n; k++)
      for (let b = 0; b < batch; b++) {
        let [sumRe, sumIm] = [0, 0];
        for (let j = 0; j < n; j++) {
          const angle = (-2 * Math.PI * j * k) / n;
          const [c, s] = [Math.cos(angle), Math.sin(angle)];
          sumRe += re[j * batch + b]! * c - im[j * batch + b]! * s;
          sumIm += re[j * batch + b]! * s + im[j * batch + b]! * c;
        }
        expect(Math.abs(X[k * batch + b]! - sumRe)).toBeLessThan(1e-12 * n);
        expect(Math.abs(Y[k * batch + b]! - sumIm)).toBeLessThan(1e-12 * n);
      }
  });

  it('takes lengths of 2, 3 and 5 only, and says the next one', () => {
    expect([7, 11, 121, 399].map(fourierLength)).toEqual([8, 12, 125, 400]);
    expect(() => fourierPlan(7)).toThrow(/length 7 is not made/);
  });
});

describe('the operator on a lattice', () => {
  const [nx, ny, h] = [9, 6, 0.1];
  const kernel = doubletKernel(h);
  const on = lattice(nx, ny, h, kernel);
  const n = nx * ny;
  const dense = (x: Float64Array): Float64Array =>
    x.map((_, k) => {
      let sum = 0;
      for (let l = 0; l < n; l++) sum += kernel(Math.abs((k % nx) - (l % nx)), Math.abs(Math.floor(k / nx) - Math.floor(l / nx))) * x[l]!; // prettier-ignore
      return sum;
    });
  const dot = (a: Float64Array, b: Float64Array): number => a.reduce((sum, value, k) => sum + value * b[k]!, 0);

  it('is the sum over all cells, for both fields at once, and leaves what it is given', () => {
    const [a, b, c, d] = [numbers(n, 3), numbers(n, 4), new Float64Array(n), new Float64Array(n)];
    const before = a.slice();
    on.apply(a, b, c, d);
    expect(a).toEqual(before);
    const [e, f] = [dense(a), dense(b)];
    for (let k = 0; k < n; k++) {
      expect(Math.abs(c[k]! - e[k]!)).toBeLessThan(1e-11);
      expect(Math.abs(d[k]! - f[k]!)).toBeLessThan(1e-11);
    }
  });

  it('is symmetric and positive definite, and so is its approximate inverse', () => {
    for (const op of [on.apply, on.approximateInverse])
      for (let seed = 5; seed < 25; seed += 2) {
        const [a, b, c, d] = [numbers(n, seed), numbers(n, seed + 1), new Float64Array(n), new Float64Array(n)];
        op(a, b, c, d);
        expect(Math.abs(dot(a, d) - dot(b, c))).toBeLessThan(1e-12 * (Math.abs(dot(a, c)) + Math.abs(dot(b, d))));
        expect(dot(a, c)).toBeGreaterThan(0);
      }
  });

  it('has a positive own influence, negative others and a positive row sum: its inverse has no negative entry', () => {
    let sum = kernel(0, 0);
    for (let i = -30; i <= 30; i++)
      for (let j = -30; j <= 30; j++)
        if (i !== 0 || j !== 0) {
          expect(kernel(i, j)).toBeLessThan(0);
          sum += kernel(i, j);
        }
    expect(sum).toBeGreaterThan(0);
    expect(sum).toBeLessThan(0.02 * kernel(0, 0));
  });

  it('is solved to the residual that it says, each of two problems with its own open cells; reciprocity holds', () => {
    const D = new Float64Array(n).map((_, k) => (k % 7 === 3 ? Infinity : k % 5));
    const [v, w] = [numbers(n, 40), numbers(n, 41)];
    const [first, second] = solvePair(
      on,
      [
        { D, v },
        { D, v: w },
      ],
      { tolerance: 1e-12 },
    );
    expect(first.residual).toBeLessThan(1e-11);
    const K = dense(first.mu);
    for (let k = 0; k < n; k++)
      if (D[k] === Infinity) expect(first.mu[k]).toBe(0);
      else expect(Math.abs(K[k]! + D[k]! * first.mu[k]! - v[k]!)).toBeLessThan(1e-10);
    expect(Math.abs(dot(w, first.mu) - dot(v, second.mu))).toBeLessThan(1e-10);
    const [again] = solvePair(
      on,
      [
        { D, v },
        { D, v: w },
      ],
      { starts: [first.mu, second.mu] },
    );
    expect(again.iterations).toBe(0);
  });
});
