import { expect, it } from 'vitest';
import { eyeTearOut } from '../../core/checks/eye-tear-out.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads } from './model-of.ts';

const inch = 0.0254;
const ksi = 6.894757e6;
const kip = 4448.222;

it('carries 100 kN where Table 3.9, type A, asks for a = F γ_M0/(2 t f_y) + 2 d_0/3 (EN 1993-1-8): t 20, f_y 355, d_0 30 give 27.04 mm', () => {
  const at = (gamma_M0: number, a_e: number) =>
    valuesGiven(eyeTearOut, 'partial factors', { t_e: 0.02, f_y: 355e6, f_u: 470e6, d_0: 0.03, a_e, gamma_M0 });
  expect(at(1, 0.0270423).F_Rd! / 1e3).toBeCloseTo(100, 2);
  expect(at(1.1, 0.0270423 + 0.1 * 0.0070423).F_Rd! / 1e3).toBeCloseTo(100, 2);
});

it('never counts on more than two planes of shear at f_y/√3, which decide far from the edge', () => {
  const { F_Rd, F_s, F_g } = valuesGiven(eyeTearOut, 'partial factors', {
    t_e: 0.02,
    f_y: 355e6,
    d_0: 0.03,
    a_e: 0.1,
    gamma_M0: 1.1,
  });
  expect(F_s! / 1e3).toBeCloseTo((2 * 20 * 100 * 0.355) / Math.sqrt(3) / 1.1, 6);
  expect(F_g!).toBeGreaterThan(F_s!);
  expect(F_Rd).toBe(F_s);
});

it('gives a nominal 95.7 kips: half-inch plate, 2.25 in to the edge, 1 in pin, F_u 58 ksi (AISC Design Examples, D.7, from memory)', () => {
  const { F_Rd, F_high } = valuesGiven(eyeTearOut, 'allowable stress', {
    t_e: 0.5 * inch,
    a_e: 2.25 * inch,
    d: 1 * inch,
    d_0: 1.03 * inch,
    f_u: 58 * ksi,
    Omega_J: 2,
  });
  expect((2 * F_Rd!) / kip).toBeCloseTo(95.7, 1);
  expect(F_high!).toBeGreaterThan(F_Rd!);
  expect(F_high! / kip).toBeCloseTo((2 * 0.5 * (2.25 + 0.515) * 58) / Math.sqrt(3), 2);
});

it('reads rim to edge and the pin', () => {
  const model = demoModel();
  expect(reads(eyeTearOut, 'a_e', model, 'S1')).toBeCloseTo(0.06 - 0.019 - 0.001, 12);
  expect(reads(eyeTearOut, 'd', model, 'S1')).toBe(0.035);
  expect(reads(eyeTearOut, 'd_0', model, 'S1')).toBeCloseTo(0.039, 12);
});
