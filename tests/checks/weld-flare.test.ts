import { expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { fatigueWeldPlug } from '../../core/checks/fatigue-weld-plug.ts';
import { weldFlare } from '../../core/checks/weld-flare.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { welded } from './welded.ts';

const at = (l_a: number, k_f = 5 / 16) =>
  valuesGiven(weldFlare, 'partial factors', { R: 16, s: 16 - l_a, a_0: 6, a_t: 0, k_f, a_3: 3, g_5: 5 });

it('corner of 16 mm: 8 mm short of the flat the gap is 16 (1 - cos 30°) = 2.144 mm, a throat of 6 mm keeps 4.48 mm; at the tangent it has no gap and 5/16 R = 5 mm (AISC 360, Table J2.2, from memory; by hand)', () => {
  expect(at(8).g_e).toBeCloseTo(2.1436, 4);
  expect(at(8).a_e).toBeCloseTo(6 - 2.1436 / Math.SQRT2, 4);
  expect([at(16).g_e, at(16).a_e]).toEqual([0, 5]);
  expect(at(16, 5 / 8).a_e).toBe(6);
  expect(at(0).g_e).toBe(16);
  for (const lap of [4, 8, 12, 16])
    expect([at(lap).a_low! <= at(lap).a_e!, at(lap).a_e! <= at(lap).a_high!]).toEqual([true, true]);
});

it('is asked only where an edge ends on the corner; too far off it cannot be judged', () => {
  const lapped = (overlap: string, throat = '6 mm') =>
    demoModel(welded({ throat }, { overlap: { onMain: overlap, onCross: overlap } }));
  const flat = demoModel(welded());
  expect(weldFlare.applies(flat, 'A1', situationOf(flat))).toMatch(/on the flats/);
  const R = flat.tubes.get(flat.panels.get('A1')!.bearings[0]!.tube)!.section.outerRadius;
  const near = lapped(`${R * 0.8e3} mm`);
  expect(weldFlare.applies(near, 'A1', situationOf(near))).toBe(true);
  expect(reads(weldFlare, 's', near, 'A1')).toBeCloseTo(0.2 * R, 9);
  expect(reads(weldFlare, 'R', near, 'A1')).toBe(R);
  expect(checkRows(weldFlare, near).rows.map(({ verdict }) => verdict)).toContain('passes');
  expect(checkRows(weldFlare, lapped(`${R * 0.8e3} mm`, '2 mm')).rows.map(({ verdict }) => verdict)).toContain('fails');
  expect(checkRows(weldFlare, lapped('1 mm')).rows.map(({ reason }) => reason ?? '')).toContainEqual(expect.stringMatching(/more than 5 mm off/)); // prettier-ignore
}); // prettier-ignore

it('panel at a plug: category E of AISC 360, (11e8 · 329 / 2e6)^(1/3) = 56.6 MPa at two million (from memory), between the plugs', () => {
  expect((11e8 * 329) / 2e6).toBeCloseTo(56.6 ** 3, -3);
  const plugs = { diameter: '18 mm', pitch: '100 mm', edgeDistance: '35 mm' };
  const model = demoModel(welded({ plugs }));
  expect(reads(fatigueWeldPlug, 'sigma_C', model, 'A1')).toBe(56e6);
  expect(valuesGiven(fatigueWeldPlug, 'partial factors', { b_up: 80, p_near: 0.1, d_p: 0.02 }).s_up).toBeCloseTo(
    100,
    9,
  );
  const plain = demoModel(welded());
  expect(fatigueWeldPlug.applies(plain, 'A1', situationOf(plain))).toMatch(/no plug welds/);
  expect(checkRows(fatigueWeldPlug, model).rows.some(({ utilisation }) => utilisation !== null)).toBe(true);
});
