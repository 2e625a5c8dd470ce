import { expect, it } from 'vitest';
import { weldLength } from '../../core/checks/weld-length.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { welded } from './welded.ts';

const l_38 = 0.038;

it.each([
  [3, 6, 30],
  [5, 6, 30],
  [6, 6, 36],
  [5, 8, 40],
])(
  'asks for the larger of 30 mm and so many throats: a = %d mm, %d of them, %d mm (EN 1993-1-8, 4.5.1(2); eight on aluminium, EN 1999-1-1, 8.6.3.3, from memory)',
  (a, k_l, l) => {
    const { l_min, l_eff, l_low, l_high } = valuesGiven(weldLength, 'partial factors', {
      l_0: 0.1,
      a_0: a / 1e3,
      k_l,
      l_30: reads(weldLength, 'l_30', demoModel(welded()), 'A1'),
      l_38,
    });
    expect(l_min! * 1e3).toBeCloseTo(l, 9);
    expect(l_eff! * 1e3).toBeCloseTo(100 - 2 * a, 9);
    expect([l_low! <= l_min!, l_min! <= l_high!]).toEqual([true, true]);
  },
);

it.each([
  [6, 38],
  [8, 45.25],
])('asks for the larger of 38 mm and 4 legs: a = %d mm, %d mm (AISC 360, J2.2b)', (a, l) => {
  const { l_min, l_eff, l_low, l_high } = valuesGiven(weldLength, 'allowable stress', {
    l_0: 0.1,
    a_0: a / 1e3,
    l_38: reads(weldLength, 'l_38', demoModel(welded()), 'A1'),
  });
  expect(l_min! * 1e3).toBeCloseTo(l, 2);
  expect(l_eff).toBe(0.1);
  expect([l_low! <= l_min! + 1e-12, l_min! <= l_high!]).toEqual([true, true]);
});

it('reads the shortest run: a side, or the run of an intermittent weld', () => {
  expect([weldLength.demand, weldLength.capacity]).toEqual(['l_min', 'l_eff']);
  const model = demoModel(welded());
  expect(reads(weldLength, 'l_0', model, 'A1')).toBeCloseTo(1.07, 9);
  expect(
    reads(weldLength, 'l_0', demoModel(welded({ pattern: 'intermittent', run: '40 mm', gap: '80 mm' })), 'A1'),
  ).toBeCloseTo(0.04, 12);
  expect(weldLength.applies(model, 'A1', situationOf(model))).toBe(true);
  expect(weldLength.applies(demoModel(), 'A1', situationOf(model))).toMatch(/bolted/);
});

it('is bounded by four legs and by the sum of both lengths of a rule: a = 5 mm, 28.28 and 78 mm', () => {
  const { l_low, l_high } = valuesGiven(weldLength, 'partial factors', { a_0: 0.005, l_38 });
  expect([l_low! * 1e3, l_high! * 1e3]).toEqual([expect.closeTo(28.28, 2), expect.closeTo(78, 9)]);
  expect(reads(weldLength, 'a_0', demoModel(welded()), 'A1')).toBe(0.004);
});
