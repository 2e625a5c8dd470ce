import { expect, it } from 'vitest';
import { boltAnchorage } from '../../core/checks/bolt-anchorage.ts';
import { outOfRangeWith } from './at.ts';
import { fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const down = situationOf(modelWith(), 'service', 'down');
const oneSided = { into: 'one-sided', oneSided: { tension: '30 kN', shear: '24 kN', source: 'invented approval' } };

it('applies to one-sided fixings alone', () => {
  expect(boltAnchorage.applies(modelWith(), 'A1', down)).toMatch(/no one-sided/);
  const welded = modelWith((d) => Object.assign(d.panels, { A1: 'welded' }));
  expect(boltAnchorage.applies(welded, 'A1', down)).toBe('the panel is welded');
  expect(boltAnchorage.applies(modelWith(fixing({ into: 'one-sided' })), 'A1', down)).toBe(true);
});

it('cannot judge one without its maker’s values, and reads them from the document', () => {
  const without = modelWith(fixing({ into: 'one-sided' }));
  expect(readOf(boltAnchorage, 'F_tk', without, 'A1', down)).toMatch(/maker’s approval/);
  const model = modelWith(fixing(oneSided));
  expect(readOf(boltAnchorage, 'F_tk', model, 'A1', down)).toBe(30e3);
  expect(readOf(boltAnchorage, 'F_vk', model, 'A1', down)).toBe(24e3);
});

it('adds tension and shear on a straight line, over the factor of the basis (by hand: 12/24 + 4.8/19.2 = 0.75)', () => {
  const given = { F_t: 12e3, F_v: 4.8e3, F_tk: 30e3, F_vk: 24e3 };
  const en = valuesGiven(boltAnchorage, 'partial factors', { ...given, gamma_M2: 1.25 });
  expect([en.u, en.u_Rd]).toEqual([0.75, 1]);
  const asd = valuesGiven(boltAnchorage, 'allowable stress', { ...given, Omega_J: 2 });
  expect(asd.u).toBeCloseTo(12 / 15 + 4.8 / 12, 9);
});

it('does not believe a tension beyond the bolt’s own: M12 of class 8.8 breaks at 67.4 kN (ISO 898-1)', () => {
  const at = (F_tk: number) => outOfRangeWith(boltAnchorage, 'partial factors', { F_tk, f_ub: 800e6, A_s: 84.3e-6 });
  expect([at(67.4e3), at(67.5e3)]).toEqual([undefined, expect.stringMatching(/more than a bolt/)]);
});

it('bounds the pull by the mean of all bolts below: 2 by 2 bolts hang 4 kN on 1 kN each (equilibrium)', () => {
  const { low, high, of } = boltAnchorage.second;
  expect([of, low, high]).toEqual(['F_t', 'F_low', 'F_high']);
  expect(valuesGiven(boltAnchorage, 'partial factors', { F_all: 4e3, n_x: 2, n_y: 2 }).F_low).toBe(1e3);
});
