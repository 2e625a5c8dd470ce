import { expect, it } from 'vitest';
import { eyeWeldUltimate } from '../../core/checks/eye-weld-ultimate.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { weldGroupAcross } from '../../core/checks/weld-group-across.ts';
import { weldGroupInPlane } from '../../core/checks/weld-group-in-plane.ts';
import { weldGroupUltimate } from '../../core/checks/weld-group-ultimate.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { welded } from './welded.ts';

const round = demoModel(welded());
const groups = [weldGroupInPlane, weldGroupUltimate, weldGroupAcross];
const weight = { A_f: 4, t_0: 0.01, rho: 7850, g: 9.80665, k_dyn: 2, gamma_L: 1.35 };
const steel = { a_w: 0.004, f_u: 470e6, beta_w: 0.9, gamma_M2: 1.25 };
const us = { a_w: 0.004, f_u: 470e6, F_EXX: 482e6, f_yb: 355e6, t_b: 0.006, Omega_J: 2, Omega_v: 1.5 };
const square = { a_p: 2, b_p: 2, l_x: 2, l_y: 2, n_x: 1, n_y: 1, r_x: 2, r_y: 2 };

it('hangs the weight of the panel on three sides of a square: L = 6 m, J = 21.33 - 6/9 m³ by hand, against 964.8 N/mm (EN 1993-1-8, 4.5.3.3)', () => {
  const v = valuesGiven(weldGroupInPlane, 'partial factors', { ...square, ...weight, ...steel });
  expect(v.W).toBeCloseTo(1.35 * 2 * 7850 * 4 * 0.01 * 9.80665, 6);
  // Lost side beside the weight: centroid 1/3 m off the middle, J = Σ over the sides about it, farthest corner at (4/3, 1).
  const J = 2 * (8 / 12 + 2 / 9 + 2) + (8 / 12 + (2 * 4) / 9);
  const [turn, mean] = [1 / 3 / J, 1 / 6];
  expect(v.f_v! / v.W!).toBeCloseTo(Math.hypot(mean + (turn * 4) / 3, turn), 6);
  expect(v.f_Rd! / 1e3).toBeCloseTo(964.82, 1);
  expect(valuesGiven(weldGroupInPlane, 'allowable stress', { ...square, ...us }).f_Rd! / 1e3).toBeCloseTo(578.4, 1);
});

it('is worth more by the instantaneous centre than as an elastic group, and stays within its second opinions', () => {
  for (const [a_p, b_p] of [[1, 1], [1, 8], [8, 1]] as const)
    for (const [n_y, r] of [[0, 1], [1, 1], [4, 0.12]] as const) {
      const n_x = Math.max(n_y, 1);
      const sides = { a_p, b_p, l_x: a_p, l_y: n_y ? b_p : 0, n_x, n_y, r_x: r * a_p, r_y: n_y ? r * b_p : 0 };
      for (const safety of ['partial factors', 'allowable stress'] as const) {
        const given = { ...sides, ...weight, ...steel, ...us };
        const elastic = valuesGiven(weldGroupInPlane, safety, given);
        const ultimate = valuesGiven(weldGroupUltimate, safety, { ...given, k_theta: 0 });
        expect(elastic.f_v!).toBeGreaterThan(elastic.f_low!);
        expect(elastic.f_v!).toBeLessThanOrEqual(elastic.f_high! * (1 + 1e-12));
        expect(ultimate.P_Rd!).toBeGreaterThan(ultimate.P_low!);
        expect(ultimate.P_Rd!).toBeLessThan(ultimate.P_high!);
        if (n_y === 0) continue;
        const across = valuesGiven(weldGroupAcross, safety, { ...given, f_h: 0 });
        expect(across.f_w!).toBeGreaterThan(across.f_low!);
        expect(across.f_w!, `${a_p} ${b_p} ${n_y}`).toBeLessThan(across.f_high!);
      }
    }
}); // prettier-ignore

it('lifted flat, the weld opens at its root: 6.667 N/mm become 1 + 3/√2 times as much (moment of half a throat, by hand)', () => {
  const v = valuesGiven(weldGroupAcross, 'partial factors', { ...square, ...weight, ...steel, f_h: 0 });
  expect(v.f_w! / v.f_z!).toBeCloseTo(1 + 3 / Math.SQRT2, 9);
});

it('reads the runs of the panel: all round, two sides, intermittent', () => {
  const up = situationOf(round, 'service-up');
  const panel = round.panels.get('A1')!;
  const { x0, x1, y0, y1 } = panel.outline;
  const of = (model: typeof round, symbol: string) => reads(weldGroupInPlane, symbol, model, 'A1', up);
  expect([of(round, 'a_p'), of(round, 'b_p')]).toEqual([x1 - x0, y1 - y0]);
  expect([of(round, 'n_x'), of(round, 'n_y'), of(round, 'A_f')]).toEqual([1, 1, panel.area]);
  const two = demoModel(welded({ pattern: 'two sides' }));
  expect([of(two, 'n_x'), of(two, 'n_y')].sort()).toEqual([0, 1]);
  expect(weldGroupAcross.applies(two, 'A1', up)).toMatch(/prop the panel/);
  const stitched = demoModel(welded({ pattern: 'intermittent', run: '60 mm', gap: '90 mm' }));
  expect(of(stitched, 'r_x')).toBeCloseTo(0.06, 12);
  expect((of(stitched, 'n_x') as number) > 3).toBe(true);
  expect(of(stitched, 'l_x')).toBeCloseTo(of(round, 'l_x') as number, 12);
  for (const check of groups) {
    expect(check.applies(demoModel(), 'A1', up)).toMatch(/bolted/);
    expect(checkRows(check, round).rows.map(({ verdict }) => verdict)).toContain('passes');
    expect(check.rule!(demoModel(welded({ throat: '0.1 mm' })), 'A1', up)).toMatch(/whole throat/);
  }
});

it('eye: in its plane by the instantaneous centre, across it added; less than the elastic weld asks', () => {
  const eye = { t_e: 0.02, h_e: 0.1, l_0: 0.208, f_u: 430e6, beta_w: 0.85, gamma_M2: 1.25, k_theta: 0, Omega_J: 2, a_w: 0.004 };
  for (const safety of ['partial factors', 'allowable stress'] as const)
    for (const [F_z, F_l, F_q] of [[150e3, 100e3, 0], [50e3, 1e3, 5e3], [1, 90e3, 20e3]] as const) {
      const v = valuesGiven(eyeWeldUltimate, safety, { ...eye, F_z, F_l, F_q });
      expect(v.u!).toBeGreaterThan(v.u_low!);
      expect(v.u!).toBeLessThan(v.u_high!);
    }
  // 233.66 MPa on 4 mm, twice 200 mm: a pull square to the foot.
  const straight = valuesGiven(eyeWeldUltimate, 'partial factors', { ...eye, F_z: 373.85e3, F_l: 0, F_q: 0 });
  expect(straight.u).toBeCloseTo(1, 2); // at its rupture a weld across the force is 0.1 % past its largest force
  const across = valuesGiven(eyeWeldUltimate, 'partial factors', { ...eye, F_z: 1, F_l: 0, F_q: 10e3 });
  expect(across.f_q! / 1e3).toBeCloseTo(Math.hypot(10e3 * 0.1 / (0.02 * 0.2), 10e3 / 0.4) / 1e3, 6);
}); // prettier-ignore
