import { describe, expect, it } from 'vitest';
import { tubeBending } from '../../core/checks/tube-bending.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, missingFrom, reads, situationOf } from './model-of.ts';
import { outOfRangeWith } from './at.ts';

const solid = { n_h: 0, d_h: 0, f_u: 510e6 };
const S355 = { ...solid, f_y: 355e6, f_235: 235e6, gamma_M0: 1, gamma_M2: 1.25 };
const SHS100x5 = { round: 0, H: 0.1, B: 0.1, t: 0.005, A_v: 936.6e-6, W_el: 55.886e-6, W_pl: 66.358e-6 };
const kipInch = 112.9848; // N·m
const inch = 0.0254;
const ksi = 6.894757e6;
const inch3 = inch ** 3;

describe('tube in bending, EN 1993-1-1', () => {
  const at = (change: Record<string, number> = {}) =>
    valuesGiven(tubeBending, 'partial factors', { ...S355, ...SHS100x5, V: 0, M: 5e3, ...change });

  it('gives the plastic moment 23.557 kN·m and shear resistance 191.96 kN of a SHS 100×100×5 in S355 (6.2.5, 6.2.6, from memory; section by EN 10210-2)', () => {
    expect(at().M_Rd! / 1e3).toBeCloseTo(23.557, 3);
    expect(at().V_pl! / 1e3).toBeCloseTo(191.97, 1);
    expect(at({ gamma_M0: 1.1 }).M_Rd! / 1e3).toBeCloseTo(23.557 / 1.1, 3);
  });

  it('takes (2 V/V_pl − 1)² off from half the shear resistance on (6.2.8)', () => {
    const { V_pl, M_Rd } = at();
    expect(at({ V: 0.5 * V_pl! }).M_Rd).toBe(M_Rd);
    expect(at({ V: 0.75 * V_pl! }).M_Rd! / M_Rd!).toBeCloseTo(0.75, 9);
    expect(at({ V: V_pl! }).M_Rd).toBeCloseTo(0, 6);
  });

  // Table 5.2 from memory: flanges c/t ≤ 38ε, 42ε; webs 83ε, 124ε; round D/t ≤ 70ε², 90ε²; ε = 0.8136 for S355.
  it.each([
    ['flange of SHS 160×5, c/t = 29.0: class 2', { H: 0.16, B: 0.16, t: 0.005 }, 'plastic'],
    ['flange of SHS 180×5, c/t = 33.0: class 3', { H: 0.18, B: 0.18, t: 0.005 }, 'elastic'],
    ['flange of SHS 200×5, c/t = 37.0: class 4', { H: 0.2, B: 0.2, t: 0.005 }, 'slender'],
    ['web of RHS 280×100×4, c/t = 67.0: class 2', { H: 0.28, B: 0.1, t: 0.004 }, 'plastic'],
    ['web of RHS 300×100×4, c/t = 72.0: class 3', { H: 0.3, B: 0.1, t: 0.004 }, 'elastic'],
    ['web of RHS 412×100×4, c/t = 100.0: class 3', { H: 0.412, B: 0.1, t: 0.004 }, 'elastic'],
    ['web of RHS 420×100×4, c/t = 102.0: class 4', { H: 0.42, B: 0.1, t: 0.004 }, 'slender'],
    ['CHS 219.1×5, D/t = 43.8: class 2', { round: 1, H: 0.2191, B: 0.2191, t: 0.005 }, 'plastic'],
    ['CHS 244.5×5, D/t = 48.9: class 3', { round: 1, H: 0.2445, B: 0.2445, t: 0.005 }, 'elastic'],
    ['CHS 295×5, D/t = 59.0: class 3', { round: 1, H: 0.295, B: 0.295, t: 0.005 }, 'elastic'],
    ['CHS 323.9×5, D/t = 64.8: class 4', { round: 1, H: 0.3239, B: 0.3239, t: 0.005 }, 'slender'],
  ] as const)('classes the %s', (_, size, expected) => {
    const { W, W_pl, W_el } = at(size);

    const range = outOfRangeWith(tubeBending, 'partial factors', {
      ...SHS100x5,
      ...size,
      ...S355,
      M: 1,
      V: 0,
      M_statics: 1,
    });
    if (expected === 'slender') expect(range).toMatch(/class 4/);
    else {
      expect(range).toBeUndefined();
      expect(W).toBe(expected === 'plastic' ? W_pl : W_el);
    }
  });
});

