import { describe, expect, it } from 'vitest';
import { eyeWeld } from '../../core/checks/eye-weld.ts';
import { outOfRangeWith } from './at.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, missingFrom, reads, situationOf } from './model-of.ts';

// Two runs of 200 mm, a = 4 mm, at a plate: S275.
const S275 = {
  f_u: 430e6,
  beta_w: 0.85,
  gamma_M2: 1.25,
  a_w: 0.004,
  l_0: 0.208,
  t_e: 0.02,
  h_e: 0,
  F_z: 0,
  F_l: 0,
  F_q: 0,
};
const at = (change: Record<string, number>) => valuesGiven(eyeWeld, 'partial factors', { ...S275, ...change });

describe('EN 1993-1-8, 4.5.3.2 (worked by hand)', () => {
  it('gives 132.58 MPa and 0.3276 for 150 kN of pull, 171.16 MPa and 0.42293 with 100 kN along; simplified 0.40123 and 0.48222', () => {
    const pull = at({ F_z: 150e3 });
    expect([pull.sigma_v! / 1e6, pull.u, pull.u_high].map((v) => Number(v!.toPrecision(5)))).toEqual([
      132.58, 0.3276, 0.40123,
    ]);
    const both = at({ F_z: 150e3, F_l: 100e3 });
    expect(both.tau_l! / 1e6).toBeCloseTo(62.5, 9);
    expect(both.sigma_v! / 1e6).toBeCloseTo(171.16, 2);
    expect(both.u).toBeCloseTo(0.42293, 5);
    expect(both.u_high).toBeCloseTo(0.48222, 5);
  });

  it('leaves a throat out at each end of a run', () => {
    expect(at({}).l_w).toBeCloseTo(0.2, 12);
    const range = (l_0: number) =>
      outOfRangeWith(eyeWeld, 'partial factors', { ...S275, s_e: 0, R: 0, g_2: 0.0016, l_0 });
    expect([range(0.009), range(0.007)]).toEqual([undefined, expect.stringMatching(/shorter/)]);
  });

  it('knows no fillet beyond 120° (half the radius) or with more than 1.6 mm of gap: 6 mm on 12 mm leave 1.608 mm (by hand)', () => {
    const range = (s_e: number, R: number) => outOfRangeWith(eyeWeld, 'partial factors', { ...S275, l_0: 0.1, g_2: 0.0016, s_e, R }); // prettier-ignore
    expect([range(0, 0), range(0, 0.012), range(0.0059, 0.012), range(0.0049, 0.01)]).toEqual([undefined, undefined, undefined, undefined]); // prettier-ignore
    expect(range(0.006, 0.012)).toMatch(/1.6 mm of gap/);
    expect(range(0.0051, 0.01)).toMatch(/120°/);
    const eye = (thickness: string) => ({ grid: { suspension: { eye: { thickness } } } });
    expect(reads(eyeWeld, 's_e', demoModel(eye('25 mm')), 'S1')).toBe(0);
    expect(reads(eyeWeld, 's_e', demoModel(eye('130 mm')), 'S1')).toBeCloseTo(0.002, 12); // 65 mm on a flat of 63
    expect(reads(eyeWeld, 'R', demoModel(), 'S1')).toBeCloseTo(0.012, 12);
    expect(reads(eyeWeld, 'g_2', demoModel(), 'S1')).toBeCloseTo(0.0016, 12);
  });
});

it('bends across its plane as two runs 50 mm long and 100 apart: 10 kN at 150 mm is 70.72 MPa on h = 6, with 23.57 MPa direct (machine-design handbooks, from memory)', () => {
  const throat = 0.707 * 6;
  const { f_z, f_h } = at({ a_w: throat / 1e3, l_0: 0.05 + (2 * throat) / 1e3, t_e: 0.1, h_e: 0.15, F_q: 1e4 });
  expect(f_z! / 1e3 / throat).toBeCloseTo(70.72, 1);
  expect(f_h! / 1e3 / throat).toBeCloseTo(23.57, 1);
});

