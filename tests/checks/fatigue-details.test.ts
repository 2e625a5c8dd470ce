import { describe, expect, it } from 'vitest';
import type { Check } from '../../core/checks/check.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { fatigueBoltHolePanel } from '../../core/checks/fatigue-bolt-hole-panel.ts';
import { fatigueBoltHoleTube } from '../../core/checks/fatigue-bolt-hole-tube.ts';
import { fatigueBoltShear } from '../../core/checks/fatigue-bolt-shear.ts';
import { fatigueBoltTension } from '../../core/checks/fatigue-bolt-tension.ts';
import { fatigueCrossingRoot } from '../../core/checks/fatigue-crossing-root.ts';
import { fatigueCrossingToe } from '../../core/checks/fatigue-crossing-toe.ts';
import { fatigueEyeFoot } from '../../core/checks/fatigue-eye-foot.ts';
import { fatigueEyeHole } from '../../core/checks/fatigue-eye-hole.ts';
import { fatigueEyeOnTube } from '../../core/checks/fatigue-eye-on-tube.ts';
import { fatigueEyeRoot } from '../../core/checks/fatigue-eye-root.ts';
import { fatiguePlateEdge } from '../../core/checks/fatigue-plate-edge.ts';
import { fatigueWeldCorner } from '../../core/checks/fatigue-weld-corner.ts';
import { fatigueWeldEnd } from '../../core/checks/fatigue-weld-end.ts';
import { fatigueWeldIntermittent } from '../../core/checks/fatigue-weld-intermittent.ts';
import { fatigueWeldPlugShear } from '../../core/checks/fatigue-weld-plug-shear.ts';
import { fatigueWeldRoot } from '../../core/checks/fatigue-weld-root.ts';
import { fatigueWeldToe } from '../../core/checks/fatigue-weld-toe.ts';
import { checks } from '../../core/checks/index.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, missingFrom, reads } from './model-of.ts';
import { welded } from './welded.ts';

const MPa = 1e6;
const given = (check: Check, values: Readonly<Record<string, number>>) => valuesGiven(check, 'partial factors', values);

/** A detail free to corrode, category 36: N = 10^10.493 / S³ (DNV-RP-C203, Table 2-4); a thin part, no slams. */
const free36 = {
  sigma_C: 36 * MPa,
  S_k: (10 ** 10.493 / 1e7) ** (1 / 3) * MPa,
  N_k: 1e7,
  m_1: 3,
  m_2: 3,
  t_d: 0.01,
  t_ref: 0.025,
  k_x: 0.25,
  n_s: 0,
  k_s: 0,
  DFF: 10,
};