describe('tube in bending, AISC 360 F7 and F8', () => {
  const A500 = { ...solid, f_y: 46 * ksi, E: 29000 * ksi, Omega_b: 1.67, round: 0 };

  it('gives 53.2 kip·in for a compact HSS 3½×3½×⅛, Z 1.93 in³ (AISC Design Examples, F.6, from memory)', () => {
    const t = 0.116 * inch;
    const { M_n, M_Rd } = valuesGiven(tubeBending, 'allowable stress', {
      ...A500,
      H: 3.5 * inch,
      B: 3.5 * inch,
      t,
      W_pl: 1.93 * inch3,
      W_el: 1.66 * inch3,
    });
    expect(M_n! / kipInch).toBeCloseTo(88.8, 1);
    expect(M_Rd! / kipInch).toBeCloseTo(53.2, 1);
  });

  it('gives 760 and 455 kip·in for a HSS 10×6×3/16 whose flange is not compact, b/t 31.5 (AISC Design Examples, F.7, from memory)', () => {
    const t = 0.174 * inch;
    const { M_n, M_f, M_Rd } = valuesGiven(tubeBending, 'allowable stress', {
      ...A500,
      H: 57.5 * t,
      B: 34.5 * t,
      t,
      W_pl: 18 * inch3,
      W_el: 14.9 * inch3,
    });
    expect(M_n).toBe(M_f);
    expect(M_n! / kipInch / 10).toBeCloseTo(76.0, 1);
    expect(M_Rd! / kipInch).toBeCloseTo(455, 0);
  });

  it('lets the web take the moment from plastic at 2.42 √(E/F_y) to first yield at 5.70 √(E/F_y) (F7-6 as printed in Brockenbrough and Merritt, Structural Steel Designer’s Handbook, 4th ed., 5.5.5; limits of AISC 360 [2005], Table B4.1)', () => {
    const t = 0.004;
    const root = Math.sqrt(29000 / 46);
    const at = (web: number) =>
      valuesGiven(tubeBending, 'allowable stress', {
        ...A500,
        H: (web * root + 3) * t,
        B: 0.06,
        t,
        W_pl: 130e-6,
        W_el: 100e-6,
      });
    expect(at(2.4199).M_n).toBe(at(1).M_p);
    expect(at(2.43).M_n! / at(1).M_p!).toBeLessThan(1);
    expect(at(2.43).M_n! / at(1).M_p!).toBeGreaterThan(0.995);
    expect(at(5.699).M_n! / (46 * ksi * 100e-6)).toBeCloseTo(1, 3);
    expect(at(5.699).r_3).toBeLessThan(1);
    expect(at(5.701).r_3).toBeGreaterThan(1);
  });

  it('lets the flange do so from 1.12 to 1.40 (F7-2 as printed there; limits of AISC 360 [2005], Table B4.1)', () => {
    const t = 0.004;
    const root = Math.sqrt(29000 / 46);
    const at = (flange: number) =>
      valuesGiven(tubeBending, 'allowable stress', {
        ...A500,
        B: (flange * root + 3) * t,
        H: 0.06,
        t,
        W_pl: 130e-6,
        W_el: 100e-6,
      });
    expect(at(1.119).M_n).toBe(at(1).M_p);
    expect(at(1.13).M_n! / at(1).M_p!).toBeLessThan(1);
    expect(at(1.399).M_n! / (46 * ksi * 100e-6)).toBeCloseTo(1, 2);
    expect([at(1.399).r_3! < 1, at(1.401).r_3! > 1]).toEqual([true, true]);
  });

  it('gives (0.021 E/(D/t) + F_y) S for a round wall beyond 0.07 E/F_y, its limit at 0.31 E/F_y (F8-2, worked by hand)', () => {
    const at = (slenderness: number) =>
      valuesGiven(tubeBending, 'allowable stress', {
        ...A500,
        f_y: 42 * ksi,
        round: 1,
        H: slenderness * 0.005,
        B: slenderness * 0.005,
        t: 0.005,
        W_pl: 128e-6,
        W_el: 100e-6,
      });
    expect(at(48.2).M_n).toBe(at(20).M_p);
    expect(at(60).M_n! / (100e-6 * ksi)).toBeCloseTo(52.15, 2);
    expect([at(214).r_3! < 1, at(214.2).r_3! > 1]).toEqual([true, true]);
  });
});

