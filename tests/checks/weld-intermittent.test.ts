import { expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { weldIntermittent } from '../../core/checks/weld-intermittent.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { welded } from './welded.ts';

it.each([
  [5, 1, 60],
  [20, 0.6, 150],
  [20, 2, 200],
])(
  'limits the gap in a part of %d mm, %d m wide, to %d mm: 12 t, b/4 or 200 mm (EN 1993-1-8, Figure 4.1, from memory)',
  (t, b_p, gap) => {
    const g_200 = reads(weldIntermittent, 'g_200', demoModel(welded()), 'A1');
    for (const safety of ['partial factors', 'allowable stress'] as const) {
      const { g_max, g_high } = valuesGiven(weldIntermittent, safety, { t_1: t / 1e3, b_p, g_200 });
      expect(g_max! * 1e3).toBeCloseTo(gap, 9);
      expect(g_max!).toBeLessThan(g_high!);
    }
  },
);

it('fails in sea water whatever its gaps, and does not ask a continuous weld', () => {
  const stitched = demoModel(welded({ pattern: 'intermittent', run: '50 mm', gap: '60 mm' }));
  const { rows } = checkRows(weldIntermittent, stitched);
  expect(rows.map(({ verdict }) => verdict)).toEqual(['fails', 'fails', 'fails', 'fails']);
  expect(rows[0]!.reason).toMatch(/crevices/);
  expect([rows[0]!.demand, rows[0]!.capacity]).toEqual([0.06, 12 * 0.008]);
  expect(reads(weldIntermittent, 'b_p', stitched, 'A1')).toBeCloseTo(1.07, 9);
  const model = demoModel(welded());
  expect(weldIntermittent.applies(model, 'A1', situationOf(model))).toMatch(/continuous/);
  expect(weldIntermittent.applies(demoModel(), 'A1', situationOf(model))).toMatch(/bolted/);
});

it('is looser, 16 thicknesses, for a part in tension (Figure 4.1)', () => {
  expect(valuesGiven(weldIntermittent, 'partial factors', { t_1: 0.01 }).g_high).toBeCloseTo(0.16, 12);
  const { low, of, high } = weldIntermittent.second;
  expect([low, of, high]).toEqual([undefined, 'g_max', 'g_high']);
});