describe('from the stresses at both ends of the cycle to the damage, worked by hand', () => {
  it('two ranges of 20 and 10 MPa, 100,000 cycles, W3 free to corrode: n (20³ + 10³) / 10^10.493 = 0.02892', () => {
    const { sigma_r, sigma_2, D, D_lim } = given(fatigueWeldRoot, {
      ...free36,
      s_up: 20 * MPa,
      s_dn: 10 * MPa,
      z: 0,
      n_eq: 1e5,
    });
    expect([sigma_r, sigma_2]).toEqual([20 * MPa, 10 * MPa]);
    expect(D).toBeCloseTo((1e5 * 9000) / 10 ** 10.493, 10);
    expect(D).toBeCloseTo(0.02892, 5);
    expect(D_lim).toBe(0.1);
  });

  it('never at rest within the cycle: one range, the difference', () => {
    const { sigma_r, sigma_2 } = given(fatigueWeldRoot, { s_up: 5 * MPa, s_dn: 20 * MPa, z: 1.4 });
    expect([sigma_r, sigma_2]).toEqual([15 * MPa, 0]);
  });

  it('a stress that changes its sign: one range, the sum', () => {
    expect(given(fatigueWeldEnd, { s_up: 20 * MPa, s_dn: 10 * MPa, z: 0.3 }).sigma_r).toBe(30 * MPa);
    expect(given(fatigueWeldEnd, { s_up: 5 * MPa, s_dn: 10 * MPa, z: 3 }).sigma_r).toBe(5 * MPa);
  });

  it('a part of 50 mm: its range is larger by 2^0.25 = 1.189 (DNV-RP-C203, 2.4.3)', () => {
    expect(given(fatigueWeldRoot, { ...free36, t_d: 0.05 }).k_t).toBeCloseTo(1.1892, 4);
    expect(given(fatigueWeldRoot, free36).k_t).toBe(1);
  });

  it('slams and snaps are counted apart: 200 of twice the range beside 100,000 waves of 20 MPa', () => {
    const { D_w, D_s, D } = given(fatigueWeldEnd, {
      ...free36,
      s_up: 20 * MPa,
      s_dn: 0,
      z: 0,
      n_eq: 1e5,
      n_s: 200,
      k_s: 2,
    });
    expect(D_s).toBeCloseTo((200 * 40 ** 3) / 10 ** 10.493, 12);
    expect(D).toBe(D_w! + D_s!);
  });

  it('under protection it bends: 10 MPa of W3 does 10⁵ / 10^13.617 of damage a cycle (Table 2-2)', () => {
    const knee = (13.617 - 10.57) / 2;
    const { D } = given(fatigueWeldEnd, {
      ...free36,
      S_k: 10 ** knee * MPa,
      N_k: 10 ** (10.57 - 3 * knee),
      m_2: 5,
      s_up: 10 * MPa,
      s_dn: 0,
      z: 0,
      n_eq: 1e6,
    });
    expect(D! / ((1e6 * 1e5) / 10 ** 13.617)).toBeCloseTo(1, 9);
  });

  it('has the category in air below it and a third of the life above (EN 1993-1-9, 7.1): 36 at 36 MPa, 2 million cycles', () => {
    const { D, D_low, D_high } = given(fatigueWeldEnd, { ...free36, s_up: 36 * MPa, s_dn: 0, z: 0, n_eq: 2e6 });
    expect(D_low).toBeCloseTo(1, 9);
    expect(D_high).toBeCloseTo(3.06, 9);
    expect(D).toBeGreaterThan(2.98);
    expect(D).toBeLessThan(3.02);
  });
});