describe('what it reads from the model', () => {
  const model = demoModel();

  it('takes the walls at the end of life: 0.5 mm outside, 0.2 mm inside a flooded tube, none inside a sealed one', () => {
    expect(reads(tubeBending, 't', model, 'A')).toBeCloseTo(0.008 - 0.0005 - 0.0002, 12);
    expect(reads(tubeBending, 'H', model, 'A')).toBeCloseTo(0.149, 12);
    const sealed = demoModel({ grid: { mainTubes: { flooding: 'sealed', vent: null, drain: null } } });
    expect(reads(tubeBending, 't', sealed, 'A')).toBeCloseTo(0.0075, 12);
    expect(reads(tubeBending, 't', sealed, '1')).toBeCloseTo(0.0073, 12);
  });

  it('reads the section itself where nothing corrodes: W_el 199, W_pl 237 cm³, A 44.8 cm² of SHS 150×150×8 as EN 10210-2 prints them (from memory)', () => {
    const kept = demoModel({ protection: { lossPerFace: { tubeOutside: '0 mm', tubeInside: '0 mm' } } });
    expect(reads(tubeBending, 'W_el', kept, 'A') * 1e6).toBeCloseTo(199, 0);
    expect(reads(tubeBending, 'W_pl', kept, 'A') * 1e6).toBeCloseTo(237, 0);
    expect(reads(tubeBending, 'A_v', kept, 'A') * 1e4).toBeCloseTo(44.8 / 2, 1);
    expect(reads(tubeBending, 'f_y', kept, 'A')).toBe(355e6);
    expect(reads(tubeBending, 'round', kept, 'A')).toBe(0);
  });

  it('reads moment, shear and the bound of statics from the situation', () => {
    const situation = situationOf(model, 'service-down');
    const { moment, shear, momentBound } = situation.tubes.get('A')!;
    expect(reads(tubeBending, 'M', model, 'A', situation)).toBe(moment);
    expect(reads(tubeBending, 'V', model, 'A', situation)).toBe(shear);
    expect(reads(tubeBending, 'M_statics', model, 'A', situation)).toBe(momentBound);
    expect(missingFrom(tubeBending, 'M', model, 'A', { ...situation, tubes: new Map() })).toMatch(
      /forces inside tube A/,
    );
  });

  it('has no rule for tubes of aluminium', () => {
    const aluminium = demoModel({ grid: { mainTubes: { material: '6082-T6 extruded' } } });
    expect(missingFrom(tubeBending, 'f_y', aluminium, 'A')).toMatch(/carbon steel/);
  });
});

