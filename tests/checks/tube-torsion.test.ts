import { describe, expect, it } from 'vitest';
import { standardSections } from '../../core/catalogue/standard-sections.ts';
import { tubeTorsion } from '../../core/checks/tube-torsion.ts';
import { outOfRangeWith } from './at.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { tubeBending } from '../../core/checks/tube-bending.ts';

const inch = 0.0254;
const ksi = 6.894757e6;
const kipInch = 112.9848;
const none = { M: 0, V: 0, T: 0, N: 0 };
const solid = { n_h: 0, d_h: 0, f_u: 1e9 };
const plain = { ...solid, round: 0, H: 0.1, B: 0.1, t: 0.005, A: 1e-3, W_el: 1e-4, W_t: 1e-4, E: 210e9 };
const en = (change: Record<string, number>) =>
  valuesGiven(tubeTorsion, 'partial factors', {
    ...plain,
    ...none,
    A_v: 1e-3,
    f_y: 355e6,
    gamma_M0: 1,
    gamma_M2: 1.25,
    ...change,
  });

it('adds as von Mises does: 100 MPa along with 100 MPa of shear is 200 MPa (EN 1993-1-1, 6.2.1(5), from memory)', () => {
  expect(en({ M: 1e4, V: 4e4, T: 6e3 }).u! * 355).toBeCloseTo(200, 6);
  expect(en({ N: 3e4, M: 7e3, T: 1e4 }).u! * 355).toBeCloseTo(200, 6);
  expect(en({ M: 1e4, T: 1e4, gamma_M0: 1.1 }).u! * 355).toBeCloseTo(220, 6);
});

it('gives √3 τ/f_y for torsion alone: f_y/√3 is reached at T = W_t f_y/√3 (6.2.7)', () => {
  expect(en({ T: (1e-4 * 355e6) / Math.sqrt(3) }).u).toBeCloseTo(1, 9);
});

it.each([
  [
    'HSS 6×4×1/4, C 10.1 in³, 167 kip·in',
    { round: 0, H: 6 * inch, t: 0.233 * inch, W_t: 10.1 * inch ** 3, f_y: 46 * ksi },
    167,
  ],
  [
    'HSS 5.000×0.250, C 7.95 in³, 120 kip·in',
    { round: 1, H: 5 * inch, t: 0.233 * inch, W_t: 7.95 * inch ** 3, f_y: 42 * ksi },
    120,
  ],
] as const)(
  'takes %s as the allowable torque (AISC Design Examples, H.5A and H.5B, from memory)',
  (_, size, torque) => {
    const given = { ...plain, ...none, ...size, E: 29000 * ksi, Omega_b: 1.67, Omega_v: 1.67, Omega_J: 2 };
    expect(torque / valuesGiven(tubeTorsion, 'allowable stress', { ...given, T: kipInch }).r_T! ** -1).toBeCloseTo(
      1,
      2,
    );
  },
);

const asd = (change: Record<string, number>) =>
  valuesGiven(tubeTorsion, 'allowable stress', {
    ...plain,
    ...none,
    f_y: 100e6,
    Omega_b: 1,
    Omega_v: 1,
    Omega_J: 2,
    ...change,
  });

it('interacts as H3-6: bending 0.4, shear 0.2 and torsion 0.3 make 0.4 + 0.5² (AISC 360, as printed in Brockenbrough and Merritt, Structural Steel Designer’s Handbook, 4th ed., 5.7.5)', () => {
  const parts = { M: 0.4 * 1e4, V: 0.2 * 0.6 * 100e6 * 2 * 0.085 * 0.005, T: 0.3 * 0.6 * 1e4 };
  expect(asd(parts).u).toBeCloseTo(0.65, 9);
  expect(asd({ ...parts, T: 0.2 * 0.6 * 1e4 * 0.999 }).u).toBeCloseTo(0.4, 9);
  expect(asd({ ...parts, M: 0, T: 0 }).u).toBeCloseTo(0.2, 9);
  expect(asd({ ...parts, N: 0.1 * 1e5 }).u).toBeCloseTo(0.75, 9);
  expect(asd({ ...parts, Omega_b: 1.67 }).u).toBeCloseTo(0.4 * 1.67 + 0.25, 9);
  expect(asd({ ...parts, Omega_v: 1.67 }).u).toBeCloseTo(0.4 + (0.5 * 1.67) ** 2, 9);
});

it('takes half of the area of a round tube in shear, and its buckling stress 0.60 E/(D/t)^1.5 (G5, H3-2b, worked by hand)', () => {
  expect(asd({ round: 1, V: 0.2 * 0.6 * 100e6 * 0.5e-3 }).u).toBeCloseTo(0.2, 9);
  expect(asd({ round: 1, H: 1, t: 0.005, E: 200e9, f_y: 355e6 }).F_cr! / 1e6).toBeCloseTo(42.43, 2);
});

