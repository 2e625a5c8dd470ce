import { expect, it } from 'vitest';
import { boltGroupUltimate } from '../../core/checks/bolt-group-ultimate.ts';
import { modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const given = { a_b: 2, b_b: 2, n_x: 3, n_y: 3, A_f: 4, t_0: 0.01, rho: 7850, g: 9.80665, k_dyn: 2, gamma_L: 1.35 };
const m16 = { A_s: 157e-6, A_b: 201.06e-6, threads: 1, f_ub: 800e6, alpha_v: 0.6, gamma_M2: 1.25 };

it('carries C times the shear of a bolt: M16 8.8 60.288 kN (EN 1993-1-8, Table 3.4)', () => {
  const { C, P_Rd, F_v_Rd, W } = valuesGiven(boltGroupUltimate, 'partial factors', { ...given, ...m16 });
  expect(F_v_Rd! / 1e3).toBeCloseTo(60.288, 2);
  expect(P_Rd! / C!).toBeCloseTo(60288, -1);
  expect(W).toBeCloseTo(1.35 * 2 * 7850 * 4 * 0.01 * 9.80665, 6);
  const us = { A_b: 201.06e-6, F_nv: 372e6, Omega_J: 2 };
  const asd = valuesGiven(boltGroupUltimate, 'allowable stress', { ...given, ...us });
  expect(asd.P_Rd! / C! / 1e3).toBeCloseTo(37.397, 2);
});

it('is at least 0.95 of the elastic group, worked by hand for a square with three bolts in a row, and below the five that are left', () => {
  const { C, P_low, P_high, F_v_Rd } = valuesGiven(boltGroupUltimate, 'partial factors', { ...given, ...m16 });
  const elastic = 1 / Math.hypot(0.6 / 5.2, 0.2 + 0.36 / 5.2);
  expect(P_low! / F_v_Rd!).toBeCloseTo(0.95 * elastic, 6);
  expect(P_high! / F_v_Rd!).toBeCloseTo(5, 9);
  expect(C).toBeGreaterThan(elastic);
  expect(C).toBeLessThan(5);
  for (const [a_b, b_b, n_x, n_y] of [
    [1, 1, 2, 2],
    [1, 5, 3, 9],
    [5, 1, 9, 3],
  ] as const) {
    // prettier-ignore
    const v = valuesGiven(boltGroupUltimate, 'partial factors', { ...given, ...m16, a_b, b_b, n_x, n_y });
    expect([v.P_Rd! >= v.P_low! * (1 - 1e-9), v.P_Rd! <= v.P_high!]).toEqual([true, true]);
  }
  const many = valuesGiven(boltGroupUltimate, 'partial factors', { ...given, ...m16, n_x: 9, n_y: 3 });
  expect(many.P_high! / many.F_v_Rd!).toBeCloseTo(17, 9);
});

it('weighs the panel as built and leaves a welded one alone', () => {
  const model = modelWith((d) => Object.assign(d.panels, { A2: 'welded' }));
  const up = situationOf(model, 'service', 'up');
  expect(readOf(boltGroupUltimate, 't_0', model, 'A1', up)).toBeCloseTo(0.006, 12);
  expect(boltGroupUltimate.applies(model, 'A1', up)).toBe(true);
  expect(boltGroupUltimate.applies(model, 'A2', up)).toBe('the panel is welded');
});
