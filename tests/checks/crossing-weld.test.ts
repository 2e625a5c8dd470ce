import { expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { crossingWeld } from '../../core/checks/crossing-weld.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { crossingThroat } from '../../core/checks/crossing-throat.ts';

it('says for each stacked crossing, once, that no joint formula is published, and does not pass', () => {
  const { rows } = checkRows(crossingWeld, demoModel({ grid: { arrangement: 'stacked' } }));
  expect(rows).toHaveLength(12);
  for (const { verdict, reason } of rows)
    expect([verdict, reason]).toEqual([
      'cannot be judged',
      expect.stringMatching(/welded along its flanks has no published joint formula/),
    ]);
});

it('says so for flush tubes wider than the face, and leaves those as wide and narrower ones to their formulas', () => {
  const [wide] = checkRows(crossingWeld, demoModel({ grid: { mainTubes: { section: 'SHS 100x100x5 hot' } } })).rows;
  expect([wide!.verdict, wide!.reason]).toEqual(['cannot be judged', expect.stringMatching(/wider than the face/)]);
  expect(checkRows(crossingWeld, demoModel()).rows[0]!.verdict).toBe('not applicable');
  const narrow = demoModel({ grid: { crossTubes: { section: 'SHS 100x100x5 hot' } } });
  expect(checkRows(crossingWeld, narrow).rows[0]!.verdict).toBe('not applicable');
});

it('fails where the tubes cannot be welded to each other', () => {
  const mixed = demoModel({ grid: { arrangement: 'stacked', crossTubes: { material: '6082-T6 extruded' } } });
  expect(checkRows(crossingWeld, mixed).rows[0]).toMatchObject({
    verdict: 'fails',
    reason: expect.stringMatching(/cannot be welded to/),
  });
});

it('prints the weld by itself: two runs of 150 mm, a = 5 in S355, 361.8 kN; 211.5 kN allowable (EN 1993-1-8, 4.5.3.3; AISC 360 J2.4; worked by hand)', () => {
  const given = { f_u: 470e6, a_w: 0.005, l_w: 0.3 };
  const { F_Rd } = valuesGiven(crossingWeld, 'partial factors', { ...given, beta_w: 0.9, gamma_M2: 1.25 });
  expect(F_Rd! / 1e3).toBeCloseTo(241.2 * 5 * 0.3, 1);
  expect(valuesGiven(crossingWeld, 'allowable stress', { ...given, Omega_J: 2 }).F_Rd! / 1e3).toBeCloseTo(211.5, 9);
});

it('takes two runs over the width of the main tube, or the girth of a cross tube let in: 150×150×8, r_o 12 mm', () => {
  const kept = { protection: { lossPerFace: { tubeOutside: '0 mm', tubeInside: '0 mm' } } };
  const stacked = demoModel({ grid: { arrangement: 'stacked' } }, kept);
  expect(reads(crossingWeld, 'l_w', stacked, 'A/1', situationOf(stacked))).toBeCloseTo(0.3, 12);
  expect(reads(crossingWeld, 'l_w', demoModel(kept), 'A/1')).toBeCloseTo(0.6 - (8 - 2 * Math.PI) * 0.012, 12);
});

it('lies between 0.30 of the tensile strength on the throat (old allowable stress) and f_u/√3, for every β_w of EN 1993-1-8, Table 4.1', () => {
  const given = { f_u: 470e6, a_w: 0.005, l_w: 0.3 };
  for (const beta_w of [0.8, 0.85, 0.9, 1]) {
    const { F_Rd, F_low, F_high } = valuesGiven(crossingWeld, 'partial factors', { ...given, beta_w, gamma_M2: 1.25 });
    expect(F_low! / 1e3).toBeCloseTo(0.3 * 705, 9);
    expect(F_high! / 1e3).toBeCloseTo(705 / Math.sqrt(3), 9);
    expect([F_low! <= F_Rd!, F_Rd! <= F_high! * (1 + 1e-12)]).toEqual([true, true]);
  }
  const asd = valuesGiven(crossingWeld, 'allowable stress', { ...given, Omega_J: 2 });
  expect(asd.F_Rd! / asd.F_low!).toBeCloseTo(1, 9);
});

it('would hold a force, were one known, against the weld: 500 kN on 2 × 150 mm with a = 6 in S355, 1.15165 of 434.16 kN (worked by hand)', () => {
  const model = demoModel(
    { grid: { arrangement: 'stacked' } },
    { protection: { lossPerFace: { tubeOutside: '0 mm', tubeInside: '0 mm' } } },
  );
  const known = {
    ...crossingWeld,
    inputs: { ...crossingWeld.inputs, F: { ...crossingWeld.inputs.F!, read: () => 5e5 } },
  };
  const { rows, findings } = checkRows(known, model);
  expect([rows[0]!.verdict, findings]).toEqual(['fails', []]);
  expect(rows[0]!.utilisation).toBeCloseTo(1.15165, 4);
});

it('takes the weld from where the flush crossing takes it', () => {
  for (const symbol of ['a_w', 'f_u', 'beta_w'])
    expect(crossingWeld.inputs[symbol], symbol).toBe(crossingThroat.inputs[symbol]);
});