describe('stress at each detail, worked by hand', () => {
  const z = 0;
  it('weld root: 50 √2 N/mm off the tube and across, throat 5 mm, no moment: 20 MPa square to the throat', () => {
    const f = 50 * Math.SQRT2 * 1e3;
    const { sigma_up, tau_up, s_up } = given(fatigueWeldRoot, { f_z_up: f, f_h_up: f, m_up: 0, f_l_up: 0, a_w: 0.005 });
    expect([sigma_up, tau_up, s_up].map((s) => s! / MPa)).toEqual([expect.closeTo(20, 9), 0, expect.closeTo(20, 9)]);
  });

  it('weld on a corner: across alone, it shears as much as it pulls, at either end: 20 √2 N/mm on 5 mm is 4 √2 MPa', () => {
    const f = 20e3 * Math.SQRT2;
    for (const end of ['up', 'dn']) {
      const all = given(fatigueWeldCorner, {
        [`f_z_${end}`]: 0,
        [`f_h_${end}`]: f,
        [`m_${end}`]: 0,
        [`f_l_${end}`]: 0,
        a_w: 0.005,
      });
      expect(['sigma', 'tau', 's'].map((of) => all[`${of}_${end}`]! / MPa)).toEqual([
        expect.closeTo(4, 9),
        expect.closeTo(4, 9),
        expect.closeTo(4 * Math.SQRT2, 9),
      ]);
    }
  });

  it('weld root: a moment of 100 N about a throat of 5 mm adds 6 m / a² = 24 MPa; across alone shears as much as it pulls', () => {
    const { sigma_dn, tau_dn, s_dn } = given(fatigueWeldRoot, {
      f_z_dn: 0,
      f_h_dn: 20e3 * Math.SQRT2,
      m_dn: 100,
      f_l_dn: 0,
      a_w: 0.005,
    });
    expect(sigma_dn! / MPa).toBeCloseTo(4 + 24, 9);
    expect(tau_dn! / MPa).toBeCloseTo(4, 9);
    expect(s_dn! / MPa).toBeCloseTo(Math.hypot(28, 4), 9);
  });

  it('weld toe: 80 N/mm in a panel of 8 mm and 64 N of moment: 10 + 6 MPa', () => {
    expect(given(fatigueWeldToe, { f_h_up: 80e3, m_up: 64, t: 0.008 }).s_up! / MPa).toBeCloseTo(16, 9);
  });

  it('tube: 10 kN m over 200 cm³ and 20 kN over 40 cm²: 50 + 5 MPa; over three quarters of the flange a third more', () => {
    const tube = { M_up: 10e3, N_up: 20e3, W_el: 200e-6, A: 40e-4 };
    expect(given(fatigueWeldEnd, tube).s_up! / MPa).toBeCloseTo(55, 9);
    expect(given(fatigueEyeOnTube, tube).s_up! / MPa).toBeCloseTo(55, 9);
    expect(given(fatigueBoltHoleTube, { ...tube, n_h: 2, d_h: 0.025, B: 0.2 }).s_up! / MPa).toBeCloseTo(
      (55 * 4) / 3,
      9,
    );
  });

  it('panel: between holes of 14 mm at a pitch of 70 mm, a quarter more', () => {
    expect(given(fatigueBoltHolePanel, { b_up: 80 * MPa, p_1: 0.07, d_0: 0.014 }).s_up! / MPa).toBeCloseTo(100, 9);
  });

  it('cut rim: 3 times at a small hole (Kirsch), (5 + 3 ν)/(3 + ν) = 1.79 at a large one (Reissner), 1 without', () => {
    const K = (d_c: number) => given(fatiguePlateEdge, { d_c, t: 0.01, b_up: 1, b_dn: 1 }).K_h!;
    expect(K(1e-6)).toBeCloseTo(3, 1);
    expect(K(10)).toBeCloseTo((5 + 3 * 0.3) / (3 + 0.3), 2);
    expect(K(0)).toBe(1);
  });

  it('bolt: 16.86 kN on the 84.3 mm² of an M12 (ISO 898-1) are 200 MPa; an M36 takes (36/30)^0.25 more', () => {
    expect(given(fatigueBoltTension, { F_up: 16.86e3, A_s: 84.3e-6 }).s_up! / MPa).toBeCloseTo(200, 9);
    expect(given(fatigueBoltTension, { t_d: 0.036, t_ref: 0.03, k_x: 0.25 }).k_t).toBeCloseTo(1.0466, 4);
    expect(given(fatigueBoltShear, { F_up: 8.43e3, A_s: 84.3e-6 }).s_up! / MPa).toBeCloseTo(100, 9);
  });

  it('crossing: 300 N/mm on a throat of 6 mm are 50 MPa', () => {
    expect(given(fatigueCrossingRoot, { f_dn: 300e3, a_w: 0.006 }).s_dn! / MPa).toBeCloseTo(50, 9);
  });

  it('eye: 60 kN on a foot of 20 × 150 mm are 20 MPa; 3 kN along it at 100 mm bend by 4 MPa, across it by 30', () => {
    const foot = { t_e: 0.02, l_e: 0.15, h_e: 0.1, F_z_up: 60e3, F_l_up: 3e3, F_q_up: 3e3 };
    expect(given(fatigueEyeFoot, { ...foot, F_l_up: 0, F_q_up: 0 }).s_up! / MPa).toBeCloseTo(20, 9);
    expect(given(fatigueEyeFoot, { ...foot, F_q_up: 0 }).s_up! / MPa).toBeCloseTo(24, 9);
    expect(given(fatigueEyeFoot, { ...foot, F_l_up: 0 }).s_up! / MPa).toBeCloseTo(50, 9);
  });

  it('eye’s weld: 60 kN on two fillets of 5 mm and 100 mm beside their ends are 60 MPa', () => {
    const weld = { F_z_dn: 60e3, F_l_dn: 0, F_q_dn: 0, t_e: 0.02, h_e: 0.1, a_w: 0.005, l_0: 0.11 };
    expect(given(fatigueEyeRoot, weld).l_w).toBeCloseTo(0.1, 12);
    expect(given(fatigueEyeRoot, weld).s_dn! / MPa).toBeCloseTo(60, 9);
    const along = given(fatigueEyeRoot, { ...weld, F_l_dn: 3e3 });
    expect(along.s_dn! / MPa).toBeCloseTo(Math.hypot((300 + 90) / 5, 15 / 5), 9);
    const across = given(fatigueEyeRoot, { ...weld, F_q_dn: 3e3 });
    expect(across.s_dn! / MPa).toBeCloseTo(Math.hypot((300 + 150) / 5, 15 / 5), 9);
  });

  it('eye’s hole: half as wide as the eye, 2.51 times the mean stress beside it (Peterson, from memory)', () => {
    const { K_t, s_up } = given(fatigueEyeHole, { d_0: 0.04, c_e: 0.02, t_e: 0.025, F_up: 50e3 });
    expect(K_t).toBeCloseTo(2.51, 2);
    expect(s_up! / MPa).toBeCloseTo(50 * K_t!, 6);
  });

  it('a hot-spot stress is one of flat walls: not of round tubes, nor of a cross tube higher than the main tube', () => {
    const of = (mainTubes: object, crossTubes: object) =>
      missingFrom(fatigueCrossingToe, 's_up', demoModel({ grid: { mainTubes, crossTubes } }), 'A/1');
    expect(of({}, { section: 'CHS 114.3x5 hot' })).toMatch(/round tube is crossed/);
    expect(of({ section: 'SHS 100x100x8 hot' }, { section: 'SHS 120x120x5 hot' })).toMatch(/higher than the main tube/);
    const [outer, inner] = ['A/2', 'B/2'].map((id) => reads(fatigueCrossingToe, 's_dn', demoModel(), id));
    expect(outer).toBeGreaterThan(0);
    expect(inner).toBeGreaterThan(0);
    expect(inner).not.toBe(outer);
    expect(given(fatigueCrossingToe, { s_up: 20 * MPa, s_dn: 20 * MPa, z }).sigma_r).toBe(40 * MPa);
  });
});

