import { expect, it } from 'vitest';
import { boltBearingPanel } from '../../core/checks/bolt-bearing-panel.ts';
import { boltBearingTube } from '../../core/checks/bolt-bearing-tube.ts';
import { boltBlockTear } from '../../core/checks/bolt-block-tear.ts';
import { boltEdgeDistance } from '../../core/checks/bolt-edge-distance.ts';
import { boltPullThrough } from '../../core/checks/bolt-pull-through.ts';
import { boltSlip } from '../../core/checks/bolt-slip.ts';
import { fatigueBoltHolePanel } from '../../core/checks/fatigue-bolt-hole-panel.ts';
import { allowable, fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const slotted = (hole: string, slot = 'along the edge', more = {}) =>
  modelWith(fixing({ hole, slot, edgeDistance: '40 mm', ...more }));
const service = situationOf(modelWith(), 'service', 'up');
const kinds = ['normal', 'oversize', 'short slot', 'long slot'];

it('EN 1993-1-8, Table 3.6 (from memory): k_s 1, 0.85; slots across the force 0.85 and 0.70, along it 0.76 and 0.63', () => {
  const read = (slot: string) => kinds.map((hole) => readOf(boltSlip, 'k_s', slotted(hole, slot), 'A1', service));
  // The panel pulls square to its edge: a slot along the edge lies across the pull.
  expect(read('along the edge')).toEqual([1, 0.85, 0.85, 0.7]);
  expect(read('across the edge')).toEqual([1, 0.85, 0.76, 0.63]);
});

it('AISC 360, J3.8: safety factors of 1.50, 1.76 and 2.14 by hole', () => {
  const factor = (hole: string, slot: string) =>
    1.5 / (readOf(boltSlip, 'k_s', allowable(slotted(hole, slot)), 'A1', service) as number);
  expect(kinds.map((hole) => factor(hole, 'along the edge').toFixed(2))).toEqual(['1.50', '1.76', '1.50', '2.14']);
  expect(kinds.map((hole) => factor(hole, 'across the edge').toFixed(2))).toEqual(['1.50', '1.76', '1.76', '2.14']);
});

it('takes the slot along the force where the whole plate is solved: shear may have any direction there', () => {
  const { k_s } = boltSlip.solved!.inputs;
  expect(k_s!.read(slotted('long slot'), 'A1', service)).toBe(0.63);
  expect(k_s!.read(slotted('short slot'), 'A1', service)).toBe(0.76);
});

it('the pull at a corner, half a pitch from either edge, is carried where the middle of the edge is', () => {
  for (const [across, along] of [
    [0.85, 0.76],
    [0.7, 0.63],
  ] as const)
    expect(Math.SQRT1_2 / along).toBeLessThan(1 / across);
});

it('EN 1993-1-8, Table 3.4: bearing 0.6 in a slot of the panel; the tube under it has a standard hole. AISC 360, J3.10: 1.0 l_c and 2.0 d in a long slot', () => {
  const of = (check: typeof boltBearingPanel, hole: string) => readOf(check, 'k_h', slotted(hole), 'A1', service);
  expect(kinds.map((hole) => of(boltBearingPanel, hole))).toEqual([1, 0.8, 0.6, 0.6]);
  expect(kinds.map((hole) => of(boltBearingTube, hole))).toEqual([1, 0.8, 1, 1]);
  const asd = kinds.map((hole) => readOf(boltBearingPanel, 'k_h', allowable(slotted(hole)), 'A1', service) as number);
  expect(asd.map((k_h) => k_h.toFixed(4))).toEqual(['1.0000', '1.0000', '1.0000', '0.8333']);
  const given = { d: 16, d_0: 18, e_1: 30, e_2: 1e3, p_1: 1e3, t: 8, f_u: 470, f_yp: 355, stainless: 0, Omega_J: 1 };
  // 1.0 · 21 · 8 · 470
  expect(valuesGiven(boltBearingPanel, 'allowable stress', { ...given, k_h: asd[3]! }).F_b_Rd).toBeCloseTo(78_960, 6);
  // 2.0 · 16 · 8 · 470
  expect(valuesGiven(boltBearingPanel, 'allowable stress', { ...given, e_1: 90, k_h: asd[3]! }).F_b_Rd).toBeCloseTo(120_320, 6); // prettier-ignore
});

it('EN 1993-1-8, Table 3.3 and Figure 3.1e: e_3 and e_4 of a slot are 1.5 d_0, from its middle line and from the centre of its round end', () => {
  const short = slotted('short slot');
  expect(readOf(boltEdgeDistance, 'k_e', short, 'A1', service)).toBe(1.5);
  expect(readOf(boltEdgeDistance, 'k_e', slotted('oversize'), 'A1', service)).toBe(1.2);
  expect(valuesGiven(boltEdgeDistance, 'partial factors', { d_0: 0.018, k_e: 1.5 }).e_req).toBeCloseTo(0.027, 12);
  // 40 mm less (16 - 13)/2: the bolts at the row's end.
  expect(readOf(boltEdgeDistance, 'e_1', short, 'A1', service)).toBeCloseTo(0.0385, 9);
  expect(readOf(boltEdgeDistance, 'e_1', allowable(short), 'A1', service)).toBeCloseTo(0.04, 9);
});

it.each([
  ['M16', 3, 12],
  ['M22', 3, 16.5],
  ['M24', 3, 18],
  ['M30', 5, 22.5],
])('AISC 360 Table J3.5M, %s: C_2 %f mm for a short slot, 0.75 d = %f mm for a long one', (bolt, short, long) => {
  const C_2 = (hole: string) =>
    readOf(boltEdgeDistance, 'C_2', slotted(hole, 'across the edge', { bolt, edgeDistance: '70 mm' }), 'A1', service);
  expect(C_2('short slot')).toBeCloseTo(short / 1e3, 9);
  expect(C_2('long slot')).toBeCloseTo(long / 1e3, 9);
});

it('a slot along its row takes its whole length out of the net section there', () => {
  const d_0 = (slot: string) => readOf(boltBlockTear, 'd_0', slotted('short slot', slot), 'A1', service);
  expect([d_0('along the edge'), d_0('across the edge')]).toEqual([0.016, 0.013]);
});

it('a head pulls through a slot unless a washer covers it', () => {
  const read = (more: object) => readOf(boltPullThrough, 'd_m', slotted('long slot', 'along the edge', more), 'A1', service); // prettier-ignore
  expect(read({})).toMatch(/a washer that covers the slot of 30 mm: this one is 24 mm wide/);
  expect(read({ plateWasher: { width: '40 mm', thickness: '8 mm' } })).toBe(0.04);
  expect(readOf(boltPullThrough, 'd_m', slotted('short slot'), 'A1', service)).toBe(0.024);
});

it('under a load that turns round only a slip-resistant bolt holds in a slot (EN 1993-1-8, 2.6)', () => {
  const rule = (shear: string, hole: string) => boltSlip.rule!(slotted(hole, 'along the edge', { shear }), 'A1', service); // prettier-ignore
  expect(rule('clearance', 'long slot')).toMatch(/bolts in long slots under shear that reverses/);
  expect(rule('fitted', 'short slot')).toMatch(/called fitted, in short slots/);
  expect(rule('slip-resistant', 'long slot')).toBeUndefined();
});

it('no fatigue class is made up for a slot', () => {
  const category = readOf(fatigueBoltHolePanel, 'S_k', slotted('short slot'), 'A1', service);
  expect(category).toMatch(/a class of a short slot/);
});