it('does not judge a wall beyond 2.45 √(E/F_y), where torsion buckles it (H3-3)', () => {
  const at = (wall: number) =>
    outOfRangeWith(tubeTorsion, 'allowable stress', {
      ...plain,
      ...none,
      H: (wall + 3) * 0.002,
      t: 0.002,
      f_y: 355e6,
      Omega_b: 1,
      Omega_v: 1,
      Omega_J: 2,
    });
  const limit = 2.45 * Math.sqrt(210e3 / 355);
  expect([at(limit - 0.1), at(limit + 0.1)]).toEqual([undefined, expect.stringMatching(/slender/)]);
});

it('reads torque, thrust and the torsion modulus 291 cm³ of SHS 150×150×8 (EN 10210-2, from memory) from the model', () => {
  const model = demoModel({ protection: { lossPerFace: { tubeOutside: '0 mm', tubeInside: '0 mm' } } });
  const situation = situationOf(model, 'service-down');
  expect(reads(tubeTorsion, 'T', model, 'A', situation)).toBe(situation.tubes.get('A')!.torque);
  const [pushed, { axial }] = [...situation.tubes].find(([, forces]) => Math.abs(forces.axial) > 1)!;
  expect(reads(tubeTorsion, 'N', model, pushed, situation)).toBe(Math.abs(axial));
  expect(reads(tubeTorsion, 'W_t', model, 'A') * 1e6).toBeCloseTo(291, 0);
  expect(reads(tubeTorsion, 'A', model, 'A') * 1e4).toBeCloseTo(44.8, 1);
});

it('leaves torsion out up to a fifth, not at 0.22 (H3.2), and never passes above 1', () => {
  const parts = { M: 0.4 * 1e4, V: 0.2 * 0.6 * 100e6 * 2 * 0.085 * 0.005, T: 0.22 * 0.6 * 1e4 };
  expect(asd(parts).u).toBeCloseTo(0.4 + 0.42 ** 2, 9);
  expect([asd(parts).u_Rd, en({}).u_Rd]).toEqual([1, 1]);
});

it('takes every number from where bending takes it', () => {
  for (const symbol of ['M', 'V', 'round', 'H', 'B', 't', 'W_el', 'n_h', 'd_h', 'E', 'f_y', 'f_u', 'A_v'])
    expect(tubeTorsion.inputs[symbol]!.read, symbol).toBe(tubeBending.inputs[symbol]!.read);
});

describe('bolts of panels through the flanges', () => {
  // SHS 100×100×5 with two rows of 11 mm holes: A 18.732 − 2·2·1.1·0.5 = 16.532 cm², W_el 55.886 − 10.45 = 45.436 cm³.
  const SHS = { A: 18.732e-4, W_el: 55.886e-6, W_t: 81.8e-6, n_h: 2, d_h: 0.011, f_u: 510e6 };

  it('takes 10.45 cm³ off the modulus and 2.2 cm² off the area (by hand)', () => {
    expect(en({ ...SHS, M: 8e3 }).sigma! / 1e6).toBeCloseTo(8e3 / 45.436, 6);
    expect(en({ ...SHS, N: 1e5 }).sigma! / 1e6).toBeCloseTo(1e5 / 1653.2, 6);
    expect(asd({ ...SHS, M: 1e3, N: 1e4 }).r_s).toBeCloseTo((1e4 / 1653.2 + 1e3 / 45.436) / 100, 6);
  });

  it('lets the flow of torsion pass in the 68 of 90 mm of flange beside the holes, or of a quarter of the inner girth (Bredt: the flow is even round the tube)', () => {
    const flow = en({ ...SHS, n_h: 0, T: 1e3 }).tau_T!;
    expect(en({ ...SHS, T: 1e3 }).tau_T! / flow).toBeCloseTo(90 / 68, 9);
    expect(en({ ...SHS, round: 1, T: 1e3 }).tau_T! / flow).toBeCloseTo(1 / (1 - 88 / (90 * Math.PI)), 9);
    expect(en({ ...SHS, T: 1e3 }).u! * 355e6).toBeCloseTo(Math.sqrt(3) * flow * (90 / 68), 0);
    expect(asd({ ...SHS, T: 1e3 }).r_T! * 60e6).toBeCloseTo(flow * (90 / 68), 0);
  });

  it('leaves the shear of the webs as it is: no hole is in them', () => {
    expect(en({ ...SHS, V: 1e4 }).u).toBe(en({ ...SHS, n_h: 0, V: 1e4 }).u);
    expect(asd({ ...SHS, V: 1e4 }).u).toBe(asd({ ...SHS, n_h: 0, V: 1e4 }).u);
  });

  it('rules by rupture beside a hole: 0.9 · 540/1.25 = 388.8 MPa in S460 (EN 1993-1-1, 6.2.3); F_u/2 and 0.6 F_u/2 (AISC 360 D2, J4.2; from memory)', () => {
    const S460 = { ...SHS, f_y: 460e6, f_u: 540e6 };
    expect(en(S460).f_d! / 1e6).toBeCloseTo(388.8, 9);
    expect(en({ ...S460, n_h: 0 }).f_d! / 1e6).toBeCloseTo(460, 9);
    expect(en({ ...SHS, gamma_M0: 1.1 }).f_d! / 1e6).toBeCloseTo(355 / 1.1, 9);
    const ruptured = asd({ ...S460, Omega_b: 1.67, Omega_v: 1.67 });
    expect([ruptured.sigma_Rd! / 1e6, ruptured.tau_Rd! / 1e6].map((x) => Number(x.toFixed(9)))).toEqual([270, 162]);
    const whole = asd({ ...S460, n_h: 0, Omega_b: 1.67, Omega_v: 1.67 });
    expect(whole.sigma_Rd! / 1e6).toBeCloseTo(460 / 1.67, 9);
    expect(whole.tau_Rd! / 1e6).toBeCloseTo((0.6 * 460) / 1.67, 9);
    const S355 = asd({ ...SHS, f_y: 355e6, Omega_b: 1.67, Omega_v: 1.67 });
    expect([S355.sigma_Rd! / 1e6, S355.tau_Rd! / 1e6].map((x) => Number(x.toFixed(6)))).toEqual([212.57485, 127.54491]);
  });

  it('cannot be judged when nothing is left of the flange', () => {
    const at = (n_h: number, d_h: number) =>
      outOfRangeWith(tubeTorsion, 'partial factors', {
        ...{ ...plain, ...none, A_v: 1e-3, f_y: 355e6, gamma_M0: 1, gamma_M2: 1.25, n_h, d_h },
      });
    expect(at(3, 0.0299)).toBeUndefined();
    expect(at(3, 0.0301)).toMatch(/whole flange/);
  });
});

