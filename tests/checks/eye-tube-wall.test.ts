import { expect, it } from 'vitest';
import { eyeTubeWall } from '../../core/checks/eye-tube-wall.ts';
import { outOfRangeWith } from './at.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, missingFrom, reads, situationOf } from './model-of.ts';

const face = {
  b_0: 0.15,
  t_0: 0.008,
  f_y0: 355e6,
  t_e: 0.01,
  l_e: 0.1,
  h_e: 0.08,
  M_0: 0,
  W_0: 198.8e-6,
  F_z: 1e4,
  F_l: 0,
  F_q: 0,
};
const en = (change: Record<string, number> = {}) =>
  valuesGiven(eyeTubeWall, 'partial factors', { ...face, gamma_M5: 1, ...change });
const asd = (change: Record<string, number> = {}) =>
  valuesGiven(eyeTubeWall, 'allowable stress', { ...face, Omega_b: 1.67, ...change });

it('gives 118.09 kN for a plate 100×10 along a 150×8 in S355 (EN 1993-1-8, Table 7.13 without its factor 1/(1 − t/b); from memory, worked by hand)', () => {
  expect(en().N_Rd! / 1e3).toBeCloseTo(118.09, 2);
  expect(en({ gamma_M5: 1.1 }).N_Rd! / 1e3).toBeCloseTo(118.09 / 1.1, 2);
  expect(asd().N_Rd! / 1e3).toBeCloseTo(118.09 / 1.67, 2);
});

it('stays below the table with its factor, 126.53 kN', () => {
  expect(en().N_Rd! / (1 - 10 / 150) / 1e3).toBeCloseTo(126.53, 2);
});

it('takes k_m = 1.3 (1 − n) for the stress of the tube, at most 1 (from memory); under AISC 360 √(1 − U²) with U over 0.6 F_y', () => {
  const M = (n: number) => n * 355e6 * 198.8e-6;
  expect([en({ M_0: M(0.2) }).k_m, en({ M_0: M(0.5) }).k_m]).toEqual([1, expect.closeTo(0.65, 9)]);
  expect(en({ M_0: M(0.5) }).N_Rd! / 1e3).toBeCloseTo(118.09 * 0.65, 2);
  expect(asd({ M_0: M(0.36) }).k_m).toBeCloseTo(0.8, 9);
  expect(asd({ M_0: M(0.7) }).k_m).toBe(0);
});

it('adds the moments as pulls at half of the length and half of the thickness of the foot', () => {
  expect(en().N).toBe(1e4);
  expect(en({ F_l: 1e3 }).N).toBeCloseTo(1e4 + (1e3 * 0.08) / 0.05, 6);
  expect(en({ F_q: 1e3 }).N).toBeCloseTo(1e4 + (1e3 * 0.08) / 0.005, 6);
});

it('carries more than a pull at one point of a face with hinged corners, 2π m_p (yield-line theory)', () => {
  for (const t_e of [0.005, 0.03, 0.12])
    for (const l_e of [0.02, 0.2]) expect(en({ t_e, l_e }).N_Rd!).toBeGreaterThan(en({ t_e, l_e }).N_fan!);
  expect(en().N_fan! / 1e3).toBeCloseTo(((Math.PI / 2) * 355 * 64) / 1e3, 6);
});

it('stops where the side walls decide, and at walls thinner than 1/35', () => {
  const range = (change: Record<string, number>) =>
    outOfRangeWith(eyeTubeWall, 'partial factors', { ...face, gamma_M5: 1, ...change });
  expect([range({ t_e: 0.127 }), range({ t_e: 0.128 })]).toEqual([undefined, expect.stringMatching(/side walls/)]);
  expect([range({ t_0: 0.00429 }), range({ t_0: 0.00428 })]).toEqual([undefined, expect.stringMatching(/1\/35/)]);
});

it('reads the tube under the eye, at the end of life; round ones have no formula', () => {
  const model = demoModel({ grid: { mainTubes: { section: 'RHS 150x100x6.3 hot' } } });
  const situation = situationOf(model, 'service-down');
  expect(reads(eyeTubeWall, 'b_0', model, 'S1')).toBeCloseTo(0.099, 12);
  expect(reads(eyeTubeWall, 't_0', model, 'S1')).toBeCloseTo(0.0056, 12);
  expect(reads(eyeTubeWall, 'f_y0', model, 'S1')).toBe(355e6);
  expect(reads(eyeTubeWall, 'M_0', model, 'S1', situation)).toBe(situation.tubes.get('A')!.moment);
  expect(
    reads(
      eyeTubeWall,
      'W_0',
      demoModel({ protection: { lossPerFace: { tubeOutside: '0 mm', tubeInside: '0 mm' } } }),
      'S1',
    ) * 1e6,
  ).toBeCloseTo(199, 0);
  expect(reads(eyeTubeWall, 'gamma_M5', model, 'S1')).toBe(1);
  expect(
    missingFrom(eyeTubeWall, 'b_0', demoModel({ grid: { mainTubes: { section: 'CHS 168.3x6.3 hot' } } }), 'S1'),
  ).toMatch(/round tube/);
});