describe('near the limits', () => {
  it('takes 1 % off at 0.55 of the shear resistance, which γ_M0 divides (6.2.8)', () => {
    const at = (V: number, gamma_M0 = 1) =>
      valuesGiven(tubeBending, 'partial factors', { ...S355, ...SHS100x5, V, gamma_M0 });
    expect(at(0.55 * at(0).V_pl!).M_Rd! / at(0).M_Rd!).toBeCloseTo(0.99, 9);
    expect(at(0, 1.1).V_pl! / 1e3).toBeCloseTo(191.97 / 1.1, 1);
  });

  it('leaves the plastic moment of a round wall at D/t = 0.07 E/F_y = 44.1 of 46 ksi (AISC 360 [2005], Table B4.1)', () => {
    const at = (slenderness: number) =>
      valuesGiven(tubeBending, 'allowable stress', {
        ...solid,
        f_y: 46 * ksi,
        E: 29000 * ksi,
        Omega_b: 1.67,
        round: 1,
        H: slenderness * 0.005,
        B: 1,
        t: 0.005,
        W_pl: 200e-6,
        W_el: 100e-6,
      });
    expect(at(44).M_n).toBe(at(44).M_p);
    expect(at(45).M_n! / at(45).M_p!).toBeCloseTo((0.021 * 29000) / 45 / 92 + 0.5, 9);
  });

  it('reads modulus, width and the reference of the class limits', () => {
    const flat = demoModel({ grid: { mainTubes: { section: 'RHS 150x100x6.3 hot' } } });
    expect(reads(tubeBending, 'E', flat, 'A')).toBe(210e9);
    expect(reads(tubeBending, 'B', flat, 'A')).toBeCloseTo(0.099, 12);
    expect(reads(tubeBending, 'f_235', flat, 'A')).toBe(235e6);
    expect(reads(tubeBending, 'round', demoModel({ grid: { mainTubes: { section: 'CHS 168.3x6.3 hot' } } }), 'A')).toBe(
      1,
    );
  });
});

