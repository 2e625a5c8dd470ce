import { expect, it } from 'vitest';
import { boltTearOut } from '../../core/checks/bolt-tear-out.ts';
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

it('AISC 360 J4.3: rupture of 848 mm² at 470 MPa 239.14 kN (359.46 less 470 · 256), yielding of 1280 mm² at 355 MPa 272.64 kN (392.96 less the same); from memory', () => {
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