describe('classes of the details', () => {
  it.each([
    ['weld root', fatigueWeldRoot, 'A1', 36],
    ['weld toe', fatigueWeldToe, 'A1', 45],
    ['end of a weld, panel of 10 mm on a wall of 8 mm', fatigueWeldEnd, 'A', 50],
    ['eye of 25 mm with throats of 8 mm: 48 mm over both toes', fatigueEyeFoot, 'S1', 80],
    ['foot of 180 mm', fatigueEyeOnTube, 'S1', 56],
    ['eye’s root', fatigueEyeRoot, 'S1', 36],
    ['crossing’s root', fatigueCrossingRoot, 'A/1', 36],
  ] as const)('%s (EN 1993-1-9, Tables 8.4 and 8.5, in a public copy)', (_words, check, place, category) => {
    expect(reads(check, 'sigma_C', demoModel(welded()), place)).toBe(category * MPa);
  });

  it.each([
    ['slip-resistant', 90],
    ['fitted', 80],
    ['clearance', 50],
  ])('hole of a %s bolt: %d (EN 1993-1-9, Table 8.1, from memory)', (shear, category) => {
    const model = demoModel({ designs: { deck: { fixing: { shear } } } });
    expect(reads(fatigueBoltHolePanel, 'sigma_C', model, 'A1')).toBe(category * MPa);
  });

  it('thread 50, hole in a tube 90, cut edge 125 (EN 1993-1-9, Table 8.1, from memory)', () => {
    const model = demoModel();
    expect(reads(fatigueBoltTension, 'sigma_C', model, 'A1')).toBe(50 * MPa);
    expect(reads(fatigueBoltHoleTube, 'sigma_C', model, 'A')).toBe(90 * MPa);
    expect(reads(fatiguePlateEdge, 'sigma_C', model, 'A1')).toBe(125 * MPa);
    expect(reads(fatigueEyeHole, 'sigma_C', model, 'S1')).toBe(125 * MPa);
    expect(reads(fatigueCrossingToe, 'sigma_C', model, 'A/1')).toBe(90 * MPa);
  });

  it.each([
    ['40 mm', 80],
    ['80 mm', 71],
    ['100 mm', 63],
    ['150 mm', 56],
  ])('run of %s of an intermittent weld: %d (Table 8.4, detail 1)', (run, category) => {
    const model = demoModel(welded({ pattern: 'intermittent', run, gap: '100 mm' }));
    expect(reads(fatigueWeldIntermittent, 'sigma_C', model, 'A1')).toBe(category * MPa);
    expect(reads(fatigueWeldIntermittent, 's_up', model, 'A1')).toBeGreaterThan(0);
  });

  it('an intermittent weld is judged at its runs, a continuous one is not', () => {
    const verdicts = (pattern: Record<string, unknown>) =>
      checkRows(fatigueWeldIntermittent, demoModel(welded(pattern))).rows.map(({ verdict }) => verdict);
    expect(verdicts({ pattern: 'intermittent', run: '60 mm', gap: '60 mm' })).not.toContain('not applicable');
    expect(new Set(verdicts({}))).toEqual(new Set(['not applicable']));
  });
});

