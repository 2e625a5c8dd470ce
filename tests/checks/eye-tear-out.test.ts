import { describe, expect, it } from 'vitest';
import { eyeTearOut } from '../../core/checks/eye-tear-out.ts';
import type { Safety } from '../../core/source.ts';
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
});

describe('second opinion: ASME BTH-1-2008, 3-3.3.1, double plane shear, design factor left out', () => {
  const at = (change: Record<string, number>, safety: Safety = 'partial factors') =>
    valuesGiven(eyeTearOut, safety, {
      ...{ t_e: 0.02, a_e: 0.03, d_0: 0.03, d: 0.03, f_u: 470e6 },
      ...(safety === 'partial factors' ? { f_y: 355e6, gamma_M0: 1 } : { Omega_J: 2 }),
      ...change,
    });

  it('shears 30 mm and 15 (1 − cos 55°) = 6.396 mm beside a pin that fills its hole; 1.698 mm beside one of half the hole (ASME BTH-1, its 55° from memory; worked by hand)', () => {
    expect(at({}).l_s! * 1e3).toBeCloseTo(36.396, 3);
    expect(at({ d: 0.015 }).l_s! * 1e3).toBeCloseTo(30 + 7.5 * 0.112989, 4);
    expect(at({}).F_high! / 1e3).toBeCloseTo((0.7 / 1.2) * 470 * 2 * 20 * 0.036396, 2);
  });

  it('is above both standards for edges from 0.3 of the hole, pins from 0.7 of it', () => {
    for (const [f_y, f_u] of [
      [235e6, 360e6],
      [355e6, 470e6],
      [460e6, 540e6],
    ] as const)
      for (const edge of [0.3, 0.5, 0.67, 1, 2, 5])
        for (const pin of [0.7, 0.9, 1]) {
          const eye = { f_u, a_e: edge * 0.03, d: pin * 0.03 };
          for (const { F_Rd, F_high } of [at({ ...eye, f_y }), at(eye, 'allowable stress')])
            expect(F_Rd!, JSON.stringify(eye)).toBeLessThan(F_high!);
        }
  });
});

it('reads rim to edge and the pin', () => {
  const model = demoModel();
  expect(reads(eyeTearOut, 'a_e', model, 'S1')).toBeCloseTo(0.06 - 0.019 - 0.001, 12);
  expect(reads(eyeTearOut, 'd', model, 'S1')).toBe(0.035);
  expect(reads(eyeTearOut, 'd_0', model, 'S1')).toBeCloseTo(0.039, 12);
});
