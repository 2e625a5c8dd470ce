import { expect, it } from 'vitest';
import { boltPullThrough } from '../../core/checks/bolt-pull-through.ts';
import { bolts } from '../../core/catalogue/bolts.ts';
import { allowable, design, fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { expectBetween, expectUtilisationBounds, ofTension } from './bolt-utilisation.ts';
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
  expect(readOf(boltPullThrough, 's_h', model, 'A1', down)).toBeCloseTo(0.018, 9);
  expect(readOf(boltPullThrough, 'e_h', model, 'A1', down)).toBeCloseTo(0.02003, 9);
  expect(readOf(boltPullThrough, 'gamma_R', model, 'A1', down)).toBe(1.25);
  expect(readOf(boltPullThrough, 'gamma_R', allowable(model), 'A1', down)).toBe(2);
  expect(readOf(boltPullThrough, 'd_m', modelWith(fixing({ countersunk: true })), 'A1', down)).toMatch(/countersunk/);
});

it('bounds the resistance by cylinders across flats and across corners, shear by von Mises (by hand), for every head', () => {
  const given = { s_h: 0.024, e_h: 0.02675, d_m: 0.025375, t: 0.005, f_u: 470e6, f_yp: 355e6 };
  const { R_low, R_high } = valuesGiven(boltPullThrough, 'partial factors', { ...given, gamma_R: 1 });
  expect(R_low).toBeCloseTo((Math.PI * 24 * 5 * 355) / Math.sqrt(3), 6);
  expect(R_high).toBeCloseTo((Math.PI * 26.75 * 5 * 470) / Math.sqrt(3), 6);
  const halved = valuesGiven(boltPullThrough, 'partial factors', { ...given, gamma_R: 2 });
  expect(halved.R_low! / R_low!).toBeCloseTo(0.5, 9);
  expect(halved.R_high! / R_high!).toBeCloseTo(0.5, 9);
  expectUtilisationBounds(boltPullThrough, { ...ofTension, capacity: 'B_p_Rd' });
  for (const { headAcrossFlats: s_h, headAcrossCorners: e_h } of bolts)
    for (const [f_yp, f_u] of [
      [235e6, 360e6],
      [460e6, 540e6],
    ] as const) {
      const head = { s_h, e_h, d_m: (s_h + e_h) / 2, t: 0.005, f_u, f_yp };
      const partial = { gamma_M2: 1.25, gamma_R: 1.25 };
      expectBetween(valuesGiven(boltPullThrough, 'partial factors', { ...head, ...partial }), 'B_p_Rd');
      expectBetween(valuesGiven(boltPullThrough, 'allowable stress', { ...head, Omega_J: 2, gamma_R: 2 }), 'B_p_Rd');
    }
});

it('fails by rule where two rows hold the panel and one is lost, and leaves a welded panel alone', () => {
  const model = modelWith(design({ support: 'main tubes' }));
  const lost = situationOf(model, 'lost bolt row', 'down');
  expect(boltPullThrough.rule!(model, 'A1', lost)).toMatch(/turns about the other/);
  expect(boltPullThrough.rule!(modelWith(), 'A1', lost)).toBeUndefined();
  const welded = modelWith((d) => Object.assign(d.panels, { A2: 'welded' }));
  expect(boltPullThrough.applies(welded, 'A1', lost)).toBe(true);
  expect(boltPullThrough.applies(welded, 'A2', lost)).toBe('the panel is welded');
});