it('bends in its plane as two lines with a modulus of l²/6 each (weld as a line)', () => {
  expect(at({ F_l: 1e4, h_e: 0.08 }).f_z).toBeCloseTo((1e4 * 0.08) / ((2 * 0.2 ** 2) / 6), 6);
});

it('is allowed 0.6 F_u/2 on the throat, and on half of the plate (AISC 360 J2.4, J4.2, K5: no rise for direction; from memory)', () => {
  const asd = (change: Record<string, number>) =>
    valuesGiven(eyeWeld, 'allowable stress', {
      a_w: 0.004,
      l_0: 0.208,
      t_e: 0.02,
      h_e: 0,
      F_z: 150e3,
      F_l: 0,
      F_q: 0,
      f_u: 430e6,
      Omega_J: 2,
      ...change,
    });
  expect(asd({}).f_Rd! / 1e3).toBeCloseTo(0.3 * 430 * 4, 9);
  expect(asd({}).u).toBeCloseTo(375 / (0.3 * 430 * 4), 9);
  expect(asd({}).u_Rd).toBe(1);
  expect(asd({ t_e: 0.006 }).f_Rd! / 1e3).toBeCloseTo(0.3 * 430 * 3, 9);
});

it('lies within its second opinion for any pull', () => {
  for (const F_z of [0, 1e5])
    for (const F_l of [0, 4e4])
      for (const F_q of [0, 3e4])
        for (const beta_w of [0.8, 1]) {
          const { u, u_low, u_high } = at({ F_z, F_l, F_q, beta_w, h_e: 0.08 });
          expect([u! >= u_low! * (1 - 1e-12), u! <= u_high! * (1 + 1e-12)]).toEqual([true, true]);
        }
});

describe('what it reads from the model', () => {
  const model = demoModel();

  it('takes throat and foot of the eye and the weaker of eye and tube', () => {
    expect(reads(eyeWeld, 'a_w', model, 'S1')).toBeCloseTo(0.0075, 12);
    expect(reads(eyeWeld, 'l_0', model, 'S1')).toBe(0.18);
    expect([reads(eyeWeld, 'f_u', model, 'S1'), reads(eyeWeld, 'beta_w', model, 'S1')]).toEqual([470e6, 0.9]);
    const soft = demoModel({ grid: { mainTubes: { material: 'S235H hot finished' } } });
    expect(reads(eyeWeld, 'f_u', soft, 'S1')).toBe(360e6);
  });

  it('fails by rule on a tube of another metal; says so where corrosion takes the throat or no tube is below', () => {
    const rule = (grid: unknown) => eyeWeld.rule!(demoModel({ grid }), 'S1', situationOf(model));
    expect(rule({})).toBeUndefined();
    expect(rule({ mainTubes: { material: '6082-T6 extruded' } })).toMatch(/cannot be welded to/);
    expect(
      missingFrom(eyeWeld, 'a_w', demoModel({ grid: { suspension: { eye: { weldThroat: '0.5 mm' } } } }), 'S1'),
    ).toMatch(/corrosion/);
  });
});

it('adds the pull off the tube and the pull across, and takes their difference as shear, in one resultant with the pull along', () => {
  const { sigma_s, tau_s, f_r, u_Rd, u_low, u_high } = at({ F_z: 120e3, F_q: 80e3, F_l: 40e3 });
  expect(sigma_s! / 1e6).toBeCloseTo(((300 + 200) / 4) * Math.SQRT1_2, 6);
  expect(tau_s! / 1e6).toBeCloseTo(((300 - 200) / 4) * Math.SQRT1_2, 6);
  expect(f_r! / 1e3).toBeCloseTo(Math.hypot(300, 200, 100), 6);
  expect(u_Rd).toBe(1);
  expect(u_high! / u_low!).toBeCloseTo(Math.sqrt(3), 9);
});
