import { describe, expect, it } from 'vitest';
import { boltBearingPanel } from '../../core/checks/bolt-bearing-panel.ts';
import { boltBlockTear } from '../../core/checks/bolt-block-tear.ts';
import { boltPullThrough } from '../../core/checks/bolt-pull-through.ts';
import { boltTearOut } from '../../core/checks/bolt-tear-out.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { allowable, design, fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { expectBetween, expectUtilisationBounds, ofShear } from './bolt-utilisation.ts';
import { valuesGiven } from './bolt-values.ts';

const far = 1;
const en = {
  d: 0.016,
  d_0: 0.018,
  e_1: 0.03,
  e_2: 0.025,
  p_1: far,
  p_2: far,
  t: 0.008,
  f_ub: 800e6,
  f_yp: 355e6,
  f_u: 470e6,
  stainless: 0,
  k_h: 1,
  gamma_M2: 1.25,
};
const of = (change: Record<string, number>) => valuesGiven(boltBearingPanel, 'partial factors', { ...en, ...change });

describe('bolt bearing on the panel', () => {
  it('EN 1993-1-8 Table 3.4, M16 in 8 mm of S355 (e1 30, e2 25, p1 50 mm): end bolt 58.526 kN, inner 71.207 kN', () => {
    expect(of({}).alpha_b).toBeCloseTo(0.555556, 6);
    expect(of({}).k_1).toBeCloseTo(2.188889, 6);
    expect(of({}).F_b_Rd! / 1e3).toBeCloseTo(58.526, 2);
    expect(of({ e_1: far, p_1: 0.05 }).alpha_b).toBeCloseTo(0.675926, 6);
    expect(of({ e_1: far, p_1: 0.05 }).F_b_Rd! / 1e3).toBeCloseTo(71.207, 2);
    expect(of({ e_2: far, p_2: 0.05 }).k_1).toBeCloseTo(2.188889, 6);
  });

  it('EN 1993-1-8, 3.6.1(10): one row in a single lap bears 1.5 f_u d t at the most; k_1 ends at 2.5, alpha_b at 1 and at f_ub / f_u', () => {
    expect(of({ e_1: far, e_2: far }).k_1).toBe(2.5);
    expect(of({ e_1: far, e_2: far }).alpha_b).toBe(1);
    expect(of({ e_1: far, e_2: far }).F_b_Rd! / 1e3).toBeCloseTo((1.5 * 470 * 16 * 8) / 1.25 / 1e3, 6);
    expect(of({ e_1: far, f_ub: 400e6 }).alpha_b).toBeCloseTo(400 / 470, 9);
    expect(of({ k_h: 0.8 }).F_b_Rd! / of({}).F_b_Rd!).toBeCloseTo(0.8, 9);
  });

  it('EN 1993-1-4, 6.2: stainless 1.4404 bears with 0.5 · 220 + 0.6 · 520 = 422 MPa (formula from memory), and never with more than f_u', () => {
    expect(of({ stainless: 1, f_yp: 220e6, f_u: 520e6 }).f_b! / 1e6).toBeCloseTo(422, 9);
    expect(of({ stainless: 1, f_yp: 460e6, f_u: 520e6 }).f_b! / 1e6).toBeCloseTo(520, 9);
    expect(of({}).f_b! / 1e6).toBeCloseTo(470, 9);
  });

  it('AISC 360 J3.10, M16 in 8 mm with 21 mm clear: 94.752 kN nominal, 71.064 kN with phi 0.75 (from memory); 2.4 d t F_u far from an edge', () => {
    const us = {
      d: 0.016,
      d_0: 0.018,
      e_1: 0.03,
      e_2: far,
      p_1: far,
      t: 0.008,
      f_u: 470e6,
      f_yp: 355e6,
      stainless: 0,
      k_h: 1,
      Omega_J: 1,
    };
    const at = (change: Record<string, number>) =>
      valuesGiven(boltBearingPanel, 'allowable stress', { ...us, ...change });
    expect(at({}).l_c! * 1e3).toBeCloseTo(21, 9);
    expect(at({}).F_b_Rd! / 1e3).toBeCloseTo(94.752, 3);
    expect(at({ Omega_J: 1 / 0.75 }).F_b_Rd! / 1e3).toBeCloseTo(71.064, 3);
    expect(at({ e_1: far, e_2: 0.03 }).l_c! * 1e3).toBeCloseTo(21, 9);
    expect(at({ e_1: far, p_1: 0.045 }).l_c! * 1e3).toBeCloseTo(27, 9);
    expect(at({ e_1: far }).F_b_Rd! / 1e3).toBeCloseTo((2.4 * 16 * 8 * 470) / 1e3, 6);
  });

  it('bounds the resistance: 0.8 f_y on the projected area, less before little steel; two planes of shear, or three times f_u (by hand)', () => {
    const bounds = (change: Record<string, number>) => of({ gamma_R: 1, ...change });
    // Half the steel of a hole's diameter before the hole: 9 of 18 mm.
    expect(bounds({ e_1: 0.018 }).R_low).toBeCloseTo(0.8 * 355 * 16 * 8 * 0.5, 6);
    expect(bounds({ p_1: 0.045 }).R_low).toBeCloseTo((0.8 * 355 * 16 * 8 * 13.5) / 18, 6);
    expect(bounds({ e_1: far }).R_low).toBeCloseTo(0.8 * 355 * 16 * 8, 6);
    expect(bounds({}).R_high).toBeCloseTo((2 * 30 * 8 * 470) / Math.sqrt(3), 6);
    expect(bounds({ e_1: far, p_1: 0.045 }).R_high).toBeCloseTo((2 * 36 * 8 * 470) / Math.sqrt(3), 6);
    expect(bounds({ e_1: far }).R_high).toBeCloseTo(3 * 16 * 8 * 470, 6);
    expect(bounds({ gamma_R: 1.25 }).R_high! / bounds({}).R_high!).toBeCloseTo(0.8, 9);
    expect(bounds({ gamma_R: 1.25 }).R_low! / bounds({}).R_low!).toBeCloseTo(0.8, 9);
    expectUtilisationBounds(boltBearingPanel, { ...ofShear, capacity: 'F_b_Rd' });
  });

  it('holds the resistance between its bounds, from the least distances of Table 3.3 up, for every steel and hole', () => {
    let tried = 0;
    for (const [d, normal, oversize] of [
      [12, 13, 15],
      [36, 39, 44],
    ] as const)
      for (const d_0 of [d, normal, oversize])
        for (const [f_yp, f_u, stainless] of [
          [235, 360, 0],
          [460, 540, 0],
          [220, 520, 1],
        ] as const)
          for (const e of [1.2, 1.5, 3, 5])
            for (const p of [2.2, 3, 8])
              for (const f_ub of [400, 800]) {
                const size = { d, d_0, e_1: e * d_0, e_2: e * d_0, p_1: p * d_0, t: 8, f_yp, f_u, stainless };
                const partial = { p_2: p * d_0, f_ub, gamma_M2: 1.25, gamma_R: 1.25 };
                // A slot is as wide as the normal hole, and stands 1.5 widths from an edge at the least.
                const factors = d_0 === oversize ? [0.8] : d_0 === normal && e >= 1.5 ? [1, 0.6] : [1];
                for (const k_h of factors) {
                  const given = { ...size, ...partial, k_h };
                  expectBetween(valuesGiven(boltBearingPanel, 'partial factors', given), 'F_b_Rd');
                }
                for (const k_h of [1, 1 / 1.2])
                  expectBetween(
                    valuesGiven(boltBearingPanel, 'allowable stress', { ...size, k_h, Omega_J: 2, gamma_R: 2 }),
                    'F_b_Rd',
                  );
                tried++;
              }
    expect(tried).toBe(2 * 3 * 3 * 4 * 3 * 2);
  });

  it('reads edges, pitch and hole of the worst bolt, and the thickness that is left', () => {
    const model = modelWith();
    const down = situationOf(model, 'service', 'down');
    const bolts = model.panels.get('A1')!.bolts;
    expect(readOf(boltBearingPanel, 'e_1', model, 'A1', down)).toBeCloseTo(0.018, 9);
    expect(readOf(boltBearingPanel, 'e_2', model, 'A1', down)).toBeCloseTo(0.018, 9);
    expect(readOf(boltBearingPanel, 'p_1', model, 'A1', down)).toBeCloseTo(
      Math.min(...bolts.map(({ pitch }) => pitch)),
      12,
    );
    expect(readOf(boltBearingPanel, 'd_0', model, 'A1', down)).toBeCloseTo(0.013, 9);
    expect(readOf(boltBearingPanel, 't', model, 'A1', down)).toBeCloseTo(0.006 - 2 * 0.0002, 12);
    expect(readOf(boltBearingPanel, 'f_u', model, 'A1', down)).toBe(470e6);
    expect(readOf(boltBearingPanel, 'f_yp', model, 'A1', down)).toBe(355e6);
    expect(readOf(boltBearingPanel, 'd', model, 'A1', down)).toBeCloseTo(0.012, 12);
    expect(readOf(boltBearingPanel, 'gamma_R', model, 'A1', down)).toBe(1.25);
    expect(readOf(boltBearingPanel, 'gamma_R', allowable(model), 'A1', down)).toBe(2);
  });

  it('reads the least distance of two bolts of a row as the pitch, 800 MPa of class 8.8, and 0.8 in an oversize hole (EN 1993-1-8, Table 3.4)', () => {
    const model = modelWith();
    const down = situationOf(model, 'service', 'down');
    const { bolts } = model.panels.get('A1')!;
    const apart = bolts.flatMap((a) =>
      bolts.filter((b) => b !== a && b.side === a.side).map((b) => Math.hypot(a.x - b.x, a.y - b.y)),
    );
    expect(readOf(boltBearingPanel, 'p_2', model, 'A1', down)).toBeCloseTo(Math.min(...apart), 12);
    expect(readOf(boltBearingPanel, 'f_ub', model, 'A1', down)).toBe(800e6);
    expect(readOf(boltBearingPanel, 'k_h', model, 'A1', down)).toBe(1);
    expect(readOf(boltBearingPanel, 'k_h', modelWith(fixing({ hole: 'oversize' })), 'A1', down)).toBe(0.8);
  });

  it('judges aluminium under partial factors alone (EN 1999-1-1, 8.5), no plastics, no stainless steel by AISC 360, and says why', () => {
    const down = situationOf(modelWith(), 'service', 'down');
    const of = (material: string, units: 'metric' | 'inch' = 'metric') =>
      readOf(boltBearingPanel, 'f_u', modelWith(design({ material }), units), 'A1', down);
    expect(of('5083-H116')).toBe(305e6);
    expect(of('5083-H116', 'inch')).toMatch(/EN 1999-1-1, 8.5, is held for panels under partial factors alone/);
    // γ_M1 of aluminium on yielding, that of the basis else (EN 1999-1-1, Table 6.1, from memory)
    const factors = (material: string, units: 'metric' | 'inch' = 'metric') =>
      [boltTearOut, boltBlockTear].flatMap((check) =>
        (['gamma_M0', 'gamma_R'] as const).map((symbol) =>
          readOf(check, symbol, modelWith(design({ material }), units), 'A1', down),
        ),
      );
    expect(factors('5083-H116')).toEqual([1.1, 1.1, 1.1, 1.25]);
    expect(factors('S355 plate')).toEqual([1, 1, 1, 1.25]);
    expect(readOf(boltTearOut, 'gamma_R', modelWith(design({ material: 'ASTM A36' }), 'inch'), 'A1', down)).toBe(2);
    const aluminium = modelWith(design({ material: '5083-H116' }));
    for (const check of [boltBearingPanel, boltTearOut, boltBlockTear, boltPullThrough]) {
      const { rows, findings } = checkRows(check, aluminium);
      expect(rows.some(({ utilisation }) => utilisation !== null)).toBe(true);
      expect(findings).toEqual([]);
    }
    expect(of('HDPE PE100 sheet')).toMatch(/published design rule/);
    expect(of('ASTM A240 316L', 'inch')).toMatch(/AISC 360 holds for carbon steel/);
    expect(of('1.4404 plate')).toBe(520e6);
    expect(readOf(boltBearingPanel, 'stainless', modelWith(design({ material: '1.4404 plate' })), 'A1', down)).toBe(1);
    expect(readOf(boltBearingPanel, 'stainless', modelWith(), 'A1', down)).toBe(0);
  });

  it('does not apply to a welded panel', () => {
    const model = modelWith((d) => Object.assign(d.panels, { A2: 'welded' }));
    const down = situationOf(model, 'service', 'down');
    expect(boltBearingPanel.applies(model, 'A1', down)).toBe(true);
    expect(boltBearingPanel.applies(model, 'A2', down)).toBe('the panel is welded');
  });
});
