import { expect, it } from 'vitest';
import { weldSize } from '../../core/checks/weld-size.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { welded } from './welded.ts';

const rows = Object.fromEntries(
  ['t_6', 't_13', 't_19', 'z_3', 'z_5', 'z_6', 'z_8', 'a_2', 'a_6'].map((symbol) => [
    symbol,
    reads(weldSize, symbol, demoModel(welded()), 'A1'),
  ]),
);

it('asks for a throat of 3 mm (EN 1993-1-8, 4.5.2(2))', () => {
  const a_3 = reads(weldSize, 'a_3', demoModel(welded()), 'A1');
  expect(valuesGiven(weldSize, 'partial factors', { t_p: 0.01, t_w: 0.008, a_3 }).a_min).toBe(0.003);
});

it.each([
  [6, 3],
  [6.1, 5],
  [13, 5],
  [13.1, 6],
  [19, 6],
  [19.1, 8],
])('asks for a part of %d mm for a leg of %d mm (AISC 360, Table J2.4)', (t, z) => {
  for (const [t_p, t_w] of [
    [t, 30],
    [30, t],
  ] as const) {
    const { z_min, a_min, a_low, a_high } = valuesGiven(weldSize, 'allowable stress', {
      t_p: t_p / 1e3,
      t_w: t_w / 1e3,
      ...rows,
    });
    expect(z_min! * 1e3).toBeCloseTo(z, 9);
    expect(a_min! * 1e3).toBeCloseTo(z / Math.SQRT2, 9);
    expect([a_low! <= a_min!, a_min! <= a_high!]).toEqual([true, true]);
  }
});

it('reads the throat as made and both thicknesses, once for each welded panel field', () => {
  const model = demoModel(welded());
  expect(reads(weldSize, 'a_0', model, 'A1')).toBe(0.004);
  expect(reads(weldSize, 't_p', model, 'A1')).toBe(0.01);
  expect(reads(weldSize, 't_w', model, 'A1')).toBe(0.008);
  expect(weldSize.once).toBe(true);
  expect([weldSize.demand, weldSize.capacity]).toEqual(['a_min', 'a_0']);
  expect(weldSize.places(model)).toEqual(['A1', 'A3', 'B1', 'B3']);
  expect(weldSize.applies(model, 'A1', situationOf(model))).toBe(true);
  expect(weldSize.applies(demoModel(), 'A1', situationOf(model))).toMatch(/bolted/);
});

it('holds the rows of its tables', () => {
  expect(Object.entries(rows).map(([symbol, value]) => [symbol, Number((value * 1e3).toFixed(9))])).toEqual([
    ...([
      ['t_6', 6],
      ['t_13', 13],
      ['t_19', 19],
      ['z_3', 3],
      ['z_5', 5],
      ['z_6', 6],
      ['z_8', 8],
      ['a_2', 2],
      ['a_6', 6],
    ] as const),
  ]);
});