describe('what a detail reads of a document', () => {
  const welds = [fatigueWeldRoot, fatigueWeldToe, fatigueWeldPlugShear];
  const plugs = { diameter: '20 mm', pitch: '120 mm', edgeDistance: '20 mm' };

  it('W3 under protection: lines of 10.570 and 13.617 meet at 33.4 MPa and 0.999 million cycles (DNV-RP-C203, Table 2-2); 10 mm thick, reference 25 mm, exponent 0.25', () => {
    const model = demoModel(welded({ plugs }), { protection: { cathodic: true } });
    const read = (check: Check, symbol: string) => reads(check, symbol, model, 'A1');
    for (const check of [fatigueWeldRoot, fatigueWeldPlugShear]) {
      const knee = 10 ** ((13.617 - 10.57) / 2);
      expect(read(check, 'S_k') / MPa).toBeCloseTo(knee, 6);
      expect(read(check, 'N_k') / 10 ** (10.57 - 3 * Math.log10(knee))).toBeCloseTo(1, 9);
      expect(['m_1', 'm_2', 't_ref', 'k_x'].map((symbol) => read(check, symbol))).toEqual([3, 5, 0.025, 0.25]);
      expect(read(check, 't_d')).toBe(0.01);
    }
  });

  it('the factor on life and the cycles as stated; slams apart', () => {
    const apart = [{ kind: 'slam', range: '240 kN', cycles: 500, source: 'invented' }];
    const model = demoModel(welded({ plugs }), { fatigue: { apart } });
    for (const check of welds)
      expect(['n_eq', 'n_s', 'k_s', 'DFF'].map((symbol) => reads(check, symbol, model, 'A1'))).toEqual([
        4e7, 500, 2, 10,
      ]);
  });

  it('rest lies where the pressure between both ends is nil (by hand: it runs straight from one to the other)', () => {
    const pushed = demoModel(welded({ plugs }), { loads: { service: { includes: ['inertia', 'drag'] } } });
    for (const check of welds) {
      const { up, down } = pushed.loads.swing;
      const [p, q] = [up.pressures.get('A1')!, down.pressures.get('A1')!];
      const z = reads(check, 'z', pushed, 'A1');
      expect(Math.abs(z)).toBeGreaterThan(0.01);
      expect(((p + q) / 2 + (z * (p - q)) / 2) / Math.abs(p)).toBeCloseTo(0, 12);
    }
  });
});

