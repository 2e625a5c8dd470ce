import { expect, it } from 'vitest';
import { plateBuckling } from '../../core/solve/plate-buckling.ts';

const { PI: π } = Math;
const k = (ratio: number, load: 'compression' | 'shear', edges: 'hinged' | 'held'): number =>
  plateBuckling({ a: ratio, b: 1, t: 0.01, E: 210e9, nu: 0.3 }, load, edges) /
  ((π ** 2 * 210e9 * 0.01 ** 2) / (12 * 0.91));

it('compression, hinged: k = 4 at whole side ratios, 4.5 at √2, 6.25 at ½ (Timoshenko & Gere, 2nd ed., ch. 9, from memory)', () => {
  for (const ratio of [1, 2, 3, 7]) expect(k(ratio, 'compression', 'hinged')).toBeCloseTo(4, 10);
  expect(k(Math.SQRT2, 'compression', 'hinged')).toBeCloseTo(4.5, 10);
  expect(k(0.5, 'compression', 'hinged')).toBeCloseTo(6.25, 10);
  // Half-waves change over at √(m (m + 1)).
  expect(k(2.5, 'compression', 'hinged')).toBeCloseTo(Math.min((2 / 2.5 + 2.5 / 2) ** 2, (3 / 2.5 + 2.5 / 3) ** 2), 10);
});

it('compression, held along the load: 6.97, the root of the strip’s own determinant (derived)', () => {
  // Half-wave λ (b = 1, clamped along the load): least over λ of the first zero of Levy's determinant.
  const determinant = (kk: number, λ: number): number => {
    const [m, load] = [π / λ, π * Math.sqrt(kk)];
    const [α, β] = [Math.sqrt(m * load + m * m), Math.sqrt(m * load - m * m)];
    return α * Math.tanh(α / 2) + β * Math.tan(β / 2);
  };
  let least = Infinity;
  for (let λ = 0.55; λ < 0.8; λ += 0.001) {
    let [low, high] = [5.5, 9];
    for (let step = 0; step < 50; step++) {
      const middle = (low + high) / 2;
      if (determinant(middle, λ) > 0 || Number.isNaN(determinant(middle, λ))) high = middle;
      else low = middle;
    }
    least = Math.min(least, low);
  }
  expect(Math.abs(least - 6.9709)).toBeLessThan(2e-4);
  expect(Math.abs(k(3, 'compression', 'held') - least)).toBeLessThan(1e-3);
});

it('shear: 9.34 for the square, 5.34 for a long strip, held 14.58 and 8.98 (from memory); sides may change places', () => {
  expect(k(1, 'shear', 'hinged')).toBeCloseTo(9.34, 10);
  expect(k(1e5, 'shear', 'hinged')).toBeCloseTo(5.34, 6);
  expect(k(1, 'shear', 'held')).toBeCloseTo(14.58, 10);
  expect(k(0.5, 'shear', 'hinged') / 4).toBeCloseTo(k(2, 'shear', 'hinged'), 10);
});
