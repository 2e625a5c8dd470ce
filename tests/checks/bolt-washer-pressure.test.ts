import { expect, it } from 'vitest';
import { boltWasherPressure } from '../../core/checks/bolt-washer-pressure.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';

it('60 N·m on M12 with k = 0.1 is 50 kN; with 5 kN of pull 184.3 MPa under a washer of 24 mm over a hole of 14 mm (T = k d F, area of a ring: by hand)', () => {
  const v = valuesGiven(boltWasherPressure, 'partial factors', { T_t: 60, k_low: 0.1, d: 0.012, d_w: 0.024, d_0: 0.014, F_t: 5e3 }); // prettier-ignore
  expect(v.F_hi).toBeCloseTo(50e3, 6);
  expect(v.A_n! * 1e6).toBeCloseTo(298.45, 2);
  expect(v.p_w! / 1e6).toBeCloseTo(184.28, 1);
  expect([v.p_low! < v.p_w!, v.p_w! < v.p_high!]).toEqual([true, true]);
});

const soft = (longTerm: object, tightening: object = {}) =>
  demoModel({
    designs: {
      deck: {
        material: 'HDPE PE100 sheet',
        thickness: '20 mm',
        longTerm: { modulus: '200 MPa', strength: '8 MPa', duration: '10 yr', source: 'maker’s sheet', ...longTerm },
        fixing: { tightening: { torque: '10 N*m', k: { low: 0.14, high: 0.2, source: 'trial' }, ...tightening } },
      },
    },
  });

it('needs the user’s bearing stress with its source, and judges by it', () => {
  const reasons = checkRows(boltWasherPressure, soft({})).rows.map(({ reason }) => reason ?? '');
  expect(reasons).toContainEqual(expect.stringMatching(/bearing stress that .* bears under a washer/));
  const firm = soft({ bearing: '5 MPa' });
  expect(reads(boltWasherPressure, 'p_Rd', firm, 'A1', situationOf(firm))).toBe(5e6);
  expect(checkRows(boltWasherPressure, firm).rows.map(({ verdict }) => verdict)).toContain('fails');
  const steel = demoModel();
  expect(boltWasherPressure.applies(steel, 'A1', situationOf(steel))).toMatch(/panel is of metal/);
});
