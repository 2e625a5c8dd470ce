import { expect, it } from 'vitest';
import { weldEdge } from '../../core/checks/weld-edge.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { welded } from './welded.ts';

it('leaves a leg of √2 throats on an edge as thick as itself (geometry; common practice, no source)', () => {
  const { z, z_max } = valuesGiven(weldEdge, 'partial factors', { a_0: 0.005, t_p: 0.008 });
  expect(z! * 1e3).toBeCloseTo(7.071, 3);
  expect(z_max).toBe(0.008);
});

it.each([
  [5.9, 5.9],
  [6, 4],
  [10, 8],
])('an edge of %d mm takes a leg of %d mm (AISC 360, J2.2b)', (t, z) => {
  const [t_6, t_2] = ['t_6', 't_2'].map((symbol) => reads(weldEdge, symbol, demoModel(welded()), 'A1')) as [
    number,
    number,
  ];
  const values = valuesGiven(weldEdge, 'allowable stress', { a_0: 0.004, t_p: t / 1e3, t_6, t_2 });
  expect(values.z_max! * 1e3).toBeCloseTo(z, 9);
  expect(values.z! * 1e3).toBeCloseTo(5.657, 3);
});

it('reads throat and thickness of welded panels', () => {
  expect([weldEdge.demand, weldEdge.capacity]).toEqual(['z', 'z_max']);
  const model = demoModel(welded());
  expect([reads(weldEdge, 'a_0', model, 'A1'), reads(weldEdge, 't_p', model, 'A1')]).toEqual([0.004, 0.01]);
  expect(weldEdge.applies(model, 'A1', situationOf(model))).toBe(true);
  expect(weldEdge.applies(demoModel(), 'A1', situationOf(model))).toMatch(/bolted/);
});

it('keeps within 1/8 in of the edge, twice the 1/16 in of the rule in inches (AISC 360, J2.2b): t less 1/16 in from 1/4 in up', () => {
  const t_8 = reads(weldEdge, 't_8', demoModel(welded()), 'A1') as number;
  expect(t_8 * 1e3).toBeCloseTo(3.175, 9);
  const { z_low: low, z_high: high } = valuesGiven(weldEdge, 'partial factors', { t_p: 0.01, t_8 });
  expect([low! * 1e3, high! * 1e3]).toEqual([expect.closeTo(6.825, 9), expect.closeTo(10, 9)]);
  for (let t_p = 0.003; t_p < 0.05; t_p += 0.0005)
    for (const [safety, given] of [
      ['partial factors', {}],
      ['allowable stress', { t_6: 0.006, t_2: 0.002 }],
    ] as const) {
      const { z_max, z_low, z_high } = valuesGiven(weldEdge, safety, { t_p, t_8, ...given });
      expect(z_max!).toBeGreaterThanOrEqual(z_low!);
      expect(z_max!).toBeLessThanOrEqual(z_high!);
      const inInches = t_p < 0.00635 ? t_p : t_p - 0.0015875;
      expect(inInches).toBeGreaterThanOrEqual(z_low!);
      expect(inInches).toBeLessThanOrEqual(z_high!);
    }
});
