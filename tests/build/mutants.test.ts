import { expect, it } from 'vitest';
import { mutantsOf } from '../../build/mutate/mutants.ts';
import type { Check, Input } from '../../core/checks/check.ts';
import { compiled } from '../../core/checks/generated.ts';
import type { Situation } from '../../core/loads/situation.ts';

const input = (unit: string, read: Input['read'], meaning = ''): Input => ({ unit, meaning, from: 'invented', read });
const step = {
  symbol: 'R',
  expression: 'held > 0 ? 2 * min(A, B) * f / gamma_M0 : A * f - B * f',
  unit: 'N',
  meaning: '',
};

/** An invented check with something of each kind that can slip. */
const invented = (): Check => ({
  id: 'invented',
  title: 'Invented',
  limitState: 'strength',
  source: [{ document: 'invented' }],
  places: () => ['A1'],
  applies: (_model, _place, { direction }) => direction === 'up' || 'pressed on',
  rule: () => undefined,
  inputs: {
    F: input('kN', (_model, _place, { force }) => force),
    A: input('mm^2', () => 2e-4),
    B: input('mm^2', () => 1e-4),
    f: input('MPa', () => 2e8),
    held: input('1', () => 1, 'held (1) or not (0)'),
    gamma_M0: input('1', () => 1.1),
  },
  steps: { 'partial factors': [{ ...step }] },
  demand: 'F',
  capacity: 'R',
  range: [{ holds: 'A < 3 * B', otherwise: 'A is too large' }],
  second: { title: 'one bar', source: [{ document: 'invented' }], steps: [], of: 'R', low: 'R' },
  cautions: [],
});

it('makes every kind of slip: sign, factor, unit, flag, direction, min and max, < and >, range, rule, demand and capacity', () => {
  const what = mutantsOf([invented()]).map((mutant) => mutant.what);
  for (const part of [
    'demand and capacity swapped',
    'high and low swapped',
    'applies nowhere',
    'applies in the opposite direction',
    'rule broken everywhere',
    'input F: read in a unit a thousand times too large',
    'input F: read for the opposite direction',
    'input held: flag turned over',
    'input gamma_M0: read × 1.1',
    '2 × 1.1',
    'gamma_M0 left out',
    'min swapped',
    'sign in A * f - B * f flipped',
    'held > 0 turned over',
    'range “A < 3 * B” left out',
    'A < 3 * B turned over',
  ])
    expect(
      what.filter((text) => text.includes(part)),
      part,
    ).not.toEqual([]);
});

it('puts a slip in place, in the data and in what is computed, and takes it out again', () => {
  const check = invented();
  const [own] = check.steps['partial factors']!;
  const mutant = mutantsOf([check]).find(({ what }) => what.endsWith('gamma_M0 left out'))!;
  const undo = mutant.apply();
  expect(own).toMatchObject({ expression: expect.stringContaining('* f / 1 :') as string });
  const values = { F: 0, A: 2e-4, B: 1e-4, f: 2e8, held: 1, gamma_M0: 1.1 };
  expect(compiled['invented']!['partial factors']!(values, {})[0]).toBeCloseTo(2 * 1e-4 * 2e8, 6);
  undo();
  expect(own).toEqual(step);
  expect(compiled['invented']).toBeUndefined();
});

it('makes a slip in a shared input once, for all checks that have it', () => {
  const [one, other] = [invented(), invented()];
  const shared: Check = { ...other, id: 'other', inputs: { ...other.inputs, A: one.inputs['A']! } };
  const reads = mutantsOf([one, shared]).filter(({ what }) => what.startsWith('input A:'));
  expect(reads.map(({ checks }) => checks.map(({ id }) => id))).toEqual([['invented', 'other']]);
  const undo = reads[0]!.apply();
  for (const { inputs } of [one, shared])
    expect(inputs['A']!.read({} as never, 'A1', {} as Situation)).toBeCloseTo(0.2, 12);
  undo();
});
