import { describe, expect, it } from 'vitest';
import { bestAmong, type Carried } from '../../../core/water/lattice/best-among.ts';
import { doubletKernel } from '../../../core/water/lattice/doublet-kernel.ts';
import { lattice } from '../../../core/water/lattice/lattice.ts';
import { complexSolver, type ComplexField } from '../../../core/water/lattice/solve-complex.ts';

const [nx, ny, h] = [12, 9, 0.1];
const n = nx * ny;
const plane = lattice(nx, ny, h, doubletKernel(h));
const field = (at: (k: number) => readonly [number, number]): ComplexField => ({
  re: Float64Array.from({ length: n }, (_, k) => at(k)[0]),
  im: Float64Array.from({ length: n }, (_, k) => at(k)[1]),
});
const open = (k: number): boolean => k % 7 === 3;
const one = field((k) => (open(k) ? [0, 0] : [1, 0]));

const solved = (D: ComplexField): Carried => {
  const [mu, K] = [field(() => [0, 0]), field(() => [0, 0])];
  complexSolver(plane)(D, one, mu, K, { tolerance: 1e-12 });
  return { mu, K };
};
/** Losses of `much`, with open cells. */
const lossy = (much: number): ComplexField => field((k) => [open(k) ? Infinity : much * (k % 3), much * (k % 5)]);

const difference = (a: ComplexField, b: ComplexField): number =>
  Math.hypot(...a.re.map((re, k) => Math.hypot(re - b.re[k]!, a.im[k]! - b.im[k]!)));
/** Σ u (v − (K + D) μ), neither conjugated: what a sum of fields leaves along one of them. */
const leftAlong = (u: ComplexField, D: ComplexField, { mu, K }: Carried): number => {
  let [re, im] = [0, 0];
  for (let k = 0; k < n; k++) {
    if (open(k)) continue;
    const x = one.re[k]! - K.re[k]! - (D.re[k]! * mu.re[k]! - D.im[k]! * mu.im[k]!);
    const y = one.im[k]! - K.im[k]! - (D.re[k]! * mu.im[k]! + D.im[k]! * mu.re[k]!);
    re += u.re[k]! * x - u.im[k]! * y;
    im += u.re[k]! * y + u.im[k]! * x;
  }
  return Math.hypot(re, im);
};

describe('the best sum of fields', () => {
  it('is the answer where the answer is among them', () => {
    const D = lossy(2);
    const right = solved(D);
    const to = solved(lossy(9));
    bestAmong([to, solved(lossy(1)), right], D, one, to);
    expect(difference(to.mu, right.mu)).toBeLessThan(1e-9 * Math.hypot(...right.mu.re));
    expect(difference(to.K, right.K)).toBeLessThan(1e-9 * Math.hypot(...right.K.re));
  });

  it('leaves nothing along any of them, and K μ is carried with it', () => {
    const D = lossy(4);
    const fields = [solved(lossy(1)), solved(lossy(9))];
    const to = { mu: field(() => [0, 0]), K: field(() => [0, 0]) };
    const before = leftAlong(fields[0]!.mu, D, to);
    bestAmong(fields, D, one, to);
    for (const { mu } of fields) expect(leftAlong(mu, D, to)).toBeLessThan(1e-10 * before);
    const anew = field(() => [0, 0]);
    plane.apply(to.mu.re, to.mu.im, anew.re, anew.im);
    expect(difference(anew, to.K)).toBeLessThan(1e-9 * Math.hypot(...anew.re));
  });

  it('leaves the start as it is without fields, and where two are the same', () => {
    const to = solved(lossy(3));
    const was = to.mu.re.slice();
    bestAmong([], lossy(4), one, to);
    expect(to.mu.re).toEqual(was);
    bestAmong([to, to], lossy(4), one, to);
    expect(to.mu.re.every(Number.isFinite)).toBe(true);
  });
});
