import { expect, it } from 'vitest';
import { boltAnchorage } from '../../core/checks/bolt-anchorage.ts';
import { fixing, modelWith, readOf, situationOf } from './bolt-model.ts';

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
