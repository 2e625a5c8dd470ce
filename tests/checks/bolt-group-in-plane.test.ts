import { expect, it } from 'vitest';
import { boltGroupInPlane } from '../../core/checks/bolt-group-in-plane.ts';
import { allowable, modelWith, readOf, situationOf } from './bolt-model.ts';
import { expectUtilisationBounds } from './bolt-utilisation.ts';
import { valuesGiven } from './bolt-values.ts';

const given = { a_b: 2, b_b: 2, n_x: 3, n_y: 3, A_f: 4, t_0: 0.01, rho: 7850, g: 9.80665, k_dyn: 2, gamma_L: 1.35 };

it('weighs the field and hangs it on what is left: by hand for a square with three bolts in a row', () => {
  const { W, F_v, F_mean, F_one } = valuesGiven(boltGroupInPlane, 'partial factors', given);
  expect(W).toBeCloseTo(1.35 * 2 * 7850 * 4 * 0.01 * 9.80665, 6);
  expect(F_v! / W!).toBeCloseTo(Math.hypot(0.6 / 5.2, 0.2 + 0.36 / 5.2), 9);
  expect(F_mean! / W!).toBeCloseTo(1 / 8, 9);
  expect(F_one! / W!).toBeCloseTo(2, 9);
});

it('stays within equilibrium (second opinion) for long and short fields', () => {
  for (const [a_b, b_b, n_x, n_y] of [
    [1, 1, 2, 2],
    [1, 5, 2, 2],
    [5, 1, 9, 3],
    [1, 2, 3, 9],
  ] as const) {
    const { F_v, F_mean, F_one } = valuesGiven(boltGroupInPlane, 'allowable stress', { ...given, a_b, b_b, n_x, n_y });
    expect(F_v!).toBeGreaterThanOrEqual(F_mean!);
    expect(F_v!).toBeLessThanOrEqual(F_one!);
  }
});

it('judges it by the shear of the bolt: M16 8.8 60.288 kN (EN 1993-1-8 Table 3.4), 37.397 kN by AISC 360', () => {
  const m16 = { A_s: 157e-6, A_b: 201.06e-6, threads: 1, f_ub: 800e6 };
  expect(
    valuesGiven(boltGroupInPlane, 'partial factors', { ...m16, alpha_v: 0.6, gamma_M2: 1.25 }).F_v_Rd! / 1e3,
  ).toBeCloseTo(60.288, 2);
  expect(
    valuesGiven(boltGroupInPlane, 'allowable stress', { ...m16, F_nv: 372e6, Omega_J: 2 }).F_v_Rd! / 1e3,
  ).toBeCloseTo(37.397, 2);
  expectUtilisationBounds(boltGroupInPlane, { force: 'F_v', least: 'F_mean', most: 'F_one', capacity: 'F_v_Rd' });
});

it('reads the panel as built, and the dynamic factor of 0027/ND for a light lift (2.44) unless one is stated', () => {
  const model = modelWith();
  const up = situationOf(model, 'service', 'up');
  expect(readOf(boltGroupInPlane, 't_0', model, 'A1', up)).toBeCloseTo(0.006, 12);
  expect(readOf(boltGroupInPlane, 'rho', model, 'A1', up)).toBe(7850);
  expect(readOf(boltGroupInPlane, 'A_f', model, 'A1', up)).toBe(model.fields.get('A1')!.area);
  expect(readOf(boltGroupInPlane, 'k_dyn', model, 'A1', up)).toBeCloseTo(1 + 0.25 * Math.sqrt(100 / 3), 9);
  expect(readOf(boltGroupInPlane, 'gamma_L', model, 'A1', up)).toBe(1.35);
  expect(readOf(boltGroupInPlane, 'gamma_R', model, 'A1', up)).toBe(1.25);
  expect(readOf(boltGroupInPlane, 'gamma_R', allowable(model), 'A1', up)).toBe(2);
  const stated = modelWith((d) => Object.assign(d.loads.liftInAir, { dynamicFactor: { value: 1.7, source: 'yard' } }));
  expect(readOf(boltGroupInPlane, 'k_dyn', stated, 'A1', up)).toBe(1.7);
});

it('does not apply to a welded panel', () => {
  const model = modelWith((d) => Object.assign(d.panels, { A2: 'welded' }));
  const up = situationOf(model, 'service', 'up');
  expect(boltGroupInPlane.applies(model, 'A1', up)).toBe(true);
  expect(boltGroupInPlane.applies(model, 'A2', up)).toBe('the panel is welded');
});
