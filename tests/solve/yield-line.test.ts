import { expect, it } from 'vitest';
import { yieldLine } from '../../core/solve/yield-line.ts';

const factor = (ratio: number, edges: 'hinged' | 'held'): number => yieldLine({ a: ratio, b: 1, t: 2, fy: 1 }, edges);

it('gives q b² / m of the roof mode (work method, derived): 24 for the square, 8 for the strip, twice that held', () => {
  for (const [ratio, hinged, held] of [
    [1, 24, 48],
    [1.25, 19.5536, 39.1072],
    [1.5, 16.9692, 33.9384],
    [2, 14.1407, 28.2815],
    [3, 11.7283, 23.4566],
  ] as const) {
    expect(Math.abs(factor(ratio, 'hinged') - hinged)).toBeLessThan(0.6e-4);
    expect(Math.abs(factor(ratio, 'held') - held)).toBeLessThan(1.1e-4);
    expect(factor(1 / ratio, 'hinged') / ratio ** 2).toBeCloseTo(factor(ratio, 'hinged'), 9);
  }
  expect(factor(1e6, 'hinged')).toBeCloseTo(8, 4);
  expect(factor(1e6, 'held')).toBeCloseTo(16, 4);
});

it('is the least over the free length of the roof’s ridge, by direct minimising of the work', () => {
  // Ridge from x to l - x, sinking by 1, s = 1: planes along the sides turn by 2 over length l, those at the ends by 1/x
  // over length 1, so the work inside is m (4 l + 2/x); the volume under the roof is l/2 - x/3.
  const collapse = (l: number, x: number): number => (4 * l + 2 / x) / (l / 2 - x / 3);
  for (const l of [1, 1.5, 2, 3]) {
    let least = Infinity;
    for (let x = 0.001; x <= l / 2; x += 0.0001) least = Math.min(least, collapse(l, x));
    expect(Math.abs(factor(l, 'hinged') / least - 1)).toBeLessThan(1e-6);
  }
});

it('worked square, 1 m, 10 mm, 355 MPa: 213.0 kPa', () => {
  expect(yieldLine({ a: 1, b: 1, t: 0.01, fy: 355e6 }, 'hinged') / 1e3).toBeCloseTo(213, 1);
  expect(() => yieldLine({ a: 1, b: 1, t: 0.01, fy: 0 }, 'hinged')).toThrow(/fy must be positive/);
});
