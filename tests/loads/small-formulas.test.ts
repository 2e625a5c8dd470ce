import { expect, it } from 'vitest';
import { liftDynamicFactor } from '../../core/loads/lift-dynamic-factor.ts';
import { pressureShape } from '../../core/loads/pressure-shape.ts';
import { flatSlamCoefficient, slamPressure } from '../../core/loads/slam-pressure.ts';

it('gives the dynamic factors offshore of 0027/ND Rev 11, 5.5.1: 3 t 2.443, 12 t 1.722, 50 t 1.354', () => {
  for (const [tonnes, factor] of [
    [3, 2.443],
    [12, 1.722],
    [50, 1.354],
    [100, 1.25],
    [299, 1.25],
    [301, 1.2],
    [1001, 1.15],
    [2501, 1.1],
  ] as const)
    // prettier-ignore
    expect(Math.abs(liftDynamicFactor(1000 * tonnes) - factor), `${tonnes} t`).toBeLessThan(5e-4);
  expect(liftDynamicFactor(800)).toBe(liftDynamicFactor(3000)); // below 3 t as at 3 t
  expect(() => liftDynamicFactor(0)).toThrow(/mass must be positive/);
});

it('gives the force on 100 m² at 0.6 m/s with a coefficient of 5 as worked by hand, 92.25 kN (DNV-RP-N103, from memory)', () => {
  // 0.5 · 1025 kg/m³ · 5 · (0.6 m/s)² · 100 m²
  expect(100 * slamPressure({ rho: 1025, C_s: flatSlamCoefficient, v: 0.6 })).toBeCloseTo(92_250, 6);
  expect(() => slamPressure({ rho: 1025, C_s: 5, v: 0 })).toThrow(/v must be positive/);
});

const outline = { x0: -1, x1: 5, y0: 2, y1: 4 };

it('has a mean of 1 over the outline and its middle over mean in the middle', () => {
  for (const r of [1, 1.5, 2, 2.25]) {
    const over = pressureShape(r, outline);
    expect(over(outline)).toBeCloseTo(12, 12);
    const [e, x, y] = [1e-4, 2, 3];
    expect(over({ x0: x - e, x1: x + e, y0: y - e, y1: y + e }) / (4 * e * e)).toBeCloseTo(r, 6);
  }
});

it('agrees with a sum over many small squares, and carries nothing at the rim at 2.25', () => {
  const [r, n] = [1.7, 400];
  const part = { x0: 0.2, x1: 4.1, y0: 2.3, y1: 3.1 };
  const beta = 1.8 * (r - 1);
  let sum = 0;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      const xi = (part.x0 + ((i + 0.5) * (part.x1 - part.x0)) / n - 2) / 3;
      const eta = part.y0 + ((j + 0.5) * (part.y1 - part.y0)) / n - 3;
      sum += 1 - (4 * beta) / 9 + beta * (1 - xi ** 2) * (1 - eta ** 2);
    }
  const area = 3.9 * 0.8;
  expect(Math.abs(pressureShape(r, outline)(part) / ((sum * area) / n ** 2) - 1)).toBeLessThan(1e-5);
  expect(pressureShape(2.25, outline)({ x0: -1, x1: -1 + 1e-6, y0: 2, y1: 4 }) / 2e-6).toBeCloseTo(0, 5);
  expect(() => pressureShape(2.3, outline)).toThrow(/pull at the rim/);
});
