import { describe, expect, it } from 'vitest';
import { boltClasses } from '../../core/catalogue/bolt-classes.ts';
import { bolts } from '../../core/catalogue/bolts.ts';
import { boltShear } from '../../core/checks/bolt-shear.ts';
import { allowable, fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { expectBetween, expectUtilisationBounds, ofShear } from './bolt-utilisation.ts';
import { valuesGiven } from './bolt-values.ts';

const inch = 0.0254;
const m16 = { A_s: 157e-6, A_b: 201.06e-6 };

describe('bolt in shear', () => {
  it.each([
    ['class 8.8 through the threads', 1, 800e6, 0.6, 60.288],
    ['class 8.8 through the shank', 0, 800e6, 0.6, 77.208],
    ['class 10.9 through the threads', 1, 1000e6, 0.5, 62.8],
  ])('EN 1993-1-8 Table 3.4, M16 %s: %d', (_, threads, f_ub, alpha_v, kN) => {
    expect(
      valuesGiven(boltShear, 'partial factors', { ...m16, threads, f_ub, alpha_v, gamma_M2: 1.25 }).F_v_Rd! / 1e3,
    ).toBeCloseTo(kN, 2);
  });

  it('AISC 360 Table J3.2, M16 of group 120 through the threads: 37.397 kN allowable', () => {
    expect(
      valuesGiven(boltShear, 'allowable stress', { A_b: m16.A_b, F_nv: 372e6, Omega_J: 2 }).F_v_Rd! / 1e3,
    ).toBeCloseTo(37.397, 2);
  });

  it('A Beginner’s Guide to the Steel Construction Manual (2007), problem 4.1: 3/4 in A325-X, 60 ksi, 26.5 kip nominal, 146 kip allowable on eleven bolts', () => {
    const [kip, ksi] = [4448.2216, 6.894757e6];
    const given = { A_b: 0.4418 * inch ** 2, F_nv: 60 * ksi };
    const at = (Omega_J: number) => valuesGiven(boltShear, 'allowable stress', { ...given, Omega_J }).F_v_Rd! / kip;
    expect(at(1)).toBeCloseTo(26.5, 1);
    expect(Math.round(11 * at(2))).toBe(146);
  });

  it('takes the pull of a strip over one pitch: 50 in × 1/2 in steel under 20 psi pulls 15 830 psi (T&WK, art. 2, worked example, from memory)', () => {
    const psi = 6894.757;
    const given = {
      a: 50 * inch,
      b: 200 * inch,
      t: inch / 2,
      E: 30e6 * psi,
      nu: 0.3,
      p: 20 * psi,
      h_x: 1,
      h_y: 1,
      a_b: 52 * inch,
      b_b: 202 * inch,
      n_x: 14,
      n_y: 102,
    };
    const { F_v, s_x, s_y } = valuesGiven(boltShear, 'partial factors', given);
    expect(s_x! / inch).toBeCloseTo(4, 6);
    expect(s_y! / inch).toBeCloseTo(2, 6);
    expect(F_v! / (4 * inch) / (inch / 2) / psi).toBeGreaterThan(15800);
    expect(F_v! / (4 * inch) / (inch / 2) / psi).toBeLessThan(15860);
    // Held by the tubes of one direction only, the span is that one, and the rows along them carry it.
    expect(valuesGiven(boltShear, 'partial factors', { ...given, h_y: 0 }).F_v! / F_v!).toBeCloseTo(0.5, 6);
    const long = valuesGiven(boltShear, 'partial factors', { ...given, h_x: 0 });
    expect(long.L_n).toBeCloseTo(200 * inch, 9);
    expect(long.F_v!).toBeGreaterThan(F_v!);
  });

  it('spans the shorter side where four sides hold it, and each row takes the pull over its pitch', () => {
    const field = { a: 2, b: 1, t: 0.008, E: 210e9, nu: 0.3, p: 1e4, a_b: 2, b_b: 1, n_x: 5, n_y: 5 };
    const both = valuesGiven(boltShear, 'partial factors', { ...field, h_x: 1, h_y: 1 });
    expect(both.L_n).toBe(1);
    expect(both.F_v! / both.N_pull!).toBeCloseTo(0.5, 9);
    expect(both.F_most! / both.N_high!).toBeCloseTo(0.5, 9);
    expect(both.F_least! / both.N_low!).toBeCloseTo(0.5, 9);
    const cross = valuesGiven(boltShear, 'partial factors', { ...field, h_x: 1, h_y: 0 });
    expect(cross.L_n).toBe(2);
    expect(cross.F_v! / cross.N_pull!).toBeCloseTo(0.25, 9);
    expect(cross.F_most! / cross.N_high!).toBeCloseTo(0.25, 9);
    expect(cross.F_least! / cross.N_low!).toBeCloseTo(0.25, 9);
  });

  it('lies between both pulls of the second opinion from slack to membrane, and meets them at the ends', () => {
    const [E, nu, t, L] = [210e9, 0.3, 0.008, 1];
    const at = (p: number) =>
      valuesGiven(boltShear, 'partial factors', {
        ...{ a: L, b: L, t, E, nu, p, h_x: 1, h_y: 1 },
        ...{ a_b: 1, b_b: 1, n_x: 8, n_y: 8 },
      });
    let before = 0;
    for (let power = 1; power <= 8; power += 0.5) {
      const { F_v, F_least, F_most } = at(10 ** power);
      expect(F_v!).toBeGreaterThan(before);
      expect(F_v!).toBeLessThanOrEqual(F_most! * (1 + 1e-9));
      expect(F_v!).toBeGreaterThanOrEqual(F_least! * (1 - 1e-9));
      expect(F_most! / F_least!).toBeLessThan(4.5);
      before = F_v!;
    }
    expect(at(10).F_least! / at(10).F_most!).toBeCloseTo(1, 4);
    expect(at(1e8).F_most! / at(1e8).F_least!).toBeLessThan(1.25);
    expect(at(0).F_v).toBe(0);
  });

  it('bounds the pull by the slope of a simply supported strip (beam theory, p x (L³ - 2 L x² + x³) / 24 D), by Euler’s load and by a cable, N³ = E t (p L)² / 24 (1 - ν²)', () => {
    const [E, nu, t, L, p] = [210e9, 0.3, 0.008, 1.2, 1500];
    const values = valuesGiven(boltShear, 'partial factors', {
      ...{ a: L, b: L, t, E, nu, p, h_x: 1, h_y: 1 },
      ...{ a_b: 1, b_b: 1, n_x: 8, n_y: 8 },
    });
    const D = (E * t ** 3) / 12 / (1 - nu ** 2);
    const slope = (x: number) => (p * (L ** 3 - 6 * L * x ** 2 + 4 * x ** 3)) / (24 * D);
    const n = 2000;
    let mean = 0;
    for (let i = 0; i < n; i++) mean += slope(((i + 0.5) / n) * L) ** 2 / 2 / n;
    const bent = ((E * t) / (1 - nu ** 2)) * mean;
    expect(values.N_bent! / bent).toBeCloseTo(1, 5);
    expect(values.N_E! / ((Math.PI ** 2 * D) / L ** 2)).toBeCloseTo(1, 9);
    expect(values.N_cable).toBeCloseTo(Math.cbrt((E * t * (p * L) ** 2) / (24 * (1 - 0.25))), 3);
    expect(values.N_high).toBe(Math.min(values.N_bent!, values.N_cable!));
    expect(values.N_low! / (values.N_bent! / (1 + values.N_high! / values.N_E!) ** 2)).toBeCloseTo(1, 9);
  });

  it('bounds the resistance: half the strength on A_s, 0.62 of it at the pitch diameter (M16 14.701 mm, ISO 724) or on the shank', () => {
    const given = { ...m16, f_ub: 800e6, gamma_R: 1.25 };
    const threads = valuesGiven(boltShear, 'partial factors', { ...given, threads: 1 });
    expect(threads.R_low! / 1e3).toBeCloseTo((0.5 * 800 * 157) / 1.25 / 1e3, 6);
    // (d + 2 d_s) / 3 is the pitch diameter of UN threads: 1/2 in with 20 threads 0.4675 in, A_s 0.1599 in² (ASME B1.1) …
    const half = { A_s: 0.1599 * inch ** 2, A_b: (Math.PI / 16) * inch ** 2, threads: 1 };
    const { A_2 } = valuesGiven(boltShear, 'partial factors', half);
    expect(Math.sqrt((4 * A_2!) / Math.PI) / inch).toBeCloseTo(0.4675, 4);
    // … and a little more than that of ISO threads.
    const d_2 = Math.sqrt((4 * threads.A_2!) / Math.PI) * 1e3;
    expect(d_2).toBeGreaterThan(14.701);
    expect(d_2).toBeLessThan(14.78);
    expect(threads.R_high! / 1e3).toBeCloseTo((0.62 * 800 * threads.A_2! * 1e6) / 1.25 / 1e3, 6);
    const shank = valuesGiven(boltShear, 'partial factors', { ...given, threads: 0 });
    expect(shank.R_high! / 1e3).toBeCloseTo((0.62 * 800 * 201.06) / 1.25 / 1e3, 6);
    expectUtilisationBounds(boltShear, { ...ofShear, capacity: 'F_v_Rd' });
  });

  it.each(['partial factors', 'allowable stress'] as const)(
    'holds the resistance of every bolt and class between its bounds: %s',
    (safety) => {
      let tried = 0;
      for (const { tensileArea: A_s, shankArea: A_b } of bolts)
        for (const { ultimate: f_ub, alphaV, alphaVShank, nominal, family } of boltClasses)
          for (const threads of [0, 1]) {
            const alpha_v = threads ? alphaV : alphaVShank;
            if (safety === 'partial factors' ? alpha_v === null : family !== 'carbon steel') continue;
            const F_nv = threads ? (nominal?.shearThreads ?? 0.45 * f_ub) : (nominal?.shearShank ?? 0.563 * f_ub);
            const own: Record<string, number> =
              safety === 'partial factors' ? { alpha_v: alpha_v!, gamma_M2: 1.25 } : { F_nv, Omega_J: 2 };
            const gamma_R = safety === 'partial factors' ? 1.25 : 2;
            expectBetween(valuesGiven(boltShear, safety, { A_s, A_b, threads, f_ub, gamma_R, ...own }), 'F_v_Rd');
            tried++;
          }
      expect(tried).toBeGreaterThan(200);
    },
  );

  it('reads the class and the place of its threads, and says what no code lists', () => {
    const model = modelWith();
    const service = situationOf(model, 'service', 'down');
    expect(readOf(boltShear, 'alpha_v', model, 'A1', service)).toBe(0.6);
    expect(readOf(boltShear, 'A_s', model, 'A1', service)).toBeCloseTo(84.3e-6, 12);
    expect(readOf(boltShear, 'threads', model, 'A1', service)).toBe(1);
    expect(readOf(boltShear, 'F_nv', model, 'A1', service)).toBeCloseTo(0.45 * 800e6, 0);
    expect(readOf(boltShear, 'gamma_R', model, 'A1', service)).toBe(1.25);
    expect(readOf(boltShear, 'gamma_R', allowable(model), 'A1', service)).toBe(2);
    const shank = modelWith(fixing({ threadsInShearPlane: false, class: '10.9' }));
    expect(readOf(boltShear, 'alpha_v', shank, 'A1', service)).toBe(0.6);
    expect(readOf(boltShear, 'F_nv', shank, 'A1', service)).toBeCloseTo(0.563 * 1000e6, 0);
    expect(readOf(boltShear, 'alpha_v', modelWith(fixing({ class: '10.9' })), 'A1', service)).toBe(0.5);
    const american = modelWith(fixing({ class: 'ASTM A325' }));
    expect(readOf(boltShear, 'alpha_v', american, 'A1', service)).toMatch(/does not list/);
    expect(readOf(boltShear, 'F_nv', american, 'A1', service)).toBe(372e6);
    expect(readOf(boltShear, 'F_nv', modelWith(fixing({ class: 'A4-70' })), 'A1', service)).toMatch(/does not list/);
  });

  it('does not apply to a welded panel', () => {
    const model = modelWith((d) => Object.assign(d.panels, { A2: 'welded' }));
    const service = situationOf(model, 'service', 'down');
    expect(boltShear.applies(model, 'A1', service)).toBe(true);
    expect(boltShear.applies(model, 'A2', service)).toBe('the panel is welded');
    expect(boltShear.places(model)).toEqual(['A1', 'A2', 'A3']);
  });
});
