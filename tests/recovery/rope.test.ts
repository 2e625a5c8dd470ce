import { expect, it } from 'vitest';
import { bendPart, ropeStrength } from '../../core/recovery/rope-strength.ts';
import { canisterHeight, stowedVolume } from '../../core/recovery/rope-stowage.ts';

it('loses over a bend what 0027/ND Rev 11, 7.8 prints: factors 2.00, 1.69, 1.55, 1.41, 1.33, 1.29, 1.26, 1.23 at D/d 1 to 7', () => {
  for (const [ratio, factor] of [
    [1, 2],
    [1.5, 1.69],
    [2, 1.55],
    [3, 1.41],
    [4, 1.33],
    [5, 1.29],
    [6, 1.26],
    [7, 1.23],
  ] as const)
    // prettier-ignore
    expect(Math.abs(1 / bendPart(ratio * 0.012, 0.012) - factor), `D/d ${ratio}`).toBeLessThan(0.0051);
  expect(bendPart(Infinity, 0.012)).toBe(1);
  expect(() => bendPart(0.005, 0.012)).toThrow(/positive/);
});

it('takes the worse of splice and bend, not both (0027/ND Rev 11, 7.7.2), and every other loss', () => {
  const rest = { wear: 0.9, wet: 0.85, age: 0.95 };
  expect(ropeStrength(100, { splice: 0.9, bend: 0.776, ...rest })).toBeCloseTo(100 * 0.776 * 0.9 * 0.85 * 0.95, 9);
  expect(ropeStrength(100, { splice: 0.7, bend: 0.776, ...rest })).toBeCloseTo(100 * 0.7 * 0.9 * 0.85 * 0.95, 9);
});

it('stows 100 m of 12 mm at half the space in 22.6 L and of 16 mm in 40.2 L (derived by hand)', () => {
  expect(1000 * stowedVolume(0.012, 100, 0.5)).toBeCloseTo(22.6, 1);
  expect(1000 * stowedVolume(0.016, 100, 0.5)).toBeCloseTo(40.2, 1);
});

it('agrees with the capacity of a reel as an oceanographic wire-rope handbook has it, L(ft) = 0.2618 W h (B + h) / d² in inches (square packing)', () => {
  // Flanges 20 in, barrel 10 in, so 5 in of rope, 12 in wide, rope of 1/2 in: the same ring as a canister with a core.
  const [W, h, B, d] = [12, 5, 10, 0.5];
  const feet = (0.2618 * W * h * (B + h)) / d ** 2;
  const inch = 0.0254;
  const volume = stowedVolume(d * inch, feet * 0.3048, Math.PI / 4);
  expect(canisterHeight(volume, (B + 2 * h) * inch, B * inch, 0) / inch / W).toBeCloseTo(1, 3);
});