describe('second opinion', () => {
  it('holds the stress of torsion between Bredt round the middle and round the inside of the wall: every tenth listed section', () => {
    for (const section of standardSections.filter((_, i) => i % 10 === 0)) {
      const { id, shape, height: H, width: B, wall: t, area: A, elasticY: W_el, torsionModulus: W_t } = section;
      const { r_T, t_low, t_high } = en({ round: shape === 'round' ? 1 : 0, H, B, t, A, W_el, W_t, T: 1e3 });
      expect(t_low!, id).toBeLessThan(r_T!);
      expect(t_high!, id).toBeGreaterThan(r_T!);
      expect(t_high! / t_low!, id).toBeLessThan(1.08 * (1 + (2 * t) / Math.min(H, B)) ** 2);
    }
  });

  it('is Bredt: T/(2 A_m t), 55.40 MPa for 5 kN·m round the middle of a 100×100×5, 70.54 round a CHS 100×5 (by hand)', () => {
    const MPa = (value: number) => (value * 355) / Math.sqrt(3);
    expect(MPa(en({ T: 5e3 }).t_low!)).toBeCloseTo(5e3 / (2 * 0.095 ** 2 * 0.005) / 1e6, 6);
    expect(MPa(en({ T: 5e3, B: 0.06 }).t_low!)).toBeCloseTo(5e3 / (2 * 0.095 * 0.055 * 0.005) / 1e6, 6);
    expect(MPa(en({ T: 5e3, round: 1 }).t_low!)).toBeCloseTo(70.54, 2);
    expect(MPa(en({ T: 5e3 }).t_high!)).toBeCloseTo(5e3 / (2 * 0.95 * 0.09 ** 2 * 0.005) / 1e6, 6);
    expect(MPa(en({ T: 5e3, B: 0.06 }).t_high!)).toBeCloseTo(5e3 / (2 * 0.95 * 0.09 * 0.05 * 0.005) / 1e6, 6);
    expect(MPa(en({ T: 5e3, round: 1 }).t_high!)).toBeCloseTo(5e3 / ((Math.PI / 2) * 0.09 ** 2 * 0.005) / 1e6, 6);
    expect(en({ T: 5e3, n_h: 2, d_h: 0.011 }).t_high! / en({ T: 5e3 }).t_high!).toBeCloseTo(90 / 68, 9);
  });

  it('takes one part alone below, the plain sum above, whatever the load and the holes', () => {
    const W_t = 81.8e-6;
    for (const n_h of [0, 2])
      for (const M of [0, 3e3, 2e4])
        for (const V of [0, 1e4, 2e5])
          for (const T of [0, 1e3, 3e4])
            for (const { u, u_low, u_high } of [en, asd].map((at) => at({ M, V, T, W_t, n_h, d_h: 0.011 }))) {
              expect(u!).toBeGreaterThanOrEqual(u_low! * (1 - 1e-12));
              expect(u!).toBeLessThanOrEqual(u_high! * (1 + 1e-12));
            }
    const { r_s, r_V, t_low, t_high, u_low, u_high } = en({ M: 3e3, V: 1e4, T: 1e3, W_t });
    expect(u_low).toBe(r_s);
    expect(u_high).toBeCloseTo(r_s! + r_V! + t_high!, 12);
    expect(en({ T: 1e3 }).u_low).toBeCloseTo(t_low! ** 2, 12);
    const torn = en({ T: 1e5, V: 1e4, W_t });
    expect(torn.u_low).toBeCloseTo(torn.t_low!, 12);
    expect(torn.u_high).toBeCloseTo((torn.r_V! + torn.t_high!) ** 2, 9);
  });
});
