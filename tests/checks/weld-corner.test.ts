import { describe, expect, it } from 'vitest';
import type { Check } from '../../core/checks/check.ts';
import { checkRows, valuesAt } from '../../core/checks/evaluate-check.ts';
import { fatigueWeldCorner } from '../../core/checks/fatigue-weld-corner.ts';
import { fatigueWeldRoot } from '../../core/checks/fatigue-weld-root.ts';
import { weldCorner } from '../../core/checks/weld-corner.ts';
import { weldDirectional } from '../../core/checks/weld-directional.ts';
import { weldFlare } from '../../core/checks/weld-flare.ts';
import { weldGroupInPlane } from '../../core/checks/weld-group-in-plane.ts';
import type { Model } from '../../core/model.ts';
import { modelOf } from '../../core/appraise.ts';
import { bySolution } from '../../core/checks/by-solution.ts';
import type { Situation } from '../../core/loads/situation.ts';
import { solvedAlike } from './solved-alike.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, missingFrom, reads, situationOf } from './model-of.ts';
import { welded } from './welded.ts';

function values(check: Check, model: Model, place: string): Readonly<Record<string, number>> {
  const found = valuesAt(check, model, place, situationOf(model));
  if ('missing' in found) throw new Error(found.missing);
  return found.all;
}

const square = { a: 0.5, b: 0.5, t: 0.006, E: 210e9, nu: 0.3, p: 1e4, k_r: 1, h_x: 1, h_y: 1 };
const throat = { R: 0.016, s: 0.008, a_0: 0.006, a_t: 0, k_f: 5 / 16, c_w: 0.0005, g_5: 0.005 };
const at = (change: Record<string, number>, safety: 'partial factors' | 'allowable stress' = 'partial factors') =>
  valuesGiven(weldCorner, safety, { ...square, ...throat, ...change });

describe('force on a weld that carries the edge by itself', () => {
  it('square of 0.5 m: edge force 0.420 q a, edge moment 0.0513 q a² in the weld (T&WK, Tables 8 and 35)', () => {
    const { V_hinged, M_held, f_z, m_r, e_r } = at({});
    expect(V_hinged! / 5e3).toBeCloseTo(0.42, 3);
    expect(M_held! / 2500).toBeCloseTo(0.0513, 4);
    expect(f_z).toBeCloseTo(Math.max(V_hinged!, at({}).V_held!, at({}).f_c!), 9);
    expect(m_r).toBeCloseTo(f_z! * e_r! + M_held!, 9);
  });

  it('a corner is held by 0.065 q a² over a thickness along both edges (T&WK, Table 8; spread derived by hand)', () => {
    expect(at({}).f_c! / ((0.065 * 1e4 * 0.25) / 0.012)).toBeCloseTo(1, 2);
    expect(at({ R_c: -1e3, V_e: 1e3 }).f_z).toBeCloseTo(1e3 / 0.012, 6);
    expect(at({ h_y: 0 }).f_c).toBe(0);
  });

  it('strip of 0.5 m, throat 4 mm: p L/2 + 6 (p L/2 · a/√8 + p L²/12)/a = 320.3 N/mm (beam tables, by hand)', () => {
    expect(at({ h_y: 0, a_w: 0.004, N_pull: 0 }).f_w! / 1e3).toBeCloseTo(320.3, 1);
    for (const symbol of ['f_z', 'f_h', 'm_r'])
      expect(at({ k_r: 3, a_w: 0.004 })[symbol]! / at({ a_w: 0.004 })[symbol]!).toBeCloseTo(3, 9);
  });

  it('carries 241.2 MPa on the throat left, S355; by AISC 360 0.3 F_EXX, or 0.3 F_u and 0.359 F_y of the thinner part', () => {
    const { a_e, a_w, f_Rd } = at({ f_u: 470e6, beta_w: 0.9, gamma_M2: 1.25 });
    expect(a_e! * 1e3).toBeCloseTo(6 - 2.1436 / Math.SQRT2, 4);
    expect(a_w! * 1e3).toBeCloseTo(3.984, 3);
    expect(f_Rd! / a_w! / 1e6).toBeCloseTo(241.2, 1);
    const us = { F_EXX: 482e6, f_u: 450e6, f_yb: 345e6, Omega_J: 2, Omega_v: 1.67 };
    expect(at({ ...us, t_b: 0.02 }, 'allowable stress').f_Rd! / a_w! / 1e6).toBeCloseTo(0.3 * 482, 6);
    expect(at({ ...us, t_b: 0.002 }, 'allowable stress').f_Rd! / 2e3).toBeCloseTo((0.6 * 345) / 1.67, 6);
    expect(at({ ...us, f_yb: 450e6, t_b: 0.002 }, 'allowable stress').f_Rd! / 2e3).toBeCloseTo(0.3 * 450, 6);
  });

  it('stays between its bounds', () => {
    for (const f_z of [0, 1e4, 3e5])
      for (const f_h of [0, 2e4, 4e5])
        for (const m_r of [0, 30, 500]) {
          const { f_w, f_low, f_high } = at({ f_z, f_h, m_r });
          expect(f_w!).toBeGreaterThanOrEqual(f_low! * (1 - 1e-12));
          expect(f_w!).toBeLessThanOrEqual(f_high! * (1 + 1e-12));
        }
    expect(at({ f_z: 3e4, f_h: 4e4, m_r: 0 }).f_low! / 1e4).toBeCloseTo(5 / Math.sqrt(3), 9);
    expect(at({ f_z: 0, f_h: 0, m_r: 10, a_w: 0.004 }).f_low! / 1e3).toBeCloseTo(15 / Math.sqrt(3), 9);
    expect(at({ f_z: 3e4, f_h: 4e4, m_r: 10, a_w: 0.004 }).f_high! / 1e3).toBeCloseTo(85 * Math.sqrt(3), 9);
  });
});