describe('bolts of panels through the flanges', () => {
  const en = (change: Record<string, number>) =>
    valuesGiven(tubeBending, 'partial factors', { ...S355, ...SHS100x5, V: 0, d_h: 0.011, ...change });

  it('takes 5.225 cm³ off for each row of 11 mm holes in both flanges of a SHS 100×100×5 (by hand: 1.1 · 0.5 · 9.5)', () => {
    expect(en({ n_h: 0 }).M_Rd! / 1e3).toBeCloseTo(23.557, 3);
    expect(en({ n_h: 1 }).W! * 1e6).toBeCloseTo(66.358 - 5.225, 6);
    expect(en({ n_h: 2 }).W! * 1e6).toBeCloseTo(66.358 - 10.45, 6);
    expect(en({ n_h: 2 }).W_el_n! * 1e6).toBeCloseTo(55.886 - 10.45, 6);
    expect(en({ n_h: 2 }).M_Rd! / 1e3).toBeCloseTo(55.908 * 0.355, 6);
  });

  it('takes off no less than the exact elastic section with one flange drilled (by hand: parallel axes)', () => {
    const [A, I, h] = [18.732, 279.43, 4.75];
    for (const n_h of [1, 2, 3]) {
      const gone = n_h * 1.1 * 0.5;
      const shift = (gone * h) / (A - gone);
      const exact = (I - gone * h ** 2 - (A - gone) * shift ** 2) / (5 + shift);
      expect(en({ n_h }).W_el_n! * 1e6).toBeLessThan(exact);
    }
  });

  it('rules by rupture beside the hole where 0.9 f_u/γ_M2 is less than f_y/γ_M0: S460, 540 MPa (6.2.5(4), from memory)', () => {
    const S460 = { f_y: 460e6, f_u: 540e6 };
    expect(en({ ...S460, n_h: 1 }).f_d! / 1e6).toBeCloseTo(388.8, 9);
    expect(en({ ...S460, n_h: 0 }).f_d! / 1e6).toBeCloseTo(460, 9);
    expect(en({ n_h: 1, gamma_M0: 1.1 }).f_d! / 1e6).toBeCloseTo(355 / 1.1, 9);
  });

  it('limits the moment to F_u A_fn/A_fg S where F_u A_fn < Y_t F_y A_fg, Y_t 1.1 above F_y/F_u 0.8 (AISC 360 F13.1, as printed in Brockenbrough and Merritt, 5.5.8)', () => {
    const asd = (change: Record<string, number>) =>
      valuesGiven(tubeBending, 'allowable stress', {
        ...{ round: 0, H: 0.1, B: 0.1, t: 0.005, W_el: 55.886e-6, W_pl: 66.358e-6 },
        ...{ f_y: 46 * ksi, f_u: 58 * ksi, E: 29000 * ksi, Omega_b: 1.67, n_h: 2, d_h: 0.011 },
        ...change,
      });
    expect(asd({}).M_n! / (46 * ksi)).toBeCloseTo(55.908e-6, 12);
    expect(asd({}).M_r! / (58 * ksi)).toBeCloseTo(0.78 * 55.886e-6, 12);
    expect(asd({}).M_Rd).toBeCloseTo(asd({}).M_r! / 1.67, 6);
    expect(asd({ n_h: 1 }).M_r).toBe(asd({ n_h: 1 }).M_n);
    expect(asd({ n_h: 0, f_u: 46 * ksi }).M_r).toBe(asd({ n_h: 0 }).M_n);
    expect([asd({}).Y_t, asd({ f_y: 46.5 * ksi }).Y_t]).toEqual([1, 1.1]);
  });

  it('cannot be judged when nothing is left of the flange', () => {
    const at = (n_h: number, d_h: number) =>
      outOfRangeWith(tubeBending, 'partial factors', {
        ...S355,
        ...SHS100x5,
        M: 1,
        V: 0,
        M_statics: 1,
        n_h,
        d_h,
      });
    expect(at(3, 0.0299)).toBeUndefined();
    expect(at(3, 0.0301)).toMatch(/whole flange/);
  });

  it('counts the rows at one section: one at an outer tube, two between neighbours, none for studs', () => {
    const rows = (tube: string, ...changes: unknown[]) => reads(tubeBending, 'n_h', demoModel(...changes), tube);
    const into = (name: string) => ({ designs: { deck: { fixing: { into: name } } } });
    // Panels A1, A3, B1, B3: tube A has them on one side, B between, 2 at the end of A1 only.
    for (const how of ['one-sided', 'through-bolt with sleeve']) {
      expect(['A', 'B', 'C'].map((tube) => rows(tube, into(how)))).toEqual([1, 2, 1]);
      expect(['1', '2', '3', '4'].map((tube) => rows(tube, into(how)))).toEqual([1, 1, 1, 1]);
    }
    expect(rows('B', into('welded stud'))).toBe(0);
    expect(rows('2', { panels: { A2: 'deck' } })).toBe(2);
    expect(reads(tubeBending, 'd_h', demoModel(), 'B')).toBeCloseTo(demoModel().panels.get('A1')!.bolts[0]!.hole, 12);
    expect(reads(tubeBending, 'd_h', demoModel(into('welded stud')), 'B')).toBe(0);
  });

  it('counts rows of the two faces apart, unless the bolts go through both', () => {
    const mixed = (how: string) =>
      demoModel({
        designs: { deck: { fixing: { into: how } }, under: { ...underside(how) } },
        panels: { B1: 'under', B3: 'under' },
      });
    expect(reads(tubeBending, 'n_h', mixed('one-sided'), 'B')).toBe(1);
    expect(reads(tubeBending, 'n_h', mixed('through-bolt with sleeve'), 'B')).toBe(2);
  });

  it('reads the ultimate strength of the tube: S355H of EN 10210-1 has 470 MPa at least (from memory)', () => {
    expect(reads(tubeBending, 'f_u', demoModel(), 'A')).toBe(470e6);
  });
});

const underside = (into: string) => ({
  side: 'underside',
  thickness: '10 mm',
  material: 'S355 plate',
  overlap: { onMain: '60 mm', onCross: '60 mm' },
  support: 'four sides',
  fixing: {
    ...{ kind: 'bolted', bolt: 'M12', class: '8.8', pitch: '200 mm', edgeDistance: '30 mm', shear: 'clearance', into },
  },
});
