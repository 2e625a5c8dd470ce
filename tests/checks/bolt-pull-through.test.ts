import { expect, it } from 'vitest';
import { boltPullThrough } from '../../core/checks/bolt-pull-through.ts';
import { fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

it('EN 1993-1-8 Table 3.4, M16 head (24 and 26.75 mm) through 5 mm at 470 MPa: 89.92 kN', () => {
  expect(
    valuesGiven(boltPullThrough, 'partial factors', { d_m: 0.025375, t: 0.005, f_u: 470e6, gamma_M2: 1.25 }).B_p_Rd! /
      1e3,
  ).toBeCloseTo(89.92, 2);
});

it('AISC 360 J4.2(b): the same cylinder over Omega 2 (formula from memory)', () => {
  expect(
    valuesGiven(boltPullThrough, 'allowable stress', { d_m: 0.025375, t: 0.005, f_u: 470e6, Omega_J: 2 }).B_p_Rd! / 1e3,
  ).toBeCloseTo((89.92 * 1.25) / 2, 2);
});

it('reads the head from the catalogue, and cannot judge a countersunk one', () => {
  const model = modelWith();
  const down = situationOf(model, 'service', 'down');
  // M12: 18 mm across flats, 20.03 mm across corners (ISO 4014).
  expect(readOf(boltPullThrough, 'd_m', model, 'A1', down)).toBeCloseTo((0.018 + 0.02003) / 2, 9);
  expect(readOf(boltPullThrough, 'd_m', modelWith(fixing({ countersunk: true })), 'A1', down)).toMatch(/countersunk/);
});
