import { describe, expect, it } from 'vitest';
import { boltCombined } from '../../core/checks/bolt-combined.ts';
import { allowable, design, fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const en = { A_s: 157e-6, A_b: 201.06e-6, threads: 1, f_ub: 800e6, alpha_v: 0.6, k_2: 0.9, gamma_M2: 1.25 };
const us = { A_b: 201.06e-6, F_nv: 372e6, F_nt: 620e6, Omega_J: 1 / 0.75 };
const bounds = { A_s: 157e-6, A_b: 201.06e-6, f_ub: 800e6 };

describe('bolt in shear and tension', () => {
  it('EN 1993-1-8 Table 3.4, M16 8.8 with 25 kN across and 50 kN along: 0.8096', () => {
    expect(valuesGiven(boltCombined, 'partial factors', { ...en, F_v: 25e3, F_t: 50e3 }).u).toBeCloseTo(0.80961, 4);
  });

  it("AISC 360 J3.7, M16 with 25 kN across carries 79.875 kN along (Omega = 1/phi): F'_nt = 529.69 MPa", () => {
    expect(valuesGiven(boltCombined, 'allowable stress', { ...us, F_v: 25e3, F_t: 79.875e3 }).u).toBeCloseTo(1, 4);
  });

  it('has one third more than both alone in neither direction: shear alone 1, tension alone 1/1.4 and 1/1.3', () => {
    const alone = valuesGiven(boltCombined, 'partial factors', { ...en, F_v: 60.288e3, F_t: 0 });
    expect(alone.u).toBeCloseTo(1, 6);
    expect(valuesGiven(boltCombined, 'partial factors', { ...en, F_v: 0, F_t: 90.432e3 }).u).toBeCloseTo(1 / 1.4, 6);
    expect(
      valuesGiven(boltCombined, 'allowable stress', { ...us, F_v: 0, F_t: 620e6 * 201.06e-6 * 0.75 }).u,
    ).toBeCloseTo(1 / 1.3, 6);
  });

  it('stays with the ellipse of the second opinion for every mixture', () => {
    for (let angle = 0; angle <= 90; angle += 5) {
      const [F_v, F_t] = [60e3 * Math.cos((angle * Math.PI) / 180), 90e3 * Math.sin((angle * Math.PI) / 180)];
      for (const [safety, given] of [
        ['partial factors', { ...en, ...bounds, gamma_R: 1.25 }],
        ['allowable stress', { ...us, ...bounds, gamma_R: 1 / 0.75 }],
      ] as const) {
        const { u, u_low, u_high } = valuesGiven(boltCombined, safety, { ...given, F_v, F_t });
        expect(u!).toBeGreaterThanOrEqual(u_low! * (1 - 1e-9));
        expect(u!).toBeLessThanOrEqual(u_high!);
      }
    }
  });

  it('bounds the straight rules by the ellipse: 0.714 of it (tension alone, EN) to 1.25 of it (1.229 at 35.5°, by hand)', () => {
    // Both ellipses are alike here: 0.5 and 0.56 of 100 kN below, 0.62 and all of 100 kN above.
    const given = { F_v: 30e3, F_t: 40e3, F_v_Rd: 50e3, F_t_Rd: 50e3, f_ub: 1e9, A_s: 1e-4, A_b: 1e-4, gamma_R: 1 };
    const { u_e, u_low, u_high, u_most, u_least } = valuesGiven(boltCombined, 'partial factors', given);
    expect(u_e).toBeCloseTo(1, 12);
    expect(u_most).toBeCloseTo(Math.hypot(30 / 50, 40 / 56), 12);
    expect(u_least).toBeCloseTo(Math.hypot(30 / 62, 40 / 100), 12);
    expect(u_low).toBeCloseTo(0.7142857, 6);
    expect(u_high).toBeCloseTo(1.25 * u_most!, 12);
    const strong = valuesGiven(boltCombined, 'partial factors', {
      ...given,
      F_v_Rd: 200e3,
      F_t_Rd: 200e3,
      gamma_R: 1.25,
    });
    expect(strong.u_low).toBeCloseTo((1.25 * u_least!) / 1.4, 12);
    expect(strong.u_high).toBeCloseTo(1.25 * 0.25, 12);
    expect(strong.u_most).toBeCloseTo(1.25 * u_most!, 12);
    const steepest = Math.atan(1 / 1.4);
    const worst = { F_v_Rd: 1, F_t_Rd: 1, F_v: Math.cos(steepest), F_t: Math.sin(steepest) };
    expect(valuesGiven(boltCombined, 'partial factors', worst).u).toBeCloseTo(Math.sqrt(1 + 1 / 1.4 ** 2), 9);
  });

  it('compares with 1, applies to bolts alone, and fails where two rows hold the panel and one is lost', () => {
    const model = modelWith((d) => Object.assign(d.panels, { A2: 'welded' }));
    const lost = situationOf(model, 'lost bolt row', 'down');
    expect(readOf(boltCombined, 'u_Rd', model, 'A1', lost)).toBe(1);
    expect(readOf(boltCombined, 'gamma_R', model, 'A1', lost)).toBe(1.25);
    const shank = modelWith(fixing({ threadsInShearPlane: false }));
    expect([model, shank].map((of) => readOf(boltCombined, 'threads', of, 'A1', lost))).toEqual([1, 0]);
    expect(readOf(boltCombined, 'gamma_R', allowable(model), 'A1', lost)).toBe(2);
    expect(boltCombined.applies(model, 'A1', lost)).toBe(true);
    expect(boltCombined.applies(model, 'A2', lost)).toBe('the panel is welded');
    expect(boltCombined.rule!(model, 'A1', lost)).toBeUndefined();
    expect(boltCombined.rule!(modelWith(design({ support: 'main tubes' })), 'A1', lost)).toMatch(/turns/);
  });
});
