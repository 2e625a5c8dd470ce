import { describe, expect, it } from 'vitest';
import { boltShear } from '../../core/checks/bolt-shear.ts';
import { fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

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

  it('AISC 360 Table J3.2, M16 of group 120 through the threads: 37.397 kN allowable (from memory)', () => {
    expect(
      valuesGiven(boltShear, 'allowable stress', { A_b: m16.A_b, F_nv: 372e6, Omega_J: 2 }).F_v_Rd! / 1e3,
    ).toBeCloseTo(37.397, 2);
  });

  it('takes the pull of a strip over one pitch: 50 in × 1/2 in steel under 20 psi pulls 15 830 psi (T&WK, art. 2, worked example, from memory)', () => {
    const [inch, psi] = [0.0254, 6894.757];
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

  it('stays below the cable (second opinion) and grows with pressure', () => {
    const at = (p: number) =>
      valuesGiven(boltShear, 'partial factors', {
        a: 1,
        b: 1,
        t: 0.008,
        E: 210e9,
        nu: 0.3,
        p,
        h_x: 1,
        h_y: 1,
        a_b: 1,
        b_b: 1,
        n_x: 8,
        n_y: 8,
      });
    let before = 0;
    for (const p of [1e2, 1e3, 1e4, 1e5, 1e6]) {
      const { F_v, F_cable, N_cable } = at(p);
      expect(F_v!).toBeGreaterThan(before);
      expect(F_v!).toBeLessThanOrEqual(F_cable!);
      expect(N_cable!).toBeCloseTo(((210e9 * 0.008 * p ** 2) / 18) ** (1 / 3), 3);
      before = F_v!;
    }
    expect(at(1e6).F_v! / at(1e6).F_cable!).toBeGreaterThan(0.85);
    expect(at(0).F_v).toBe(0);
  });

  it('reads the class and the place of its threads, and says what no code lists', () => {
    const model = modelWith();
    const service = situationOf(model, 'service', 'down');
    expect(readOf(boltShear, 'alpha_v', model, 'A1', service)).toBe(0.6);
    expect(readOf(boltShear, 'A_s', model, 'A1', service)).toBeCloseTo(84.3e-6, 12);
    expect(readOf(boltShear, 'threads', model, 'A1', service)).toBe(1);
    expect(readOf(boltShear, 'F_nv', model, 'A1', service)).toBeCloseTo(0.45 * 800e6, 0);
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
