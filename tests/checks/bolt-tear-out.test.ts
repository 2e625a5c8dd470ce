import { expect, it } from 'vitest';
import { boltTearOut } from '../../core/checks/bolt-tear-out.ts';
import { allowable, modelWith, readOf, situationOf } from './bolt-model.ts';
import { expectBetween, expectUtilisationBounds, ofShear } from './bolt-utilisation.ts';
import { valuesGiven } from './bolt-values.ts';

it('EN 1993-1-8, 3.10.2: 848 mm² of shear planes in S355 carry 173.80 kN (270.06 of the block less 96.26 of its net tension)', () => {
  const { A_nv, V_eff_Rd } = valuesGiven(boltTearOut, 'partial factors', {
    e_1: 0.062,
    d_0: 0.018,
    t: 0.008,
    f_yp: 355e6,
    gamma_M0: 1,
  });
  expect(A_nv! * 1e6).toBeCloseTo(848, 6);
  expect(V_eff_Rd! / 1e3).toBeCloseTo(270.06 - (470 * 256) / 1.25 / 1e3, 1);
});

it('AISC 360 J4.3: rupture of 848 mm² at 470 MPa 239.14 kN (359.46 less 470 · 256), yielding of 1280 mm² at 355 MPa 272.64 kN (392.96 less the same)', () => {
  const us = { d_0: 0.018, t: 0.008, f_yp: 355e6, f_u: 470e6, Omega_J: 1 };
  expect(valuesGiven(boltTearOut, 'allowable stress', { ...us, f_yp: 460e6, e_1: 0.062 }).V_eff_Rd! / 1e3).toBeCloseTo(
    359.46 - 0.47 * 256,
    1,
  );
  const gross = valuesGiven(boltTearOut, 'allowable stress', { ...us, e_1: 0.08 });
  expect(gross.A_gv! * 1e6).toBeCloseTo(1280, 6);
  expect(gross.V_eff_Rd! / 1e3).toBeCloseTo(392.96 - 0.47 * 256, 1);
  expect(valuesGiven(boltTearOut, 'allowable stress', { ...us, e_1: 0.08, Omega_J: 2 }).V_eff_Rd! / 1e3).toBeCloseTo(
    (392.96 - 0.47 * 256) / 2,
    1,
  );
});

it('has no resistance left where the hole touches the edge', () => {
  expect(
    valuesGiven(boltTearOut, 'partial factors', { e_1: 0.009, d_0: 0.018, t: 0.008, f_yp: 355e6, gamma_M0: 1 })
      .V_eff_Rd,
  ).toBeCloseTo(0, 6);
});

it('bounds the resistance by Tresca on the planes beside the hole and by von Mises on those from its centre (by hand)', () => {
  const size = { e_1: 0.03, d_0: 0.018, t: 0.008, f_yp: 355e6, f_u: 470e6 };
  const { R_low, R_high } = valuesGiven(boltTearOut, 'partial factors', { ...size, gamma_R: 1 });
  expect(R_low).toBeCloseTo((355 / 2) * 2 * 21 * 8, 6);
  expect(R_high).toBeCloseTo((470 / Math.sqrt(3)) * 2 * 30 * 8, 6);
  const halved = valuesGiven(boltTearOut, 'partial factors', { ...size, gamma_R: 2 });
  expect(halved.R_low! / R_low!).toBeCloseTo(0.5, 9);
  expect(halved.R_high! / R_high!).toBeCloseTo(0.5, 9);
  expectUtilisationBounds(boltTearOut, { ...ofShear, capacity: 'V_eff_Rd' });
  for (const e_1 of [0.01, 0.018, 0.03, 0.1, 1])
    for (const [f_yp, f_u] of [
      [235e6, 360e6],
      [355e6, 470e6],
      [460e6, 540e6],
      [220e6, 520e6],
    ] as const) {
      const given = { ...size, e_1, f_yp, f_u };
      const partial = { gamma_M0: 1.1, gamma_R: 1.1 };
      expectBetween(valuesGiven(boltTearOut, 'partial factors', { ...given, ...partial }), 'V_eff_Rd');
      expectBetween(valuesGiven(boltTearOut, 'allowable stress', { ...given, Omega_J: 2, gamma_R: 2 }), 'V_eff_Rd');
    }
});

it('reads the factor of its basis: on yielding 1.0, on rupture 2.0; and leaves a welded panel alone', () => {
  const model = modelWith((d) => Object.assign(d.panels, { A2: 'welded' }));
  const down = situationOf(model, 'service', 'down');
  expect(readOf(boltTearOut, 'gamma_R', model, 'A1', down)).toBe(1);
  expect(readOf(boltTearOut, 'gamma_R', allowable(model), 'A1', down)).toBe(2);
  expect(readOf(boltTearOut, 'f_yp', model, 'A1', down)).toBe(355e6);
  expect(boltTearOut.applies(model, 'A1', down)).toBe(true);
  expect(boltTearOut.applies(model, 'A2', down)).toBe('the panel is welded');
});
