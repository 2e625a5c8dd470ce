import { expect, it } from 'vitest';
import { boltBlockTear } from '../../core/checks/bolt-block-tear.ts';
import { allowable, modelWith, readOf, situationOf } from './bolt-model.ts';
import { expectBetween, expectUtilisationBounds, ofShear } from './bolt-utilisation.ts';
import { valuesGiven } from './bolt-values.ts';

const two = { n_x: 2, n_y: 2, s_x: 0.05, s_y: 0.05, e_1: 0.062, d_0: 0.018, t: 0.008, f_yp: 355e6, f_u: 470e6 };
const en = { gamma_M0: 1, gamma_M2: 1.25, gamma_R: 1.25 };
const asd = { Omega_J: 1, gamma_R: 1 };

it('EN 1993-1-8, 3.10.2: 256 mm² in tension and 848 mm² in shear of S355 carry 270.06 kN, on two bolts', () => {
  const { A_ntx, A_nvy, B_x, B_y } = valuesGiven(boltBlockTear, 'partial factors', { ...two, ...en });
  expect([A_ntx! * 2e6, A_nvy! * 2e6].map((area) => Number(area.toFixed(6)))).toEqual([256, 848]);
  expect((2 * B_x!) / 1e3).toBeCloseTo(270.06, 1);
  expect(B_y).toBe(B_x);
});

it('AISC 360, J4.3: the same carry 359.46 kN by rupture; with 1280 mm² gross, 392.96 kN by yielding', () => {
  const rupture = valuesGiven(boltBlockTear, 'allowable stress', { ...two, ...asd, f_yp: 460e6 });
  expect((2 * rupture.B_x!) / 1e3).toBeCloseTo(359.46, 1);
  const gross = valuesGiven(boltBlockTear, 'allowable stress', { ...two, ...asd, e_1: 0.08 });
  expect((2 * gross.B_y!) / 1e3).toBeCloseTo(392.96, 1);
});

it('EN 1993-1-1, 6.2.3(2): 0.9 f_u on the net section between two holes: 0.9 · 470 · 256/1.25 = 86.63 kN; AISC 360, J4.1: 120.3 kN', () => {
  expect(valuesGiven(boltBlockTear, 'partial factors', { ...two, ...en }).B_net! / 1e3).toBeCloseTo(86.63, 2);
  const us = valuesGiven(boltBlockTear, 'allowable stress', { ...two, ...asd });
  expect(us.B_net! / 1e3).toBeCloseTo(120.32, 2);
  expect(valuesGiven(boltBlockTear, 'allowable stress', { ...two, Omega_J: 2, gamma_R: 2 }).B_Rd).toBeCloseTo(us.B_Rd! / 2, 3); // prettier-ignore
});

it('takes the least of the rows and of the net section, inside its bounds', () => {
  for (const [n_x, s_x, n_y, s_y] of [
    [2, 0.3, 12, 0.04],
    [9, 0.06, 2, 0.8],
    [20, 0.2, 20, 0.2],
  ] as const)
    // prettier-ignore
    for (const e_1 of [0.02, 0.06]) {
      const given = { ...two, n_x, s_x, n_y, s_y, e_1 };
      const v = valuesGiven(boltBlockTear, 'partial factors', { ...given, ...en });
      expect(v.B_Rd).toBe(Math.min(v.B_x!, v.B_y!, v.B_net!));
      expectBetween(v, 'B_Rd');
      expectBetween(valuesGiven(boltBlockTear, 'allowable stress', { ...given, Omega_J: 2, gamma_R: 2 }), 'B_Rd');
    }
  expectUtilisationBounds(boltBlockTear, { ...ofShear, capacity: 'B_Rd' });
});

it('reads the factor of its basis, and leaves a welded panel alone', () => {
  const model = modelWith((d) => Object.assign(d.panels, { A2: 'welded' }));
  const down = situationOf(model, 'service', 'down');
  expect(readOf(boltBlockTear, 'gamma_R', model, 'A1', down)).toBe(1.25);
  expect(readOf(boltBlockTear, 'gamma_R', allowable(model), 'A1', down)).toBe(2);
  expect(boltBlockTear.applies(model, 'A1', down)).toBe(true);
  expect(boltBlockTear.applies(model, 'A2', down)).toBe('the panel is welded');
});
