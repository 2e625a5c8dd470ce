import { expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { panelBuckling } from '../../core/checks/panel-buckling.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel } from './model-of.ts';

const plate = { a: 0.8, b: 0.8, t: 0.01, E: 210e9, nu: 0.3 };
const at = (change: Record<string, number> = {}) =>
  valuesGiven(panelBuckling, 'partial factors', { ...plate, gamma_M1: 1, ...change });

it('gives k_σ = 4 times 190,000 (t/b)² N/mm² for a square plate (EN 1993-1-5, Annex A, from memory: three digits)', () => {
  expect(at().sigma_cr! / 1e6 / 4 / (10 / 800) ** 2 / 1e3).toBeCloseTo(190, 0);
});

it('takes the weaker direction, 4 to 4.5 on the longer side', () => {
  const { sigma_cr, sigma_cr_x, sigma_cr_y, sigma_low } = at({ a: 1.6 });
  expect(sigma_cr).toBe(Math.min(sigma_cr_x!, sigma_cr_y!));
  expect(sigma_cr).toBe(sigma_cr_y);
  expect(sigma_cr!).toBeGreaterThan(sigma_low!);
  // Pressed across a plate twice as long as it is wide: k = (1/2 + 2)² on the longer side (Timoshenko & Gere, m = 1).
  expect(sigma_cr! / sigma_low!).toBeCloseTo(6.25 / 4, 9);
  expect(at({ b: 1.6 }).sigma_cr).toBeCloseTo(sigma_cr!, 3);
  expect(at().sigma_low).toBeCloseTo(at().sigma_cr!, 3);
});

it('divides by γ_M1, or by 1.67', () => {
  expect(at({ gamma_M1: 1.1 }).sigma_Rd! / at().sigma_Rd!).toBeCloseTo(1 / 1.1, 12);
  expect(
    valuesGiven(panelBuckling, 'allowable stress', { ...plate, Omega_b: 1.67 }).sigma_Rd! / at().sigma_Rd!,
  ).toBeCloseTo(1 / 1.67, 12);
});

it('sets compression in N/m² against the buckling stress, whose bound lies below', () => {
  expect([panelBuckling.demand, panelBuckling.capacity]).toEqual(['sigma_c', 'sigma_Rd']);
  expect([panelBuckling.second.of, panelBuckling.second.low, panelBuckling.second.high]).toEqual([
    'sigma_cr',
    'sigma_low',
    undefined,
  ]);
  expect(panelBuckling.inputs.sigma_c!.unit).toBe('MPa');
});

it('cannot be judged, once for each panel field, and says what for', () => {
  const { rows } = checkRows(panelBuckling, demoModel());
  expect(rows.map(({ place, verdict }) => [place, verdict])).toEqual(
    ['A1', 'A3', 'B1', 'B3'].map((bay) => [bay, 'cannot be judged']),
  );
  expect(rows[0]!.reason).toMatch(/in-plane forces .* solved as one structure/);
});
