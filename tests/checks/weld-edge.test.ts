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
])('an edge of %d mm takes a leg of %d mm (AISC 360, J2.2b, from memory)', (t, z) => {
  const [t_6, t_2] = ['t_6', 't_2'].map((symbol) => reads(weldEdge, symbol, demoModel(welded()), 'A1')) as [
    number,
    number,
  ];
  const values = valuesGiven(weldEdge, 'allowable stress', { a_0: 0.004, t_p: t / 1e3, t_6, t_2 });
  expect(values.z_max! * 1e3).toBeCloseTo(z, 9);
  expect(values.z! * 1e3).toBeCloseTo(5.657, 3);
  expect([values.z_low! <= values.z_max!, values.z_max! <= values.z_high!]).toEqual([true, true]);
});

it('reads throat and thickness of welded panels', () => {
  const model = demoModel(welded());
  expect([reads(weldEdge, 'a_0', model, 'A1'), reads(weldEdge, 't_p', model, 'A1')]).toEqual([0.004, 0.01]);
  expect(weldEdge.applies(model, 'A1', situationOf(model))).toBe(true);
  expect(weldEdge.applies(demoModel(), 'A1', situationOf(model))).toMatch(/bolted/);
});

it('bounds the leg by half of the edge', () => {
  expect(valuesGiven(weldEdge, 'partial factors', { t_p: 0.01 }).z_low).toBe(0.005);
});
