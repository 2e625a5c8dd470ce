import { expect, it } from 'vitest';
import { boltStud } from '../../core/checks/bolt-stud.ts';
import { boltWallPull } from '../../core/checks/bolt-wall-pull.ts';
import { allowable, design, modelWith, readOf, situationOf } from './bolt-model.ts';
import { expectUtilisationBounds, ofTension } from './bolt-utilisation.ts';
import { valuesGiven } from './bolt-values.ts';

it.each([
  [5, 27.9],
  [8, 71.4],
])('carries pi f_y t² on a wall of %i mm in S355: %d kN (Johansen, fan of yield lines, derived by hand)', (t, kN) => {
  const given = { t_w: t / 1000, f_yw: 355e6 };
  const { F_w_Rd, R_low, R_high } = valuesGiven(boltWallPull, 'partial factors', { ...given, gamma_M0: 1, gamma_R: 1 });
  expect(F_w_Rd! / 1e3).toBeCloseTo(kN, 1);
  // EN 1993-1-8 Table 7.11 tends to 4 f_y t² for a brace of no width: the fan is weaker.
  expect(R_high).toBeCloseTo(4 * 355 * t ** 2, 5);
  // Hopkins & Prager (from memory): 2 π plastic moments f_y t² / 4, however the edge is held.
  expect(R_low).toBeCloseTo(((2 * Math.PI * 355) / 4) * t ** 2, 5);
  const halved = valuesGiven(boltWallPull, 'partial factors', { ...given, gamma_M0: 1, gamma_R: 2 });
  expect([halved.R_low! / R_low!, halved.R_high! / R_high!]).toEqual([0.5, 0.5]);
  expect(valuesGiven(boltWallPull, 'partial factors', { ...given, gamma_M0: 1.1 }).F_w_Rd! / 1e3).toBeCloseTo(
    kN / 1.1,
    1,
  );
  expect(valuesGiven(boltWallPull, 'allowable stress', { ...given, Omega_b: 1.67 }).F_w_Rd! / 1e3).toBeCloseTo(
    kN / 1.67,
    1,
  );
});

it('judges the same force in the bolt as the stud that stands on the wall', () => {
  expect(boltWallPull.demand).toBe('F_t');
  expect(boltStud.demand).toBe('F_t');
});

it('bounds its use by force and resistance, reads its factor, and fails where two rows hold the panel and one is lost', () => {
  expectUtilisationBounds(boltWallPull, { ...ofTension, capacity: 'F_w_Rd' });
  const model = modelWith((d) => Object.assign(d.panels, { A2: 'welded' }));
  const lost = situationOf(model, 'lost bolt row', 'down');
  expect(readOf(boltWallPull, 'gamma_R', model, 'A1', lost)).toBe(1);
  expect(readOf(boltWallPull, 'gamma_R', allowable(model), 'A1', lost)).toBe(1.67);
  expect(boltWallPull.applies(model, 'A1', lost)).toBe(true);
  expect(boltWallPull.applies(model, 'A2', lost)).toBe('the panel is welded');
  expect(boltWallPull.rule!(model, 'A1', lost)).toBeUndefined();
  expect(boltWallPull.rule!(modelWith(design({ support: 'cross tubes' })), 'A1', lost)).toMatch(
    /turns about the other/,
  );
});
