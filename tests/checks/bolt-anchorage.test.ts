import { expect, it } from 'vitest';
import { boltAnchorage } from '../../core/checks/bolt-anchorage.ts';
import { fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const down = situationOf(modelWith(), 'service', 'down');

it('does not apply to a bolt through both walls, nor to a welded panel', () => {
  expect(boltAnchorage.applies(modelWith(), 'A1', down)).toMatch(/both walls/);
  expect(
    boltAnchorage.applies(
      modelWith((d) => Object.assign(d.panels, { A1: 'welded' })),
      'A1',
      down,
    ),
  ).toBe('the panel is welded');
});

it.each([
  ['one-sided', /approval/],
  ['welded stud', /stud weld/],
  ['tapped pad', /tapped pad/],
])('cannot judge the end of a bolt of kind “%s”, and says what is missing', (into, words) => {
  const model = modelWith(fixing({ into }));
  expect(boltAnchorage.applies(model, 'A1', down)).toBe(true);
  expect(readOf(boltAnchorage, 'F_a_Rd', model, 'A1', down)).toMatch(words);
});

it('bounds the pull by the mean of all bolts below: 2 by 2 bolts hang 4 kN on 1 kN each (equilibrium)', () => {
  const { low, high, of } = boltAnchorage.second;
  expect([of, low, high]).toEqual(['F_t', 'F_low', 'F_high']);
  expect(valuesGiven(boltAnchorage, 'partial factors', { F_all: 4e3, n_x: 2, n_y: 2 }).F_low).toBe(1e3);
});
