import { expect, it } from 'vitest';
import { crossingThroat } from '../../core/checks/crossing-throat.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, missingFrom, reads, situationOf } from './model-of.ts';

const ring = { b_1: 0.1, h_1: 0.06, M_1: 0, V_1: 0, N_1: 0 };
const en = (change: Record<string, number> = {}) =>
  valuesGiven(crossingThroat, 'partial factors', { ...ring, ...change });

it('has the section of a ring of weld: 2 (b + h) long, modulus b²/3 + b h (weld as a line, machine-design handbooks, from memory)', () => {
  expect(en({ N_1: 3.2e4 }).f_w).toBeCloseTo(1e5, 6);
  expect(en({ M_1: 1e3 }).f_w).toBeCloseTo(1e3 / (0.01 / 3 + 0.006), 6);
  expect(en({ V_1: 1e4 }).f_w).toBeCloseTo(5e4, 6);
  const { f_w, f_n, f_v } = en({ N_1: 3.2e4, M_1: 1e3, V_1: 1e4 });
  expect(f_n).toBeCloseTo(1e5 + 1e3 / (0.01 / 3 + 0.006), 6);
  expect(f_w).toBeCloseTo(Math.hypot(f_n!, f_v!), 6);
});

it('carries 241.20 MPa on its throat in S355 of 470 MPa (EN 1993-1-8, 4.5.3.3; worked by hand)', () => {
  const at = (gamma_M2: number) =>
    valuesGiven(crossingThroat, 'partial factors', { f_u: 470e6, beta_w: 0.9, gamma_M2, a_w: 0.005 }).f_Rd! /
    5e-3 /
    1e6;
  expect(at(1.25)).toBeCloseTo(241.2, 2);
  expect(at(1) / at(1.25)).toBeCloseTo(1.25, 12);
});

it('is allowed 0.6 F_u/2 on throat and wall, whichever is thinner (AISC 360 J2.4, J4.2, from memory)', () => {
  const at = (a_w: number, t_1: number) =>
    valuesGiven(crossingThroat, 'allowable stress', { f_u: 470e6, Omega_J: 2, a_w, t_1 }).f_Rd! / 1e3;
  expect(at(0.005, 0.008)).toBeCloseTo(0.3 * 470 * 5, 9);
  expect(at(0.005, 0.004)).toBeCloseTo(0.3 * 470 * 4, 9);
});

it('reads forces, sizes and throat at the end of life; flush grids only', () => {
  const model = demoModel({ grid: { crossTubes: { section: 'RHS 150x100x6.3 hot' } } });
  const situation = situationOf(model, 'service-down');
  const { moment, shear, axial } = situation.tubes.get('2')!;
  expect(['M_1', 'V_1', 'N_1'].map((symbol) => reads(crossingThroat, symbol, model, 'B/2', situation))).toEqual([
    moment,
    shear,
    Math.abs(axial),
  ]);
  expect(reads(crossingThroat, 'b_1', model, 'B/2')).toBeCloseTo(0.149, 12);
  expect(reads(crossingThroat, 'h_1', model, 'B/2')).toBeCloseTo(0.099, 12);
  expect(reads(crossingThroat, 't_1', model, 'B/2')).toBeCloseTo(0.0056, 12);
  expect(reads(crossingThroat, 'a_w', model, 'B/2')).toBeCloseTo(0.0055, 12);
  expect(reads(crossingThroat, 'f_u', model, 'B/2')).toBe(470e6);
  expect(reads(crossingThroat, 'beta_w', model, 'B/2')).toBe(0.9);
  expect(crossingThroat.applies(model, 'B/2', situation)).toBe(true);
  expect(crossingThroat.applies(demoModel({ grid: { arrangement: 'stacked' } }), 'B/2', situation)).toMatch(
    /lie on the main tubes/,
  );
  expect(missingFrom(crossingThroat, 'a_w', demoModel({ grid: { jointThroat: '0.5 mm' } }), 'B/2')).toMatch(
    /corrosion/,
  );
  expect(
    missingFrom(crossingThroat, 'b_1', demoModel({ grid: { crossTubes: { section: 'CHS 114.3x5 hot' } } }), 'B/2'),
  ).toMatch(/round/);
});

it('fails by rule where the tubes cannot be welded to each other', () => {
  const mixed = demoModel({ grid: { crossTubes: { material: '6082-T6 extruded' } } });
  expect(crossingThroat.rule!(mixed, 'A/1', situationOf(mixed))).toMatch(/cannot be welded to/);
  expect(crossingThroat.rule!(demoModel(), 'A/1', situationOf(mixed))).toBeUndefined();
});

it('lies between the ring wholly plastic, b²/2 + b h, and the level runs as a couple, b h (worked by hand: 100 × 60 mm)', () => {
  expect(en({ M_1: 1e3 }).f_low! / 1e3).toBeCloseTo(1e6 / (100 ** 2 / 2 + 100 * 60), 9);
  expect(en({ M_1: 1e3 }).f_high! / 1e3).toBeCloseTo(1e6 / (100 * 60), 9);
  expect(en({ N_1: 3.2e4 }).f_low! / 1e3).toBeCloseTo(100, 9);
  expect(en({ V_1: 3.2e4 }).f_low! / 1e3).toBeCloseTo(100, 9);
  expect(en({ N_1: 3.2e4, V_1: 1e4 }).f_high! / 1e3).toBeCloseTo(Math.hypot(100, 50), 9);
  for (const b_1 of [0.05, 0.1, 0.2])
    for (const h_1 of [0.05, 0.1])
      for (const N_1 of [0, 1e5])
        for (const M_1 of [0, 2e3])
          for (const V_1 of [0, 5e4]) {
            const { f_w, f_low, f_high } = en({ b_1, h_1, N_1, M_1, V_1 });
            expect([f_low! <= f_w! * (1 + 1e-12), f_w! <= f_high! * (1 + 1e-12)]).toEqual([true, true]);
          }
});