const R = demoModel(welded()).tubes.values().next().value!.section.outerRadius;
const lapped = (onMain: number, onCross: number, fixing: object = {}, ...more: unknown[]) =>
  demoModel(
    welded(
      { throat: '6 mm', ...fixing },
      { overlap: { onMain: `${onMain * 1e3} mm`, onCross: `${onCross * 1e3} mm` } },
    ),
    ...more,
  );

describe('in a document', () => {
  it('judges a panel whose edges end on corners, in place of the weld on flats; a mixed panel by both', () => {
    const near = lapped(0.8 * R, 0.8 * R);
    const up = situationOf(near, 'service-up');
    expect(weldCorner.applies(near, 'A1', up)).toBe(true);
    expect(weldDirectional.applies(near, 'A1', up)).toMatch(/every edge ends on the corner/);
    expect(fatigueWeldRoot.applies(near, 'A1', up)).toMatch(/every edge ends on the corner/);
    expect(reads(weldCorner, 's', near, 'A1')).toBeCloseTo(0.2 * R, 9);
    expect(reads(weldCorner, 'c_w', near, 'A1')).toBeCloseTo(0.0005, 12);
    expect(checkRows(weldCorner, near).rows.some(({ utilisation }) => utilisation! > 0)).toBe(true);
    const mixed = lapped(0.8 * R, 0.06);
    expect(weldCorner.applies(mixed, 'A1', up)).toBe(true);
    expect(weldDirectional.applies(mixed, 'A1', up)).toBe(true);
    expect(reads(weldDirectional, 'l_f', mixed, 'A1')).toBeCloseTo(0.06 - R, 9);
    const flat = demoModel(welded());
    expect(weldCorner.applies(flat, 'A1', up)).toMatch(/on the flats/);
    expect(weldCorner.applies(demoModel(), 'A1', up)).toMatch(/bolted/);
    expect(missingFrom(weldCorner, 'R', flat, 'A1')).toMatch(/edge of the panel on the corner/);
  });

  it('carries as much pressed on as pulled off', () => {
    const near = lapped(0.8 * R, 0.8 * R);
    const [up, down] = ['service-up', 'service-down'].map((id) =>
      valuesAt(weldCorner, near, 'A1', situationOf(near, id)),
    );
    for (const values of [up!, down!]) expect('missing' in values ? values.missing : values.all.f_z! > 0 && values.all.m_r! > 0).toBe(true); // prettier-ignore
  });

  it('cannot be judged at a sharp angle or a wide gap, unless a section through a trial weld shows the throat', () => {
    const reasons = (model: ReturnType<typeof lapped>) => checkRows(weldCorner, model).rows.map(({ reason }) => reason);
    expect(reasons(lapped(0.4 * R, 0.4 * R))).toContainEqual(expect.stringMatching(/less than 60°/));
    expect(reasons(lapped(0.02 * R, 0.02 * R))).toContainEqual(expect.stringMatching(/more than 5 mm off/));
    expect(reasons(lapped(0.8 * R, 0.8 * R, { throat: '0.6 mm' }))).toContainEqual(expect.stringMatching(/leave no throat/));
    const shown = lapped(0.4 * R, 0.4 * R, { cornerThroat: { value: '4 mm', source: 'trial weld 3' } });
    expect(values(weldCorner, shown, 'A1')['a_e']).toBeCloseTo(0.004, 12);
    expect(checkRows(weldCorner, shown).rows.some(({ utilisation }) => utilisation! > 0)).toBe(true);
    const far = lapped(0.02 * R, 0.02 * R, { cornerThroat: { value: '4 mm', source: 'trial weld 3' } });
    expect(checkRows(weldCorner, far).rows.some(({ utilisation }) => utilisation! > 0)).toBe(true);
    expect(values(weldFlare, shown, 'A1')['a_e']).toBeCloseTo(0.004, 12);
  }); // prettier-ignore

  it('takes the smaller radius with the larger distance, and says where they do not belong together', () => {
    const cold = { grid: { crossTubes: { section: 'SHS 150x150x8 cold' } } };
    const other = (onCross: number) => lapped(0.8 * R, onCross, {}, cold);
    expect([R, reads(weldCorner, 'R', other(0.015), 'A1'), reads(weldCorner, 's', other(0.015), 'A1')]).toEqual([
      0.012,
      0.012,
      expect.closeTo(0.005, 12),
    ]);
    expect(missingFrom(weldCorner, 's', other(0.007), 'A1')).toMatch(/farther from the flat than the smaller/);
  });

  it('lifted with a side lost, the group has the throat that the corner leaves', () => {
    const near = lapped(0.8 * R, 0.8 * R);
    const { a_e } = values(weldFlare, near, 'A1');
    expect(reads(weldGroupInPlane, 'a_w', near, 'A1')).toBeCloseTo(a_e! - 0.0005, 12);
    expect(reads(weldGroupInPlane, 'a_w', demoModel(welded()), 'A1')).toBeCloseTo(0.0035, 12);
    expect(missingFrom(weldGroupInPlane, 'a_w', lapped(0.02 * R, 0.02 * R), 'A1')).toMatch(/more than 5 mm/);
    expect(missingFrom(weldGroupInPlane, 'a_w', lapped(0.8 * R, 0.8 * R, { throat: '0.6 mm' }), 'A1')).toMatch(
      /a throat/,
    );
  });

  it('passes a thick throat, fails a thin one or one that corrodes away, within its bounds', () => {
    const light = { loads: { service: { force: '3 kN' } } };
    const verdicts = (fixing: object, ...more: unknown[]) => checkRows(weldCorner, lapped(0.8 * R, 0.8 * R, fixing, ...more)).rows.map(({ verdict }) => verdict); // prettier-ignore
    expect(verdicts({ throat: '8 mm' }, light)).toContain('passes');
    expect(verdicts({ throat: '8 mm' }, light)).not.toContain('fails');
    expect(verdicts({ throat: '1.5 mm' })).toContain('fails');
    expect(verdicts({ throat: '0.4 mm' })).toContain('fails');
    expect(checkRows(weldCorner, lapped(0.8 * R, 0.8 * R)).findings).toEqual([]);
    expect(checkRows(weldFlare, lapped(0.8 * R, 0.8 * R)).findings).toEqual([]);
  });

  it('reaches 5/16 R, or 5/8 R with a gas-shielded wire (AISC 360, Table J2.2, from memory)', () => {
    const of = (process: string) => reads(weldCorner, 'k_f', lapped(0.8 * R, 0.8 * R, {}, { grid: { flareWeld: { process } } }), 'A1'); // prettier-ignore
    expect([reads(weldCorner, 'k_f', lapped(0.8 * R, 0.8 * R), 'A1'), of('gas-shielded wire')]).toEqual([
      5 / 16,
      5 / 8,
    ]);
  });

  it('half way over the radius the faces meet at 60°: there it can be judged, a little before it cannot', () => {
    const judged = (part: number) => checkRows(weldCorner, lapped(part * R, part * R)).rows.some(({ utilisation }) => utilisation !== null); // prettier-ignore
    expect([judged(0.51), judged(0.49)]).toEqual([true, false]);
  });

  it('by the whole plate’s solution: its pull, what lies across and its moment on the same throat', () => {
    const near = lapped(0.8 * R, 0.8 * R, {}, { forces: { from: 'hand and solver' } });
    const solved = modelOf(near.document, solvedAlike(near));
    const found = valuesAt(bySolution(weldCorner), solved, 'A1', situationOf(solved, 'service-up'));
    if ('missing' in found) throw new Error(found.missing);
    const { f_w, a_w } = found.all;
    const [e, F] = [a_w! / (2 * Math.SQRT2), Math.hypot(2e4, 1e4, 1e4)];
    expect(f_w! / (F + (6 * (2e4 * e + 10)) / a_w!)).toBeCloseTo(1, 9);
  });

  it.each([
    ['free to corrode', false, 30, (x: number) => (x / 10 ** (10.493 / 3)) ** 3],
    ['protected', true, 4, (x: number) => (x ** 3 / 10 ** 10.493 > 1e-7 ? x ** 3 / 10 ** 10.57 : x ** 5 / 10 ** 13.617)],
  ] as const)('worked by hand from both ends of the cycle, %s (DNV-RP-C203, curve W3)', (_, cathodic, thickness, damage) => {
    const near = demoModel(
      welded({ throat: '6 mm' }, { thickness: `${thickness} mm`, overlap: { onMain: `${0.8e3 * R} mm`, onCross: `${0.8e3 * R} mm` } }),
      { protection: { cathodic } },
    );
    const end = (situation: Situation): number => {
      const at = valuesAt(weldCorner, near, 'A1', situation);
      if ('missing' in at) throw new Error(at.missing);
      const { f_z, f_h, m_r, a_w } = at.all as Readonly<Record<string, number>>;
      const square = (f_z! + f_h!) / (Math.SQRT2 * a_w!) + (6 * m_r!) / a_w! ** 2;
      return Math.hypot(square, (f_z! - f_h!) / (Math.SQRT2 * a_w!)) / 1e6;
    };
    const { up, down } = near.loads.swing;
    const range = (end(up) + end(down)) * (thickness > 25 ? (thickness / 25) ** 0.25 : 1);
    const all = values(fatigueWeldCorner, near, 'A1');
    expect(all['D']! / (4e7 * damage(range))).toBeCloseTo(1, 2);
    expect(all['D_lim']).toBe(0.1);
  }); // prettier-ignore

  it('lasts under a light swing, not under a heavy one, within its bounds', () => {
    const under = (force: string) => checkRows(fatigueWeldCorner, lapped(0.8 * R, 0.8 * R, {}, { loads: { service: { force } } })); // prettier-ignore
    expect(under('0.2 kN').rows.map(({ verdict }) => verdict)).toContain('passes');
    expect(under('20 kN').rows.map(({ verdict }) => verdict)).toContain('fails');
    for (const force of ['0.2 kN', '20 kN']) expect(under(force).findings).toEqual([]);
  });

  it('turns its whole stress round with every wave: category 36, the sum of both ends', () => {
    const near = lapped(0.8 * R, 0.8 * R);
    const all = values(fatigueWeldCorner, near, 'A1');
    expect(all['sigma_C']).toBe(36e6);
    expect(all['sigma_r']).toBeCloseTo(all['s_up']! + all['s_dn']!, 3);
    expect(all['a_w']).toBeCloseTo(values(weldFlare, near, 'A1')['a_e']! - 0.0005, 12);
    expect(fatigueWeldCorner.applies(demoModel(welded()), 'A1', situationOf(near))).toMatch(/on the flats/);
  });
});
