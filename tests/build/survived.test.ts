import { expect, it } from 'vitest';
import { mutantsOf } from '../../build/mutate/mutants.ts';
import { mutationText } from '../../build/mutate/mutation-text.ts';
import { survived } from '../../build/mutate/survived.ts';
import { missing, type Check, type Input, type Reading } from '../../core/checks/check.ts';

const reading = (value: Reading): Input => ({ unit: 'kN', meaning: '', from: 'invented', read: () => value });
const check: Check = {
  id: 'invented',
  title: 'Invented',
  limitState: 'strength',
  source: [{ document: 'invented' }],
  places: () => ['A1'],
  applies: () => true,
  inputs: { F: reading(missing('the force')), G: reading(0), H: reading(2) },
  steps: {},
  demand: 'F',
  capacity: 'G',
  second: { title: 'none', source: [{ document: 'invented' }], steps: [], of: 'F', low: 'F' },
  cautions: [],
};

it('counts how often an input is read, and how often its slip changes the answer: never where it is missing or zero', () => {
  for (const [symbol, changed] of [
    ['F', 0],
    ['G', 0],
    ['H', 1],
  ] as const) {
    const mutant = mutantsOf([check]).find(({ what }) => what.startsWith(`input ${symbol}: read in a unit`))!;
    const undo = mutant.apply();
    (check.inputs[symbol]!.read as () => unknown)();
    undo();
    expect(mutant.readings, symbol).toEqual({ asked: 1, changed });
  }
});

it('counts a slip in what is never a number apart, and says so; one that no test notices survives', () => {
  const slip = (what: string, killedBy: string | undefined, neverANumber: boolean) => ({
    checks: ['invented'],
    ...{ what, killedBy, neverANumber },
  });
  const results = [slip('a', 'a test', false), slip('b', undefined, true), slip('c', undefined, false)];
  expect(results.map(survived)).toEqual([false, false, true]);
  const text = mutationText({ results, broken: [] });
  expect(text).toMatch(/3 slips, 1 not noticed, 1 in what is never a number/);
  expect(text).toMatch(/\n {4}c\n {4}\(never a number other than zero\) b\n/);
  expect(text).toMatch(/3 slips tried, 1 not noticed, 1 in inputs that are never a number/);
});
