import { expect, it } from 'vitest';
import { weldEndReturn } from '../../core/checks/weld-end-return.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { fabricationPack } from '../../core/fabrication/fabrication-pack.ts';
import { weldLengthOf } from '../../core/geometry/weld-length-of.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { welded } from './welded.ts';

it.each(['partial factors', 'allowable stress'] as const)(
  'two legs: 14.14 mm for a throat of 5 mm (EN 1993-1-8, 4.3.2.1(4); AISC 360, J2.2b; both from memory), %s',
  (safety) => {
    const { r_min, r_low, r_high } = valuesGiven(weldEndReturn, safety, { a_0: 0.005 });
    expect(r_min! * 1e3).toBeCloseTo(14.142, 3);
    expect([r_low! * 1e3, r_high! * 1e3]).toEqual([expect.closeTo(7.071, 3), expect.closeTo(28.284, 3)]);
  },
);

it('has nothing to say of a weld that closes on itself, and fails one that stops at a corner without a return', () => {
  const all = demoModel(welded());
  expect(weldEndReturn.applies(all, 'A1', situationOf(all))).toMatch(/closes on itself/);
  expect(weldEndReturn.applies(demoModel(), 'A1', situationOf(all))).toMatch(/bolted/);
  // Runs of an intermittent weld on four sides meet at the corners.
  const dashed = demoModel(welded({ pattern: 'intermittent', run: '40 mm', gap: '80 mm' }));
  expect(weldEndReturn.applies(dashed, 'A1', situationOf(all))).toMatch(/closes/);
  for (const model of [demoModel(welded({ pattern: 'two sides' })), demoModel(welded({}, { cornerNotch: '30 mm' }))]) {
    const [row] = checkRows(weldEndReturn, model).rows;
    expect([row!.verdict, row!.reason]).toEqual(['fails', expect.stringMatching(/starts or stops at a corner/)]);
  }
});

it('passes with two legs on the flat of the tube, cannot be judged where the return has nothing to lie on', () => {
  const row = (endReturn: string, design = {}) => checkRows(weldEndReturn, demoModel(welded({ pattern: 'two sides', endReturn }, design))).rows[0]!; // prettier-ignore
  expect(row('12 mm')).toMatchObject({ verdict: 'passes' });
  expect(row('11 mm')).toMatchObject({ verdict: 'fails' });
  expect(row('90 mm')).toMatchObject({ verdict: 'cannot be judged', reason: expect.stringMatching(/past the flat/) });
  const notched = demoModel(welded({ endReturn: '12 mm' }, { cornerNotch: '10 mm' }));
  expect(reads(weldEndReturn, 'l_r', notched, 'A1')).toBeCloseTo(0.01, 12);
});

it('draws four returns on a panel of two sides, square to their welds and inwards, counted in length, mass and the list', () => {
  const [plain, returned] = [{}, { endReturn: '20 mm' }].map((more) => demoModel(welded({ pattern: 'two sides', ...more }))); // prettier-ignore
  const panel = returned!.panels.get('A1')!;
  expect(panel.weldReturns).toHaveLength(4);
  for (const { side, edge, from, to, length } of panel.weldReturns) {
    expect(side.slice(0, 4)).not.toBe(edge.slice(0, 4));
    expect(Math.hypot(to[0] - from[0], to[1] - from[1])).toBeCloseTo(length, 12);
    const middle = { x: (panel.outline.x0 + panel.outline.x1) / 2, y: (panel.outline.y0 + panel.outline.y1) / 2 };
    expect(Math.hypot(to[0] - middle.x, to[1] - middle.y)).toBeLessThan(Math.hypot(from[0] - middle.x, from[1] - middle.y)); // prettier-ignore
  }
  expect(weldLengthOf(panel) - weldLengthOf(plain!.panels.get('A1')!)).toBeCloseTo(0.08, 12);
  const metal = (model: typeof plain) => model!.mass.parts.filter(({ kind }) => kind === 'welds').reduce((sum, { mass }) => sum + mass, 0); // prettier-ignore
  const panels = returned!.geometry.panels.length;
  expect(metal(returned) - metal(plain)).toBeCloseTo(panels * 0.08 * 0.004 ** 2 * panel.material.density, 9);
  const { files } = fabricationPack(returned!, { sheet: { width: 3, height: 1.5 }, bar: 12, gap: 0.01, kerf: 0.003 });
  const list = files
    .find(({ name }) => name === 'welds.csv')!
    .text.trim()
    .split('\r\n');
  expect(list[0]).toContain('returns round corners mm');
  for (const line of list.slice(1)) expect(line).toMatch(/,20 \+ 20$/);
});
