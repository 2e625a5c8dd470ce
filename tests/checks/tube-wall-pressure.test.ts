import { expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { tubeWallPressure } from '../../core/checks/tube-wall-pressure.ts';
import { outOfRangeWith } from './at.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { tubeBending } from '../../core/checks/tube-bending.ts';

const sea = { z: 40, rho: 1025, g: 9.80665, gamma_F: 1, f_y: 355e6, gamma_M0: 1, E: 206e9, nu: 0.3 };
const square = { round: 0, H: 0.2, B: 0.2, t: 0.008 };
const at = (change: Record<string, number>) =>
  valuesGiven(tubeWallPressure, 'partial factors', { ...sea, ...square, ...change });

it('bends the wall of a sealed 200×200×8 at 40 m by 106.3 MPa, 402.07 kPa (hydrostatics; strip with fixed ends, p b²/12; worked by hand)', () => {
  const { p, sigma_b, sigma_n, sigma, sigma_high } = at({});
  expect(p! / 1e3).toBeCloseTo(402.07, 2);
  expect(sigma_b! / 1e6).toBeCloseTo(106.3, 1);
  expect((sigma_high! - sigma_n!) / 1e6).toBeCloseTo(159.5, 1);
  expect(sigma_n! / 1e6).toBeCloseTo(5.026, 3);
  expect(sigma).toBeCloseTo(sigma_b! + sigma_n!, 3);
  expect(at({ gamma_F: 1.35 }).sigma! / sigma!).toBeCloseTo(1.35, 9);
});

it('bends that wall in by 0.1243 mm in its middle: p b⁴/384 D, a strip with fixed ends (beam tables, worked by hand)', () => {
  const D = (206e9 * 0.008 ** 3) / (12 * (1 - 0.3 ** 2));
  const { w_m, p } = at({});
  expect(w_m! * 1e3).toBeCloseTo(0.1243, 4);
  expect(w_m).toBeCloseTo((p! * 0.184 ** 4) / (384 * D), 12);
  const round = at({ round: 1, H: 0.1683, B: 0.1683, t: 0.006 });
  expect(round.w_m).toBeCloseTo((round.sigma_n! / 206e9) * (0.1683 / 2), 12);
});

it('gives hoop stress 5.64 MPa in a round 168.3×6 at the same depth (p D/2t)', () => {
  const { sigma } = at({ round: 1, H: 0.1683, B: 0.1683, t: 0.006 });
  expect(sigma! / 1e6).toBeCloseTo(5.64, 2);
});

it('shares the moments of a rectangular frame: 1 by 2 gives p/4 at the corners and in the middle of the longer wall (slope-deflection, by hand)', () => {
  const t = 1e-3;
  const { p, m_c, m_m } = at({ B: 1 + 2 * t, H: 2 + 2 * t, t });
  expect(m_c! / p!).toBeCloseTo(0.25, 9);
  expect(m_m! / p!).toBeCloseTo(0.25, 9);
  const wide = at({ B: 3 + 2 * t, H: 1 + 2 * t, t });
  expect(wide.m_c! / p!).toBeCloseTo(7 / 12, 9);
  expect(wide.sigma_b).toBeCloseTo((6 * wide.m_c!) / t ** 2, 0);
});

it('lies between the bounds for every side ratio, square and round', () => {
  for (const H of [0.05, 0.1, 0.16, 0.2, 0.3, 0.5])
    for (const round of [0, 1]) {
      const { sigma, sigma_low, sigma_high } = at({ H, round, B: round ? H : 0.2 });
      expect([sigma_low! <= sigma!, sigma! <= sigma_high!]).toEqual([true, true]);
    }
});

it('stops where a round tube could buckle: a third of 2 E/(1 − ν²) (t/D)³ (Timoshenko & Gere, from memory)', () => {
  const round = { round: 1, H: 0.3, B: 0.3, t: 0.003 };
  expect(at(round).p_cr! / 1e3).toBeCloseTo(((2 * 206e6) / 0.91) * (3 / 297) ** 3, 6);
  const range = (z: number) => outOfRangeWith(tubeWallPressure, 'partial factors', { ...sea, ...round, z });
  const limit = at(round).p_cr! / (3 * 1025 * 9.80665);
  expect([range(0.99 * limit), range(1.01 * limit)]).toEqual([undefined, expect.stringMatching(/buckling pressure/)]);
  expect(outOfRangeWith(tubeWallPressure, 'partial factors', { ...sea, ...square, z: 1e5 })).toBeUndefined();
});

it('allows f_y/γ_M0: 322.73 MPa of 355 at γ_M0 = 1.1 (EN 1993-1-1, 6.2.1(4))', () => {
  expect(at({ gamma_M0: 1.1 }).sigma_Rd! / 1e6).toBeCloseTo(322.73, 2);
});

it('allows F_y/1.67 under allowable stress', () => {
  expect(valuesGiven(tubeWallPressure, 'allowable stress', { f_y: 355e6, Omega_b: 1.67 }).sigma_Rd! / 1e6).toBeCloseTo(
    212.57,
    2,
  );
});

it('applies to sealed tubes only, and reads depth and density of the document', () => {
  const flooded = demoModel();
  const sealed = demoModel({ grid: { crossTubes: { flooding: 'sealed', vent: null, drain: null } } });
  expect(tubeWallPressure.applies(flooded, '1', situationOf(flooded))).toMatch(/flooded/);
  expect(tubeWallPressure.applies(sealed, '1', situationOf(sealed))).toBe(true);
  expect(tubeWallPressure.applies(sealed, 'A', situationOf(sealed))).toMatch(/flooded/);
  expect(reads(tubeWallPressure, 'z', sealed, '1')).toBe(60);
  expect(reads(tubeWallPressure, 'rho', sealed, '1')).toBe(1026);
  expect(reads(tubeWallPressure, 'gamma_F', sealed, '1')).toBe(1.35);
  expect(tubeWallPressure.once).toBe(true);
});

it('judges a sealed tube of the model by its stress over f_y/γ_M0, inside its bounds (hydrostatics and a strip with fixed ends, worked by hand)', () => {
  const sealed = demoModel({ grid: { crossTubes: { flooding: 'sealed', vent: null, drain: null } } });
  const { rows, findings } = checkRows(tubeWallPressure, sealed);
  const row = rows.find(({ place }) => place === '1')!;
  // 150×150×8 less 0.5 mm outside and nothing in its dry inside, under 1.35 · 1026 · 9.80665 · 60 = 814 980 Pa.
  const p = 0.81498;
  const demand = (6 * p * 134 ** 2) / 12 / 7.5 ** 2 + (p * 149) / (2 * 7.5);
  expect(row.utilisation).toBeCloseTo(demand / 355, 4);
  expect(row.verdict).toBe('passes');
  expect(findings).toEqual([]);
});

it('bounds a rectangular tube by its larger side, a round one by half and twice its hoop stress', () => {
  const flat = at({ H: 0.116, B: 0.216 });
  expect(flat.sigma_n! / flat.p!).toBeCloseTo(216 / 16, 9);
  expect(flat.sigma_low! / flat.p!).toBeCloseTo((6 * 200 ** 2) / (16 * 64), 9);
  expect((flat.sigma_high! - flat.sigma_n!) / flat.p!).toBeCloseTo((6 * 200 ** 2) / (8 * 64), 9);
  const round = at({ round: 1 });
  expect([round.sigma_low! / round.sigma!, round.sigma_high! / round.sigma!]).toEqual([0.5, 2]);
});

it('takes the section from where bending takes it, standard gravity and Poisson’s ratio besides', () => {
  for (const symbol of ['round', 'H', 'B', 't', 'E', 'f_y'])
    expect(tubeWallPressure.inputs[symbol]!.read, symbol).toBe(tubeBending.inputs[symbol]!.read);
  expect([reads(tubeWallPressure, 'g', demoModel(), 'A'), reads(tubeWallPressure, 'nu', demoModel(), 'A')]).toEqual([
    9.80665, 0.3,
  ]);
});
