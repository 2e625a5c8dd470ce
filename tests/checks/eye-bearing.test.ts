import { expect, it } from 'vitest';
import { eyeBearing } from '../../core/checks/eye-bearing.ts';
import { outOfRangeWith } from './at.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';

const inch = 0.0254;
const ksi = 6.894757e6;
const kip = 4448.222;

it('carries 1.5 t d f_y/γ_M0 (EN 1993-1-8, Table 3.10): 20 × 30 mm of 355 MPa is 319.5 kN', () => {
  const { F_Rd } = valuesGiven(eyeBearing, 'partial factors', { t_e: 0.02, d: 0.03, f_y: 355e6, gamma_M0: 1 });
  expect(F_Rd! / 1e3).toBeCloseTo(319.5, 9);
  expect(
    valuesGiven(eyeBearing, 'partial factors', { t_e: 0.02, d: 0.03, f_y: 355e6, gamma_M0: 1.1 }).F_Rd! / F_Rd!,
  ).toBeCloseTo(1 / 1.1, 9);
});

it.each([
  ['half-inch plate, 1 in pin, 36 ksi: 16.2 kips (AISC Design Examples, D.7, from memory)', 0.5, 1, 36, 16.2],
  ['3.15 in, 5 in pin, 70 ksi: 992.3 kips (a published worked sheet)', 3.15, 5, 70, 992.25],
] as const)('AISC 360 J7: %s', (_, t, d, f, kips) => {
  const { F_Rd, F_low, F_high } = valuesGiven(eyeBearing, 'allowable stress', {
    t_e: t * inch,
    d: d * inch,
    f_y: f * ksi,
    f_u: 1.2 * f * ksi,
    Omega_J: 2,
  });
  expect(F_Rd! / kip).toBeCloseTo(kips, 2);
  expect([F_low! < F_Rd!, F_Rd! < F_high!]).toEqual([true, true]);
  expect(F_low! / kip).toBeCloseTo(0.75 * t * d * f, 3);
  expect(F_high! / kip).toBeCloseTo(1.5 * t * d * 1.2 * f, 3);
});

it('does not judge a pin below nine tenths of its hole, and fails one that does not go in', () => {
  const range = (d: number) =>
    outOfRangeWith(eyeBearing, 'partial factors', {
      F: 1,
      t_e: 0.02,
      f_y: 355e6,
      f_u: 470e6,
      gamma_M0: 1,
      d_0: 0.03,
      d,
    });
  expect([range(0.0271), range(0.0269)]).toEqual([undefined, expect.stringMatching(/nine tenths/)]);
  const rule = (pinDiameter: string) => {
    const model = demoModel({ grid: { suspension: { eye: { pinDiameter } } } });
    return eyeBearing.rule!(model, 'S1', situationOf(model));
  };
  expect(rule('38 mm')).toBeUndefined();
  expect(rule('39 mm')).toMatch(/larger than its hole/);
  expect(reads(eyeBearing, 'd', demoModel(), 'S1')).toBe(0.035);
});
