import { expect, it } from 'vitest';
import { boltBearingTube } from '../../core/checks/bolt-bearing-tube.ts';
import { boltClampSlip } from '../../core/checks/bolt-clamp-slip.ts';
import { boltTension } from '../../core/checks/bolt-tension.ts';
import { boltWallPull } from '../../core/checks/bolt-wall-pull.ts';
import { allowable, fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { expectBetween, expectUtilisationBounds, ofShear } from './bolt-utilisation.ts';
import { valuesGiven } from './bolt-values.ts';

const tightening = { torque: '60 N m', k: { low: 0.12, high: 0.2, source: 'tests on these bolts (invented)' } };
const clamp = {
  into: 'clamp',
  edgeDistance: '60 mm',
  clamp: { friction: { value: 0.2, source: 'assumed' } },
  tightening,
};
const model = modelWith(fixing(clamp));
const down = situationOf(model, 'service', 'down');
const given = { T_t: 218.5, k_low: 0.15, k_high: 0.2, d: 0.016, c_c: 0, F_t: 8.3e3, mu_c: 0.2 };

it('has the friction of the least preload: an M16 at 218.5 N·m and k = 0.2 holds 68.28 kN (T = k d F, Shigley; worked by hand), less the pull', () => {
  const en = valuesGiven(boltClampSlip, 'partial factors', { ...given, gamma_M3: 1.25, gamma_R: 1.25 });
  expect(en.F_lo! / 1e3).toBeCloseTo(68.28, 2);
  expect(en.F_s_Rd! / 1e3).toBeCloseTo((0.2 * (68.28 - 8.3)) / 1.25, 2);
  expect(en.R_high! / 1e3).toBeCloseTo((0.2 * 91.04) / 1.25, 2);
  expect(en.R_low! / 1e3).toBeCloseTo((0.2 * (0.8 * 68.28 - 8.3)) / 1.25, 2);
  expectBetween(en, 'F_s_Rd');
  const asd = valuesGiven(boltClampSlip, 'allowable stress', { ...given, c_c: 0.1, Omega_slip: 1.5, gamma_R: 1.5 });
  expect(asd.F_s_Rd! / 1e3).toBeCloseTo((0.2 * (0.9 * 68.28 - 8.3)) / 1.5, 2);
  expectBetween(asd, 'F_s_Rd');
  const off = valuesGiven(boltClampSlip, 'partial factors', { ...given, F_t: 60e3, gamma_M3: 1.25, gamma_R: 1.25 });
  expect(off.R_low).toBe(off.F_s_Rd);
  expectUtilisationBounds(boltClampSlip, { ...ofShear, capacity: 'F_s_Rd' });
});

it('reads torque, k, creep of coatings and friction, and says which is missing', () => {
  const read = (symbol: string) => readOf(boltClampSlip, symbol, model, 'A1', down);
  expect(['T_t', 'k_low', 'k_high', 'c_c', 'mu_c'].map(read)).toEqual([60, 0.12, 0.2, 0, 0.2]);
  expect([read('gamma_R'), readOf(boltClampSlip, 'gamma_R', allowable(model), 'A1', down)]).toEqual([1.25, 1.5]);
  const creeping = modelWith(
    fixing({ ...clamp, tightening: { ...tightening, coatingLoss: { value: 0.3, source: 'assumed' } } }),
  );
  expect(readOf(boltClampSlip, 'c_c', creeping, 'A1', down)).toBe(0.3);
  const bare = modelWith(fixing({ into: 'clamp', edgeDistance: '60 mm' }));
  expect(readOf(boltClampSlip, 'T_t', bare, 'A1', down)).toMatch(/"tightening"/);
  expect(readOf(boltClampSlip, 'mu_c', bare, 'A1', down)).toMatch(/"clamp"/);
  const stainless = modelWith(fixing({ ...clamp, class: 'A4-70' }));
  expect(readOf(boltClampSlip, 'T_t', stainless, 'A1', down)).toMatch(/procedure tests/);
});

it('goes round the tube: no hole in it, no wall pulled, the lever of the moment at the panel’s edge in both directions', () => {
  expect(boltClampSlip.applies(model, 'A1', down)).toBe(true);
  expect(boltClampSlip.applies(modelWith(), 'A1', down)).toMatch(/do not clamp/);
  expect(boltBearingTube.applies(model, 'A1', down)).toMatch(/no hole/);
  expect(boltWallPull.applies(model, 'A1', down)).toMatch(/far corners/);
  for (const direction of ['up', 'down'] as const)
    expect(readOf(boltTension, 'l_x', model, 'A1', situationOf(model, 'service', direction))).toBe(0.06);
});

it('finds a leg that would stand in the tube', () => {
  expect(model.geometry.findings.map(({ id }) => id)).not.toContain('clamp-on-tube');
  const inside = modelWith(fixing({ ...clamp, edgeDistance: '20 mm' }));
  expect(inside.geometry.findings.map(({ id }) => id)).toContain('clamp-on-tube');
});

it('refuses a range of k that runs backwards', () => {
  const backwards = { ...tightening, k: { low: 0.3, high: 0.2, source: 'x' } };
  expect(() => modelWith(fixing({ ...clamp, tightening: backwards }))).toThrow(/smallest k, 0.3/);
});
