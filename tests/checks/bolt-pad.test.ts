import { describe, expect, it } from 'vitest';
import { boltPadWeld } from '../../core/checks/bolt-pad-weld.ts';
import { boltThreadEngagement } from '../../core/checks/bolt-thread-engagement.ts';
import { allowable, fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { expectBetween, expectUtilisationBounds, ofShear, ofTension } from './bolt-utilisation.ts';
import { valuesGiven } from './bolt-values.ts';

const pad = { into: 'tapped pad', pad: { material: 'S355 plate', thickness: '12 mm', width: '36 mm', throat: '4 mm' } };
const model = modelWith(fixing(pad));
const down = situationOf(model, 'service', 'down');

describe('thread in the pad', () => {
  it.each([
    [12, 1.75, 23.811, 32.987],
    [16, 2, 32.598, 43.982],
  ])('strips on the areas of FED-STD-H28 for M%i × %f: %f and %f mm² a millimetre (recomputed)', (d, P, bolt, nut) => {
    const v = valuesGiven(boltThreadEngagement, 'partial factors', { d: d / 1e3, P: P / 1e3, L_e: 1e-3 });
    expect(v.A_sb! * 1e6).toBeCloseTo(bolt, 2);
    expect(v.A_sp! * 1e6).toBeCloseTo(nut, 2);
  });

  it('takes the weaker thread: M12 of class 8.8, 12 mm of 470 MPa: 0.6 · 470 · 395.8/1.25 = 89.3 kN; of 800 MPa, 0.6 · 800 · 285.7/1.25 = 109.7 kN', () => {
    const m12 = { d: 0.012, P: 0.00175, L_e: 0.012, f_ub: 800e6, f_ud: 470e6 };
    const at = (f_ud: number) => valuesGiven(boltThreadEngagement, 'partial factors', { ...m12, f_ud, gamma_M2: 1.25, gamma_R: 1.25 }); // prettier-ignore
    expect(at(470e6).F_th_Rd! / 1e3).toBeCloseTo(89.3, 1);
    expect(at(800e6).F_th_Rd! / 1e3).toBeCloseTo(109.7, 1);
    for (const f_ud of [100e6, 470e6, 800e6, 1000e6]) expectBetween(at(f_ud), 'F_th_Rd');
    const asd = valuesGiven(boltThreadEngagement, 'allowable stress', { ...m12, Omega_J: 2, gamma_R: 2 });
    expect(asd.F_th_Rd! / 1e3).toBeCloseTo((89.3 * 1.25) / 2, 1);
    expectUtilisationBounds(boltThreadEngagement, { ...ofTension, capacity: 'F_th_Rd' });
  });

  it('reads pad and thread, and says what is missing', () => {
    expect(boltThreadEngagement.applies(model, 'A1', down)).toBe(true);
    expect(readOf(boltThreadEngagement, 'L_e', model, 'A1', down)).toBe(0.012);
    expect(readOf(boltThreadEngagement, 'P', model, 'A1', down)).toBe(0.00175);
    expect(readOf(boltThreadEngagement, 'f_ud', model, 'A1', down)).toBe(470e6);
    expect(readOf(boltThreadEngagement, 'gamma_R', allowable(model), 'A1', down)).toBe(2);
    const without = modelWith(fixing({ into: 'tapped pad' }));
    for (const symbol of ['L_e', 'f_ud']) expect(readOf(boltThreadEngagement, symbol, without, 'A1', down)).toMatch(/"pad"/); // prettier-ignore
    expect(boltThreadEngagement.applies(modelWith(), 'A1', down)).toMatch(/tapped pad/);
  });
});

describe('weld of the pad', () => {
  it('carries shear on two runs: 2 · 4 · 36 mm² at 470/(√3 · 0.9 · 1.25) = 241.2 MPa, 69.47 kN (EN 1993-1-8, 4.5.3.3)', () => {
    const given = { a_d: 0.004, b_d: 0.036, f_uj: 470e6 };
    const en = valuesGiven(boltPadWeld, 'partial factors', { ...given, beta_w: 0.9, gamma_M2: 1.25, gamma_R: 1.25 });
    expect(en.F_w_Rd! / 1e3).toBeCloseTo(69.47, 2);
    expectBetween(en, 'F_w_Rd');
    const asd = valuesGiven(boltPadWeld, 'allowable stress', { ...given, Omega_J: 2, gamma_R: 2 });
    expect(asd.F_w_Rd! / 1e3).toBeCloseTo(0.3 * 0.47 * 288, 6);
    expectBetween(asd, 'F_w_Rd');
    expectUtilisationBounds(boltPadWeld, { ...ofShear, capacity: 'F_w_Rd' });
  });

  it('reads pad, weld and strengths', () => {
    const read = (symbol: string) => readOf(boltPadWeld, symbol, model, 'A1', down);
    expect([read('a_d'), read('b_d'), read('beta_w')]).toEqual([0.004, expect.closeTo(0.036, 15), 0.9]);
    expect(read('f_uj')).toBe(470e6);
    expect(read('gamma_R')).toBe(1.25);
    expect(boltPadWeld.rule!(model, 'A1', down)).toBeUndefined();
    const light = modelWith(fixing({ into: 'tapped pad', pad: { ...pad.pad, material: '6082-T6 plate' } }));
    expect(boltPadWeld.rule!(light, 'A1', down)).toMatch(/cannot be welded/);
  });
});
