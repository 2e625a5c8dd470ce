import { expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { eyeFootBolts } from '../../core/checks/eye-foot-bolts.ts';
import { eyeFootPlate } from '../../core/checks/eye-foot-plate.ts';
import { eyeFootWall } from '../../core/checks/eye-foot-wall.ts';
import { eyeTubeWall } from '../../core/checks/eye-tube-wall.ts';
import { fatigueEyeFoot } from '../../core/checks/fatigue-eye-foot.ts';
import { fatigueEyeFootBolts } from '../../core/checks/fatigue-eye-foot-bolts.ts';
import { fatigueEyeOnTube } from '../../core/checks/fatigue-eye-on-tube.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, missingFrom, reads } from './model-of.ts';

/** One pair of M16 8.8 (180.864 kN both), m = 35 mm, n = 40 mm, fy 355, effective length 190 mm. */
const pair = { n_p: 1, A_s: 157e-6, f_ub: 800e6, gamma_M2: 1.25, gamma_M0: 1, m: 0.035, n: 0.04, l_1: 0.19, l_2: 0.19, f_yf: 355e6 }; // prettier-ignore

it.each([
  [6, 69.38, 'F_1'],
  [10, 141.43, 'F_2'],
  [20, 180.86, 'F_3'],
] as const)('flange of %d mm: %f kN by %s (EN 1993-1-8, Table 6.2, worked by hand)', (t, kN, mode) => {
  const v = valuesGiven(eyeFootPlate, 'partial factors', { ...pair, t_f: t / 1e3 });
  expect(v.F_T_Rd! / 1e3).toBeCloseTo(kN, 2);
  expect(v.F_T_Rd).toBe(v[mode]);
});

it('effective lengths of Table 6.4: end and inner rows, each by itself and as a group (by hand)', () => {
  const sizes = { m: 0.04, e: 0.05, e_1: 0.045, p_f: 0.08, n_p: 3 };
  const v = valuesGiven(eyeFootPlate, 'partial factors', sizes);
  const { PI: π, min } = Math;
  expect(v.l_cp_1! * 1e3).toBeCloseTo(2 * min(80 * π, 40 * π + 90) + 80 * π, 6);
  expect(v.l_cp_g! * 1e3).toBeCloseTo(2 * min(40 * π + 80, 90 + 80) + 160, 6);
  expect(v.l_nc_1! * 1e3).toBeCloseTo(2 * min(222.5, 111.25 + 45) + 222.5, 6);
  expect(v.l_nc_g! * 1e3).toBeCloseTo(2 * min(151.25, 85) + 80, 6);
  expect(v.l_2).toBe(v.l_nc_g);
  expect(v.l_1).toBe(v.l_2);
  // Pairs far apart yield each by itself, in circles.
  const far = valuesGiven(eyeFootPlate, 'partial factors', { ...sizes, p_f: 1, e_1: 1 });
  expect(far.l_1).toBe(far.l_cp_1! < far.l_nc_1! ? far.l_cp_1 : far.l_nc_1);
});

it('takes the moments of a leaning leg as pulls, and stays within its second opinions', () => {
  const base = { F_z: 60e3, F_l: 6e3, F_q: 2e3, h_e: 0.08, w_f: 0.12, t_e: 0.02, a_w: 0.005, e: 0.04, e_1: 0.04, p_f: 0.08, n_p: 2, t_f: 0.015, f_yf: 355e6, ...{ A_s: 157e-6, A_b: 201e-6, f_ub: 800e6, F_nt: 620e6 }, gamma_M0: 1, gamma_M2: 1.25, Omega_b: 1.67, Omega_J: 2 }; // prettier-ignore
  for (const safety of ['partial factors', 'allowable stress'] as const)
    for (const t_f of [0.006, 0.015, 0.04])
      for (const n_p of [2, 4]) {
        const v = valuesGiven(eyeFootPlate, safety, { ...base, t_f, n_p, gamma_R: safety === 'partial factors' ? 1 : 1.67 });
        // A row of n_p at p: the end pair takes M y/Σy², every pair of the flange is judged by it.
        const rows = Array.from({ length: n_p }, (_, i) => (i - (n_p - 1) / 2) * 0.08);
        const end = (6e3 * 0.08 * rows.at(-1)!) / rows.reduce((sum, y) => sum + y * y, 0);
        expect(v.N).toBeCloseTo(60e3 + n_p * end + (2 * 2e3 * 0.08) / 0.12, 6);
        expect(v.m! * 1e3).toBeCloseTo(60 - 10 - 0.8 * Math.SQRT2 * 5, 9);
        expect(v.F_T_Rd!).toBeGreaterThan(v.F_low!);
        expect(v.F_T_Rd!).toBeLessThanOrEqual(v.F_high! * (1 + 1e-12));
        const { t_f: _t, f_yf: _f, e_1: _e, gamma_M0: _0, Omega_b: _b, ...others } = base;
        const b = valuesGiven(eyeFootBolts, safety, { ...others, n_p, alpha_v: 0.6, F_nv: 372e6 });
        expect(b.F_v).toBeCloseTo(Math.hypot(6e3, 2e3) / (2 * n_p), 6);
        expect(b.u!).toBeGreaterThan(b.u_low!);
        expect(b.u!).toBeLessThan(b.u_high!);
      }
}); // prettier-ignore

const footPlate = { thickness: '20 mm', gauge: '90 mm', edge: '30 mm', pitch: '90 mm', end: '30 mm', pairs: 2, bolt: 'M16', class: '8.8' }; // prettier-ignore
const [plain, bolted] = [demoModel(), demoModel({ grid: { suspension: { eye: { footPlate } } } })];
const rowsOf = (check: typeof eyeFootPlate, model: typeof plain) => checkRows(check, model).rows.filter(({ place }) => /^S/.test(place)); // prettier-ignore

it('applies only where an eye stands on a bolted plate: a stem; there the wall is judged under its bolts and fatigue cannot be judged', () => {
  for (const check of [eyeFootPlate, eyeFootBolts, eyeFootWall]) {
    expect(rowsOf(check, plain).map(({ reason }) => reason)).toContainEqual(expect.stringMatching(/no bolted plate with a stem/)); // prettier-ignore
    expect(rowsOf(check, bolted).some(({ utilisation }) => utilisation !== null)).toBe(true);
  }
  expect(rowsOf(eyeTubeWall, bolted).every(({ verdict }) => verdict === 'not applicable')).toBe(true);
  expect(rowsOf(fatigueEyeOnTube, bolted).map(({ verdict }) => verdict)).toContain('cannot be judged');
  expect(reads(eyeFootPlate, 'n_p', bolted, 'S1')).toBe(2);
  expect(reads(eyeFootPlate, 't_f', bolted, 'S1')).toBeLessThanOrEqual(0.02);
  expect(reads(eyeFootBolts, 'f_ub', bolted, 'S1')).toBe(800e6);
});

it('weighs the plate of the foot: 150 × 150 × 20 mm at each eye', () => {
  const eyes = plain.document.grid.suspension.attachments.length;
  const each = 0.15 * 0.15 * 0.02 * 7850 * (1 + plain.document.mass.tolerance);
  expect(bolted.mass.total - plain.mass.total).toBeCloseTo(eyes * each, 1);
});

it('bolts in the weld of the eye cannot be judged', () => {
  const close = demoModel({ grid: { suspension: { eye: { footPlate: { ...footPlate, gauge: '20 mm' } } } } });
  expect(rowsOf(eyeFootPlate, close).map(({ reason }) => reason ?? '')).toContainEqual(expect.stringMatching(/larger gauge/)); // prettier-ignore
});

it('threads of a foot are judged in fatigue at both ends of the cycle, in category 50 with the size effect from 30 mm (EN 1993-1-9, Table 8.1, from memory)', () => {
  expect(rowsOf(fatigueEyeFootBolts, plain).map(({ reason }) => reason)).toContainEqual(expect.stringMatching(/its foot has no bolts/)); // prettier-ignore
  const own = rowsOf(fatigueEyeFootBolts, bolted).filter(({ verdict }) => verdict !== 'not applicable');
  expect(own.length).toBeGreaterThan(0);
  for (const { utilisation } of own) expect(utilisation).toBeGreaterThan(0);
  expect(reads(fatigueEyeFootBolts, 'sigma_C', bolted, 'S1')).toBe(50e6);
  expect(reads(fatigueEyeFootBolts, 't_d', bolted, 'S1')).toBe(0.016);
  expect(reads(fatigueEyeFootBolts, 't_ref', bolted, 'S1')).toBe(0.03);
  expect(reads(fatigueEyeFootBolts, 'A_s', bolted, 'S1')).toBeCloseTo(157e-6, 12);
  const four = { t_e: 0.02, a_w: 0, w_f: 0.1, e: 0.04, p_f: 0.1, n_p: 2, h_e: 0.1, A_s: 157e-6 };
  const { s_up, s_dn, sigma_r } = valuesGiven(fatigueEyeFootBolts, 'partial factors', { ...four, F_z_up: 10e3, F_l_up: 2e3, F_q_up: 1e3, F_z_dn: 5e3, F_l_dn: 1e3, F_q_dn: 500, z: 0 }); // prettier-ignore
  // By statics: 10 + 6 · 2 · 0.1/0.3 + 2 · 1 · 0.1/0.1 = 16 kN, a quarter a bolt, half as much again by prying: 6 kN on 157 mm².
  expect(s_up! / 1e6).toBeCloseTo(38.217, 3);
  expect(s_dn).toBeCloseTo(s_up! / 2, 3);
  expect(sigma_r).toBeCloseTo(1.5 * s_up!, 3);
  const stainless = demoModel({ grid: { suspension: { eye: { footPlate: { ...footPlate, class: 'A4-80' } } } } });
  expect(missingFrom(fatigueEyeFootBolts, 'sigma_C', stainless, 'S1')).toMatch(/Stainless steel A4/);
});

it('the flange leans at 1.25 m where its edge is farther (EN 1993-1-8, 6.2.4.1, n ≤ 1.25 m, from memory)', () => {
  const { m, n } = valuesGiven(fatigueEyeFootBolts, 'partial factors', { t_e: 0.02, a_w: 0, w_f: 0.1, e: 0.06 });
  expect(m).toBeCloseTo(0.04, 12);
  expect(n).toBeCloseTo(0.05, 12);
});

it('threads of a foot read what the document says of cycles, slams and protection, and the pulls that the eye itself feels', () => {
  const apart = [{ kind: 'slam', range: '240 kN', cycles: 500, source: 'invented' }];
  const eye = { grid: { suspension: { eye: { footPlate } } } };
  const model = demoModel(eye, { fatigue: { apart }, protection: { cathodic: true } });
  const read = (symbol: string) => reads(fatigueEyeFootBolts, symbol, model, 'S1');
  expect(['n_eq', 'n_s', 'k_s', 'DFF'].map(read)).toEqual([4e7, 500, 2, 10]);
  // Curve G, the one of category 50, under protection: 10.998 with slope 3 and 14.330 with slope 5 (DNV-RP-C203, Table 2-2).
  const knee = 10 ** ((14.33 - 10.998) / 2);
  expect(read('S_k') / 1e6).toBeCloseTo(knee, 6);
  expect(read('N_k') / 10 ** (10.998 - 3 * Math.log10(knee))).toBeCloseTo(1, 9);
  expect(['m_1', 'm_2', 'k_x'].map(read)).toEqual([3, 5, 0.25]);
  expect(['e', 'p_f', 'w_f', 'n_p'].map(read)).toEqual([0.03, 0.09, 0.09, 2]);
  for (const symbol of ['F_z_up', 'F_z_dn', 'F_l_up', 'F_l_dn', 'F_q_up', 'F_q_dn', 'z', 'h_e', 't_e'])
    expect([symbol, read(symbol)]).toEqual([symbol, reads(fatigueEyeFoot, symbol, model, 'S1')]);
  const { rows, findings } = checkRows(fatigueEyeFootBolts, demoModel(eye));
  expect(findings).toEqual([]);
  for (const { verdict, capacity } of rows) if (verdict !== 'not applicable') expect(capacity).toBeCloseTo(0.1, 12);
});

it('an eye is at rest where the force of the water equals the least weight in water (by equilibrium: z · 60 kN), in mid-cycle where the force holds the weight', () => {
  const model = demoModel({ loads: { service: { includes: ['inertia', 'drag'] } } });
  const z = reads(fatigueEyeFoot, 'z', model, 'S1');
  expect(z * 60e3).toBeCloseTo(model.mass.least.water.weight, 6);
  expect(model.mass.least.water.weight).toBeGreaterThan(0);
  expect(reads(fatigueEyeFoot, 'z', plain, 'S1')).toBe(0);
});
