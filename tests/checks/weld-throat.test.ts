import { expect, it } from 'vitest';
import { weldThroat } from '../../core/checks/weld-throat.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { welded } from './welded.ts';
import { weldDirectional } from '../../core/checks/weld-directional.ts';

const Nmm = 1e3;
const en = (change: Record<string, number>) =>
  valuesGiven(weldThroat, 'partial factors', {
    f_u: 430e6,
    beta_w: 0.85,
    gamma_M2: 1.25,
    a_w: 0.004,
    f_z: 0,
    f_h: 0,
    m_r: 0,
    ...change,
  });

it.each([
  ['S235', 360e6, 0.8, 207.85],
  ['S275', 430e6, 0.85, 233.66],
  ['S355 of 470 MPa', 470e6, 0.9, 241.2],
] as const)(
  'gives f_vw,d of %s as the design resistance of a throat (EN 1993-1-8, 4.5.3.3; worked by hand)',
  (_, f_u, beta_w, f_vw) => {
    expect(en({ f_u, beta_w }).f_Rd! / 0.004 / 1e6).toBeCloseTo(f_vw, 2);
  },
);

it('takes the resultant whatever its direction, 0.40123 for 375 N/mm in S275', () => {
  expect(en({ f_z: 375 * Nmm }).f_w! / en({}).f_Rd!).toBeCloseTo(0.40123, 4);
  expect(en({ f_h: 375 * Nmm }).f_w! / en({}).f_Rd!).toBeCloseTo(0.40123, 4);
  expect(en({ f_z: 300 * Nmm, f_h: 400 * Nmm, m_r: 100 }).f_w! / Nmm).toBeCloseTo(500 + 150, 9);
});

it('lies within the bounds that the directional method gives, for any pull and moment', () => {
  for (const f_z of [0, 1e4, 3e5])
    for (const f_h of [0, 2e4, 4e5])
      for (const m_r of [0, 30, 500]) {
        const { f_w, f_low, f_high } = en({ f_z, f_h, m_r });
        expect(f_w!).toBeGreaterThanOrEqual(f_low! * (1 - 1e-12));
        expect(f_w!).toBeLessThanOrEqual(f_high! * (1 + 1e-12));
      }
  // Both bounds are reached: pure shear of the throat cannot be had from f_z and f_h, a pure pull can.
  expect(en({ f_z: 1e5, f_h: 1e5 }).f_low! / en({ f_z: 1e5, f_h: 1e5 }).f_w!).toBeCloseTo(1 / Math.sqrt(3), 9);
});

it('allows 0.6 F_EXX a/2, at most the tearing and yielding of the thinner part (AISC 360 J2.4, J4.2, from memory)', () => {
  const asd = (change: Record<string, number>) =>
    valuesGiven(weldThroat, 'allowable stress', {
      F_EXX: 482e6,
      a_w: 0.7071 * 0.006,
      Omega_J: 2,
      Omega_v: 1.67,
      f_u: 450e6,
      f_yb: 345e6,
      t_b: 0.02,
      ...change,
    });
  expect(asd({}).f_Rd! / Nmm).toBeCloseTo(613.5, 1);
  expect(asd({ t_b: 0.003 }).f_Rd! / Nmm).toBeCloseTo((0.6 * 345 * 3) / 1.67, 6);
  expect(asd({ t_b: 0.003, f_yb: 450e6 }).f_Rd! / Nmm).toBeCloseTo((0.6 * 450 * 3) / 2, 6);
});

it('shares the forces and the rule of the directional method, and applies where the document names this one', () => {
  const model = demoModel(welded({ method: 'throat' }));
  const up = situationOf(model, 'service-up');
  expect(weldThroat.applies(model, 'A1', up)).toBe(true);
  expect(weldThroat.applies(demoModel(welded()), 'A1', up)).toMatch(/directional/);
  expect(weldThroat.applies(demoModel(), 'A1', up)).toMatch(/bolted/);
  expect(weldThroat.rule!(demoModel(welded({ method: 'throat', metal: 'E60XX' })), 'A1', up)).toMatch(/weaker/);
  expect(reads(weldThroat, 'pulled', model, 'A1', up)).toBe(1);
  const square = {
    a: 0.5,
    b: 0.5,
    t: 0.006,
    E: 210e9,
    nu: 0.3,
    p: 1e4,
    l_f: 0.04,
    k_r: 1,
    h: 0,
    h_x: 1,
    h_y: 1,
    a_w: 0.004,
    pulled: 1,
  };
  expect(valuesGiven(weldThroat, 'partial factors', square).V_hinged! / 5e3).toBeCloseTo(0.42, 3);
});

it('sets the force against the resistance, and its bounds below and above it', () => {
  const { demand, capacity, second } = weldThroat;
  expect([demand, capacity]).toEqual(['f_w', 'f_Rd']);
  expect([second.low, second.of, second.high]).toEqual(['f_low', 'f_w', 'f_high']);
});

it('bends the throat elastically in the second opinion too, 6 m/a²: 100 N on 4 mm is 37.5 MPa', () => {
  expect(en({ m_r: 100 }).sigma_s! / 1e6).toBeCloseTo(37.5, 9);
});

it('bounds 375 N/mm above by 2/√3 of the equivalent stress: 132.58 MPa on 4 mm', () => {
  expect(en({ f_z: 375 * Nmm }).f_high! / Nmm).toBeCloseTo((2 * 132.58 * 4) / Math.sqrt(3), 1);
});

it('takes every number from where the directional method takes it', () => {
  for (const symbol of Object.keys(weldThroat.inputs).filter((name) => !/^(gamma|Omega)/.test(name)))
    expect(weldThroat.inputs[symbol], symbol).toBe(weldDirectional.inputs[symbol]);
});