describe.each(
  checks
    .filter(
      ({ limitState, steps }) =>
        limitState === 'fatigue' && steps['partial factors']!.some(({ symbol }) => symbol === 'x_s'),
    )
    .map((check) => [check.id, check] as const),
)('%s: from its stresses to its damage, worked by hand', (_, check) => {
  const sides = check.steps['partial factors']!.some(({ symbol }) => symbol === 'sigma_2') ? 'same' : 'opposite';
  /** Category 36 under protection: 36 MPa at 2 million, knee at 5 million. */
  const inAir = { ...free36, S_k: 36 * 0.7368063 * MPa, N_k: 5e6, m_2: 5 };

  it('both slopes of waves and of slams, a thick part, the factor', () => {
    const at = (s: number, more: Record<string, number> = {}) =>
      given(check, { ...inAir, s_up: s * MPa, s_dn: 0, z: 0, n_eq: 2e6, n_s: 0, ...more });
    const knee = 36 * 0.7368063;
    expect(at(36).D! / 1).toBeCloseTo(1, 5);
    expect(at(knee / 2, { n_eq: 5e6 }).D).toBeCloseTo(0.5 ** 5, 9);
    expect(at(knee / 4, { n_s: 5e6, k_s: 2 }).D_s).toBeCloseTo(0.5 ** 5, 9);
    expect(at(knee / 4, { n_s: 5e6, k_s: 8 }).D_s).toBeCloseTo(2 ** 3, 9);
    expect(at(36, { t_d: 0.4 }).k_t).toBeCloseTo(2, 9);
    expect(at(36, { t_d: 0.4 }).x_1! / at(36).x_1!).toBeCloseTo(2, 9);
    const { D, D_w, D_s, D_lim } = at(36, { n_s: 1e5, k_s: 3 });
    expect([D, D_lim]).toEqual([D_w! + D_s!, 0.1]);
  });

  it('has the category in air below and a third of the life above', () => {
    const at = (s: number, n_s = 0) => given(check, { ...inAir, s_up: s * MPa, s_dn: 0, z: 0, n_eq: 2e6, n_s, k_s: 2 });
    expect(at(36).D_low).toBeCloseTo(1, 9);
    expect(at(36 * 0.7368063 * 0.5).D_low).toBeCloseTo(0.4 * 0.5 ** 5, 9);
    expect(at(36).D_high).toBeCloseTo(3.06, 9);
    expect(at(36, 1e6).D_high! - at(36).D_high!).toBeCloseTo(3.06 * 0.5 * 8, 9);
  });

  it('bends at the knee and nowhere else: just beyond it the steep slope holds, just before it the flat one', () => {
    const knee = 36 * 0.7368063 * MPa;
    for (const [x, slope] of [
      [1.05, 3],
      [0.95, 5],
    ] as const) {
      const both = { s_up: x * knee, s_dn: sides === 'same' ? x * knee : 0, z: 0 };
      const v = given(check, { ...inAir, ...both, n_eq: 5e6, n_s: 5e6, k_s: 1 });
      const times = sides === 'same' ? 2 : 1;
      expect([v.D_w, v.D_s]).toEqual([expect.closeTo(times * x ** slope, 9), expect.closeTo(x ** slope, 9)]);
      expect(v.D_low).toBeCloseTo(times * x ** slope, 5);
    }
  });

  it('counts the range on the other side of rest by itself, where there is one', () => {
    const knee = 36 * 0.7368063 * MPa;
    const at = (s_dn: number) => given(check, { ...inAir, s_up: 2 * knee, s_dn: s_dn * knee, z: 0, n_eq: 5e6, n_s: 0 });
    if (sides === 'opposite') return expect(at(0.5).D).toBeCloseTo(2.5 ** 3, 9);
    expect([at(0.5).D, at(1.5).D]).toEqual([expect.closeTo(8 + 0.5 ** 5, 9), expect.closeTo(8 + 1.5 ** 3, 9)]);
    expect(at(0.5).D_low).toBeCloseTo(8 + 0.5 ** 5, 5);
    expect(at(1.5).D_low).toBeCloseTo(8 + 1.5 ** 3, 4);
    expect(at(1.5).D_high).toBeCloseTo(3.06 * (8 + 1.5 ** 3), 4);
  });

  it('at rest within the cycle or beyond it', () => {
    const at = (z: number) => given(check, { ...inAir, s_up: 20 * MPa, s_dn: 8 * MPa, z, n_eq: 1 }).sigma_r! / MPa;
    if (sides === 'same') {
      const second = (z: number) =>
        given(check, { ...inAir, s_up: 20 * MPa, s_dn: 8 * MPa, z, n_eq: 1 }).sigma_2! / MPa;
      expect([second(0.99), second(-0.99), second(1.01), second(-1.01)]).toEqual([8, 8, 0, 0]);
    }
    expect([at(0.99), at(-0.99), at(1.01), at(-1.01)]).toEqual(sides === 'same' ? [20, 20, 12, 12] : [28, 28, 12, 12]);
  });
});
