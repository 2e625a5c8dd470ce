import { describe, expect, it } from 'vitest';
import { boltSlip } from '../../core/checks/bolt-slip.ts';
import { allowable, design, fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { expectBetween, expectUtilisationBounds, ofShear } from './bolt-utilisation.ts';
import { valuesGiven } from './bolt-values.ts';

describe('slip under reversing shear', () => {
  it('EN 1993-1-8, 3.9: M16 8.8, slip factor 0.3: preload 87.92 kN, 21.101 kN, and 17.261 kN under 20 kN of tension', () => {
    const given = { A_s: 157e-6, f_ub: 800e6, mu: 0.3, k_s: 1, gamma_M3: 1.25 };
    expect(valuesGiven(boltSlip, 'partial factors', { ...given, F_t: 0 }).F_pC! / 1e3).toBeCloseTo(87.92, 2);
    expect(valuesGiven(boltSlip, 'partial factors', { ...given, F_t: 0 }).F_s_Rd! / 1e3).toBeCloseTo(21.101, 2);
    expect(valuesGiven(boltSlip, 'partial factors', { ...given, F_t: 20e3 }).F_s_Rd! / 1e3).toBeCloseTo(17.261, 2);
    expect(valuesGiven(boltSlip, 'partial factors', { ...given, k_s: 0.85, F_t: 20e3 }).F_s_Rd! / 1e3).toBeCloseTo(
      17.261 * 0.85,
      2,
    );
    expect(valuesGiven(boltSlip, 'partial factors', { ...given, F_t: 120e3 }).F_s_Rd!).toBeLessThan(0);
  });

  it('AISC 360 J3.8: 3/4 in bolt of group A, class A faces, 28 kip of preload: 6.33 kip allowable in single shear (AISC Manual Table 7-3, from memory)', () => {
    const kip = 4448.2216;
    const given = { A_s: (28 * kip) / (0.7 * 827e6), f_ub: 827e6, mu: 0.3, k_s: 1, Omega_slip: 1.5 };
    expect(valuesGiven(boltSlip, 'allowable stress', { ...given, F_t: 0 }).F_s_Rd! / kip).toBeCloseTo(6.33, 2);
    // k_sc = 1 - 1.5 T_a / (1.13 T_b), J3.9: none is left at T_a = 1.13 T_b / 1.5.
    expect(valuesGiven(boltSlip, 'allowable stress', { ...given, F_t: (1.13 * 28 * kip) / 1.5 }).F_s_Rd).toBeCloseTo(
      0,
      6,
    );
  });

  it('A Beginner’s Guide to the Steel Construction Manual (2007), problem 4.1: 28 kip, slip factor 0.35, D_u 1.13: 11.1 kip nominal, 81 kip allowable on eleven bolts', () => {
    const kip = 4448.2216;
    const given = { A_s: (28 * kip) / (0.7 * 827e6), f_ub: 827e6, mu: 0.35, k_s: 1, F_t: 0 };
    const at = (Omega_slip: number) =>
      valuesGiven(boltSlip, 'allowable stress', { ...given, Omega_slip }).F_s_Rd! / kip;
    expect(at(1)).toBeCloseTo(11.1, 1);
    expect(Math.round(11 * at(1.5))).toBe(81);
  });

  it('bounds the resistance by friction under a preload a fifth short and under a bolt at yield (by hand)', () => {
    const given = { A_s: 157e-6, f_ub: 800e6, mu: 0.3, k_s: 1, gamma_M3: 1.25, gamma_R: 1.25 };
    const at = (change: Record<string, number>) => valuesGiven(boltSlip, 'partial factors', { ...given, ...change });
    // Preload 87.92 kN; a bolt at yield 100.48 kN.
    expect(at({ F_t: 20e3 }).R_low! / 1e3).toBeCloseTo((0.63 * 0.3 * (0.8 * 87.92 - 30)) / 1.25, 6);
    expect(at({ F_t: 20e3 }).R_high! / 1e3).toBeCloseTo((0.3 * (100.48 - 10)) / 1.25, 6);
    const loose = at({ F_t: 60e3 });
    expect(loose.C_low!).toBeLessThan(0);
    expect(loose.R_low).toBe(loose.F_s_Rd);
    expectUtilisationBounds(boltSlip, { ...ofShear, capacity: 'F_s_Rd' });
    for (const k_s of [0.63, 0.7, 0.85, 1])
      for (const F_t of [0, 20e3, 40e3, 46e3, 50e3, 80e3]) {
        const partial = at({ k_s, F_t });
        if (partial.F_s_Rd! > 0) expectBetween(partial, 'F_s_Rd');
        const { A_s, f_ub, mu } = given;
        const own = { A_s, f_ub, mu, k_s, F_t, Omega_slip: 1.5, gamma_R: 1.5 };
        const allowed = valuesGiven(boltSlip, 'allowable stress', own);
        if (allowed.F_s_Rd! > 0) expectBetween(allowed, 'F_s_Rd');
      }
  });

  it('fails clearance holes under the service load, leaves fitted bolts alone', () => {
    const clearance = modelWith(fixing({ shear: 'clearance' }));
    const service = situationOf(clearance, 'service', 'up');
    expect(boltSlip.applies(clearance, 'A1', service)).toBe(true);
    expect(boltSlip.rule!(clearance, 'A1', service)).toMatch(/2\.6/);
    expect(boltSlip.applies(clearance, 'A1', { ...service, loadCase: 'lift in air' })).toMatch(/does not reverse/);
    expect(boltSlip.applies(modelWith(fixing({ shear: 'fitted' })), 'A1', service)).toMatch(/fitted/);
    // An oversize hole is no hole of a fitted bolt.
    const loose = modelWith(fixing({ shear: 'fitted', hole: 'oversize' }));
    expect(boltSlip.applies(loose, 'A1', service)).toBe(true);
    expect(boltSlip.rule!(loose, 'A1', service)).toMatch(/called fitted, in oversize holes, .* 2\.6/);
    expect(boltSlip.applies(loose, 'A1', { ...service, loadCase: 'lift in air' })).toMatch(/does not reverse/);
    expect(boltSlip.applies(modelWith(), 'A1', { ...service, loadCase: 'lift in air' })).toBe(true);
    expect(boltSlip.rule!(modelWith(), 'A1', service)).toBeUndefined();
    expect(
      boltSlip.rule!(
        modelWith(design({ support: 'cross tubes' })),
        'A1',
        situationOf(clearance, 'lost bolt row', 'down'),
      ),
    ).toMatch(/turns/);
  });

  it('needs the slip factor, a class that may be preloaded, and tests for stainless bolts', () => {
    const service = situationOf(modelWith(), 'service', 'up');
    const without = modelWith(({ designs }) => delete (designs.bolted.fixing as { slipFactor?: unknown }).slipFactor);
    expect(readOf(boltSlip, 'mu', without, 'A1', service)).toMatch(/slipFactor/);
    expect(readOf(boltSlip, 'mu', modelWith(), 'A1', service)).toBe(0.3);
    expect(readOf(boltSlip, 'gamma_R', modelWith(), 'A1', service)).toBe(1.25);
    expect(readOf(boltSlip, 'gamma_R', allowable(modelWith()), 'A1', service)).toBe(1.5);
    expect(readOf(boltSlip, 'f_ub', modelWith(fixing({ class: 'A4-80' })), 'A1', service)).toMatch(/procedure tests/);
    expect(readOf(boltSlip, 'f_ub', modelWith(fixing({ class: '5.6' })), 'A1', service)).toMatch(/8\.8 and 10\.9/);
    expect(readOf(boltSlip, 'f_ub', modelWith(fixing({ class: 'ASTM A307' })), 'A1', service)).toMatch(
      /8\.8 and 10\.9/,
    );
    expect(readOf(boltSlip, 'f_ub', modelWith(fixing({ class: 'ASTM A325' })), 'A1', service)).toBe(827e6);
    expect(readOf(boltSlip, 'f_ub', modelWith(), 'A1', service)).toBe(800e6);
    expect(readOf(boltSlip, 'k_s', modelWith(fixing({ hole: 'oversize' })), 'A1', service)).toBe(0.85);
    expect(readOf(boltSlip, 'k_s', modelWith(), 'A1', service)).toBe(1);
  });

  it('has no preload below M12 where EN 14399 rules (from memory), and leaves inch bolts to AISC 360', () => {
    const service = situationOf(modelWith(), 'service', 'up');
    expect(readOf(boltSlip, 'f_ub', modelWith(fixing({ bolt: 'M10' })), 'A1', service)).toMatch(/below M12/);
    expect(readOf(boltSlip, 'f_ub', modelWith(fixing({ bolt: 'M12' })), 'A1', service)).toBe(800e6);
    const allowable = modelWith(fixing({ bolt: 'M10' }));
    const aisc = { ...allowable, basis: { ...allowable.basis, safety: 'allowable stress' as const } };
    expect(readOf(boltSlip, 'f_ub', aisc, 'A1', service)).toBe(800e6);
  });
});
