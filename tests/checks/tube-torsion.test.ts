import { expect, it } from 'vitest';
import { tubeTorsion } from '../../core/checks/tube-torsion.ts';
import { outOfRangeWith } from './at.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { tubeBending } from '../../core/checks/tube-bending.ts';

const inch = 0.0254;
const ksi = 6.894757e6;
const kipInch = 112.9848;
const none = { M: 0, V: 0, T: 0, N: 0 };
const plain = { round: 0, H: 0.1, t: 0.005, A: 1e-3, W_el: 1e-4, W_t: 1e-4, E: 210e9 };
const en = (change: Record<string, number>) =>
  valuesGiven(tubeTorsion, 'partial factors', { ...plain, ...none, A_v: 1e-3, f_y: 355e6, gamma_M0: 1, ...change });

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
    const given = { ...plain, ...none, ...size, E: 29000 * ksi, Omega_b: 1.67, Omega_v: 1.67 };
    expect(torque / valuesGiven(tubeTorsion, 'allowable stress', { ...given, T: kipInch }).r_T! ** -1).toBeCloseTo(
      1,
      2,
    );
  },
);

const asd = (change: Record<string, number>) =>
  valuesGiven(tubeTorsion, 'allowable stress', { ...plain, ...none, f_y: 100e6, Omega_b: 1, Omega_v: 1, ...change });

it('interacts as H3-6: bending 0.4, shear 0.2 and torsion 0.3 make 0.4 + 0.5² (AISC 360, from memory)', () => {
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

it('keeps the second opinion between bending alone and the plain sum, over many cases', () => {
  for (const M of [0, 3e3, 2e4])
    for (const V of [0, 1e4, 2e5])
      for (const T of [0, 1e3, 3e4]) {
        for (const { u, u_low, u_high } of [en({ M, V, T }), asd({ M, V, T })]) {
          expect(u!).toBeGreaterThanOrEqual(u_low! * (1 - 1e-12));
          expect(u!).toBeLessThanOrEqual(u_high! * (1 + 1e-12));
        }
      }
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
    });
  const limit = 2.45 * Math.sqrt(210e3 / 355);
  expect([at(limit - 0.1), at(limit + 0.1)]).toEqual([undefined, expect.stringMatching(/slender/)]);
});

it('reads torque, thrust and the torsion modulus 291 cm³ of SHS 150×150×8 (EN 10210-2, from memory) from the model', () => {
  const model = demoModel({ protection: { lossPerFace: { tubeOutside: '0 mm', tubeInside: '0 mm' } } });
  const situation = situationOf(model, 'service-down');
  expect(reads(tubeTorsion, 'T', model, 'A', situation)).toBe(situation.tubes.get('A')!.torque);
  expect(reads(tubeTorsion, 'N', model, '3', situation)).toBe(Math.abs(situation.tubes.get('3')!.axial));
  expect(reads(tubeTorsion, 'W_t', model, 'A') * 1e6).toBeCloseTo(291, 0);
  expect(reads(tubeTorsion, 'A', model, 'A') * 1e4).toBeCloseTo(44.8, 1);
});

it('leaves torsion out up to a fifth, not at 0.22 (H3.2), and never passes above 1', () => {
  const parts = { M: 0.4 * 1e4, V: 0.2 * 0.6 * 100e6 * 2 * 0.085 * 0.005, T: 0.22 * 0.6 * 1e4 };
  expect(asd(parts).u).toBeCloseTo(0.4 + 0.42 ** 2, 9);
  expect(asd(parts).u_high).toBeCloseTo(0.82, 9);
  expect([asd(parts).u_Rd, en({}).u_Rd]).toEqual([1, 1]);
});

it('takes every number from where bending takes it', () => {
  for (const symbol of ['M', 'V', 'round', 'H', 't', 'W_el', 'E', 'f_y', 'A_v'])
    expect(tubeTorsion.inputs[symbol]!.read, symbol).toBe(tubeBending.inputs[symbol]!.read);
});
