import { describe, expect, it } from 'vitest';
import { tubeAxialBending } from '../../core/checks/tube-axial-bending.ts';
import { outOfRangeWith } from './at.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { tubeBending } from '../../core/checks/tube-bending.ts';
import { standardSections } from '../../core/catalogue/standard-sections.ts';
import type { Safety } from '../../core/source.ts';
import { tubeTorsion } from '../../core/checks/tube-torsion.ts';

const ksi = 6.894757e6;
const SHS100x5 = {
  round: 0,
  H: 0.1,
  B: 0.1,
  t: 0.005,
  A: 18.732e-4,
  I_min: 279.43e-8,
  W_el: 55.886e-6,
  W_pl: 66.358e-6,
  n_h: 0,
  d_h: 0,
  f_u: 510e6,
  f_y: 355e6,
  C_m: 1,
};
const S355 = { ...SHS100x5, f_235: 235e6, E: 210e9, alpha: 0.21, gamma_M0: 1, gamma_M1: 1, gamma_M2: 1.25 };

describe('EN 1993-1-1, 6.3.3', () => {
  const at = (change: Record<string, number> = {}) =>
    valuesGiven(tubeAxialBending, 'partial factors', { ...S355, N: 1e5, M: 8e3, L_cr: 4, ...change });

  it('gives λ̄ 1.35541, χ 0.44039, k_yy 1.273174 and 0.773838 for SHS 100×100×5, 4 m, 100 kN and 8 kN·m (method 2; formulas from memory, worked independently)', () => {
    const { N_cr, lambda_bar, chi, n, k_yy, u } = at();
    expect(N_cr! / 1e3).toBeCloseTo(361.97, 2);
    expect(lambda_bar).toBeCloseTo(1.35541, 5);
    expect(chi).toBeCloseTo(0.44039, 5);
    expect(n).toBeCloseTo(0.341468, 5);
    expect(k_yy).toBeCloseTo(1.273174, 5);
    expect(u).toBeCloseTo(0.773838, 5);
  });

  it.each([
    [0.13, [0.9701, 0.7253, 0.2323]],
    [0.21, [0.9528, 0.6656, 0.2229]],
    [0.49, [0.8973, 0.5399, 0.1962]],
  ] as const)('gives the reductions of the curve with α = %d at λ̄ = 0.4, 1 and 2 (Figure 6.4)', (alpha, chis) => {
    const chi = (lambda: number) =>
      at({ alpha, L_cr: Math.sqrt((Math.PI ** 2 * 210e9 * 279.43e-8 * lambda ** 2) / (18.732e-4 * 355e6)) }).chi!;
    [0.4, 1, 2].forEach((lambda, i) => expect(chi(lambda)).toBeCloseTo(chis[i]!, 4));
    expect(chi(0.15)).toBe(1);
  });

  it('divides both parts by γ_M1, and caps k_yy at 1 + 0.8 n', () => {
    expect(at({ gamma_M1: 1.1, M: 0 }).u! / at({ M: 0 }).u!).toBeCloseTo(1.1, 9);
    expect(at({ gamma_M1: 1.1, N: 1 }).r_M! / at({ N: 1 }).r_M!).toBeCloseTo(1.1, 9);
    const { n, k_yy } = at({ L_cr: 12 });
    expect(k_yy).toBeCloseTo(1 + 0.8 * n!, 12);
    expect(at({ C_m: 0.5 }).k_yy).toBeCloseTo(1.273174 / 2, 5);
  });

  it('classes every wall as pressed evenly: 38 ε and 42 ε (Table 5.2, from memory)', () => {
    expect(at({ H: 0.16, B: 0.1 }).W).toBe(66.358e-6);
    expect(at({ H: 0.18, B: 0.1 }).W).toBe(55.886e-6);
    const range = (size: Record<string, number>) =>
      outOfRangeWith(tubeAxialBending, 'partial factors', { ...S355, N: 1, M: 1, L_cr: 4, ...size });
    expect([range({ H: 0.18 }), range({ H: 0.2 })]).toEqual([undefined, expect.stringMatching(/class 4/)]);
    expect([range({ round: 1, H: 0.295 }), range({ round: 1, H: 0.3 })]).toEqual([
      undefined,
      expect.stringMatching(/class 4/),
    ]);
    expect(at({ round: 1, H: 0.23 }).W).toBe(66.358e-6);
    expect(at({ round: 1, H: 0.24 }).W).toBe(55.886e-6);
  });
});

describe('AISC 360, E3 and H1', () => {
  // A strut of 50 ksi: slenderness L/r by its length, r² = I/A.
  const strut = { ...SHS100x5, f_y: 50 * ksi, E: 29000 * ksi, Omega_b: 1.67, Omega_J: 2 };
  const at = (slenderness: number, change: Record<string, number> = {}) =>
    valuesGiven(tubeAxialBending, 'allowable stress', {
      ...strut,
      N: 1e4,
      M: 0,
      L_cr: (slenderness * Math.sqrt(279.43 / 18.732)) / 100,
      ...change,
    });

  it('gives the allowable stress 3.76 ksi at L/r = 200 (AISC Manual, Table 4-22 [2005], F_y 50 ksi, from memory) and 24.07 ksi nominal at 100 (E3-2, worked by hand)', () => {
    expect(at(200).F_cr! / ksi / 1.67).toBeCloseTo(3.76, 2);
    expect(at(100).F_cr! / ksi).toBeCloseTo(24.07, 2);
    expect(at(133).F_cr! / at(134).F_cr!).toBeCloseTo(134 ** 2 / 133 ** 2, 2);
  });

  it('interacts as H1-1a above a fifth, H1-1b below, the moment grown by 1/(1 − 1.6 N/N_e)', () => {
    const F = at(100).F_cr!;
    const N = (part: number) => (part * F * 18.732e-4) / 1.67;
    const M = (0.3 * 66.358e-6 * 50 * ksi) / 1.67;
    const grown = (part: number) => 0.3 / (1 - (1.6 * N(part)) / at(100).N_cr!);
    expect(at(100, { N: N(0.5), M }).u).toBeCloseTo(0.5 + (8 / 9) * grown(0.5), 9);
    expect(at(100, { N: N(0.1), M }).u).toBeCloseTo(0.05 + grown(0.1), 9);
    expect(at(100, { N: N(0.1), M, C_m: 0.5 }).u).toBeCloseTo(0.05 + grown(0.1) / 2, 9);
  });

  it('fails, and stays finite, near and past the elastic buckling force', () => {
    const { N_cr } = at(200);
    for (const part of [0.57, 0.7, 1, 3]) expect(at(200, { N: part * N_cr!, M: 1e3 }).u).toBeGreaterThan(1);
  });
});

describe('what it reads from the model', () => {
  const model = demoModel();
  const situation = situationOf(model, 'service-down');

  it('takes the whole tube as the buckling length: 3 spacings of 1.1 m and two overhangs of 75 mm', () => {
    expect(reads(tubeAxialBending, 'L_cr', model, 'A')).toBeCloseTo(3 * 1.1 + 0.15, 9);
  });

  it('takes curve a for hot finished, a0 for S460, c for cold formed', () => {
    const alpha = (section: string, material: string) =>
      reads(tubeAxialBending, 'alpha', demoModel({ grid: { mainTubes: { section, material } } }), 'A');
    expect(alpha('SHS 150x150x8 hot', 'S355H hot finished')).toBe(0.21);
    expect(alpha('SHS 150x150x8 hot', 'S460NH hot finished')).toBe(0.13);
    expect(alpha('SHS 150x150x8 cold', 'S355H cold formed')).toBe(0.49);
  });

  it('takes the weaker axis of a rectangular tube', () => {
    const flat = demoModel({
      grid: { mainTubes: { section: 'RHS 150x100x6.3 hot' } },
      protection: { lossPerFace: { tubeOutside: '0 mm', tubeInside: '0 mm' } },
    });
    expect(reads(tubeAxialBending, 'I_min', flat, 'A') * 1e8).toBeCloseTo(474.1, 0);
  });

  it('applies only where something pushes along the tube', () => {
    const pushed = [...situation.tubes].filter(([, { axial }]) => axial !== 0).map(([id]) => id);
    expect(pushed.length).toBeGreaterThan(0);
    for (const id of model.tubes.keys())
      expect(tubeAxialBending.applies(model, id, situation) === true).toBe(pushed.includes(id));
  });
});

describe('near the limits', () => {
  const en = (change: Record<string, number>) =>
    valuesGiven(tubeAxialBending, 'partial factors', { ...S355, N: 1e5, M: 8e3, L_cr: 2, ...change });
  const asd = (slenderness: number, change: Record<string, number> = {}) =>
    valuesGiven(tubeAxialBending, 'allowable stress', {
      ...SHS100x5,
      f_y: 50 * ksi,
      E: 29000 * ksi,
      ...{ Omega_b: 1.67, Omega_J: 2 },
      N: 1e4,
      M: 0,
      L_cr: (slenderness * Math.sqrt(279.43 / 18.732)) / 100,
      ...change,
    });

  it('begins to reduce at λ̄ = 0.2, and grows the moment by 1 + (λ̄ − 0.2) n below λ̄ = 1 (Table B.1)', () => {
    const { lambda_bar, n, k_yy, u_Rd } = en({});
    expect(lambda_bar).toBeCloseTo(1.35541 / 2, 5);
    expect(k_yy).toBeCloseTo(1 + (1.35541 / 2 - 0.2) * n!, 5);
    expect(u_Rd).toBe(1);
    expect(en({ L_cr: (4 * 0.22) / 1.35541 }).chi).toBeLessThan(1);
  });

  it('passes from inelastic to elastic buckling at F_y/F_e = 2.25: 0.877 F_e = 16.865 ksi at L/r = 122, 18.980 at 115 (E3-3, worked by hand)', () => {
    expect(asd(122).F_cr! / ksi).toBeCloseTo(16.865, 2);
    expect(asd(115).F_cr! / ksi).toBeCloseTo(18.98, 2);
    expect(asd(122).r_N).toBeCloseTo((1e4 * 1.67) / (18.732e-4 * 50 * ksi), 9);
  });

  it('takes H1-1a from a fifth on, with the shape of the moment, and fails by 1 more with ten times the moment from 1.6 N/N_e = 0.9 on', () => {
    const N = (0.22 * asd(100).F_cr! * 18.732e-4) / 1.67;
    const M = (0.3 * 66.358e-6 * 50 * ksi) / 1.67;
    const grown = 0.3 / (1 - (1.6 * N) / asd(100).N_cr!);
    expect(asd(100, { N, M }).u).toBeCloseTo(0.22 + (8 / 9) * grown, 9);
    expect(asd(100, { N, M, C_m: 0.5 }).u).toBeCloseTo(0.22 + (4 / 9) * grown, 9);
    // E3-3: F_cr = 0.877 F_e, so that r_c = 1.67 · 0.95/(1.6 · 0.877) = 1.13063.
    const near = { N: (0.95 / 1.6) * asd(200).N_cr! };
    expect(asd(200, near).u).toBeCloseTo(2.13063, 5);
    expect(asd(200, { ...near, M, C_m: 0.5 }).u).toBeCloseTo(2.13063 + (8 / 9) * 10 * 0.15, 5);
    const before = asd(200, { N: (0.8999 / 1.6) * asd(200).N_cr!, M });
    expect(before.u).toBeCloseTo(before.r_c! + ((8 / 9) * 0.3) / 0.1001, 9);
  });

  it('takes an even moment, and every other number from where bending takes it', () => {
    expect(reads(tubeAxialBending, 'C_m', demoModel(), 'A')).toBe(1);
    for (const symbol of ['M', 'round', 'H', 'B', 't', 'W_el', 'W_pl', 'n_h', 'd_h', 'E', 'f_y', 'f_u', 'f_235'])
      expect(tubeAxialBending.inputs[symbol]!.read, symbol).toBe(tubeBending.inputs[symbol]!.read);
    for (const symbol of ['N', 'A'])
      expect(tubeAxialBending.inputs[symbol]!.read, symbol).toBe(tubeTorsion.inputs[symbol]!.read);
  });
});

describe('bolts of panels through the flanges', () => {
  // SHS 100×100×5 with two rows of 11 mm holes, each through both flanges: A 16.532, W_el 45.436, W_pl 55.908 cm³ (by hand).
  const drilled = { n_h: 2, d_h: 0.011 };
  const en = (change: Record<string, number>) =>
    valuesGiven(tubeAxialBending, 'partial factors', { ...S355, N: 1e5, M: 8e3, L_cr: 4, ...change });
  const asd = (change: Record<string, number> = {}) =>
    valuesGiven(tubeAxialBending, 'allowable stress', {
      ...{ ...SHS100x5, f_y: 46 * ksi, f_u: 58 * ksi, E: 29000 * ksi, Omega_b: 1.67, Omega_J: 2 },
      ...{ N: 1e5, M: 5e3, L_cr: 1, ...drilled, ...change },
    });

  it('takes the moment by the net section, and the thrust that buckles by the whole one (EN 1993-1-1, 6.3.1.1(4), from memory)', () => {
    expect(en(drilled).r_M! / en({}).r_M!).toBeCloseTo(66.358 / 55.908, 9);
    expect(en(drilled).n).toBe(en({}).n);
  });

  it('rules by rupture beside the holes: 0.9 · 540/1.25 = 388.8 MPa in S460 on area and modulus left (6.2.3(2), 6.2.5(4), from memory; worked by hand)', () => {
    const S460 = { f_y: 460e6, f_u: 540e6, L_cr: 0.1 };
    expect(en({ ...S460, ...drilled }).u).toBeCloseTo(1e5 / (1653.2 * 388.8) + 8e3 / (55.908 * 388.8), 6);
    expect(en({ ...S460, ...drilled, M: 0 }).u).toBeCloseTo(0.155578, 6);
    expect(en({ ...S460, n_h: 0, M: 0 }).u).toBeCloseTo(1e5 / (1873.2 * 460), 6);
    expect(en({ ...drilled, L_cr: 0.1, M: 0, gamma_M0: 1.1 }).u).toBeCloseTo((1e5 * 1.1) / (1653.2 * 355), 6);
  });

  it('leaves a long bar to buckling, and takes the larger of the two', () => {
    const { u, u_b, u_n } = en(drilled);
    expect([u === u_b, u_b! > u_n!]).toEqual([true, true]);
    expect(u_n).toBeCloseTo(1e5 / (1653.2 * 355) + 8e3 / (55.908 * 355), 6);
  });

  it('adds rupture as H4-1: P_c = F_u A_n/2, M_c by F13.1 over 1.67 (AISC 360, from memory; worked by hand)', () => {
    const rupture = (1e5 * 2) / (1653.2 * 58 * 6.894757) + (5e3 * 1.67) / (0.78 * 55.886 * 58 * 6.894757);
    expect(asd().u_n).toBeCloseTo(rupture, 6);
    expect(asd().u).toBe(asd().u_n);
    expect(asd({ n_h: 0 }).u_n).toBe(0);
    expect(asd({ n_h: 0 }).u).toBe(asd({ n_h: 0 }).u_b);
    expect(asd({ L_cr: 6 }).u).toBe(asd({ L_cr: 6 }).u_b);
  });

  it.each(['partial factors', 'allowable stress'] as const)(
    'cannot be judged when nothing is left of the flange, or of a quarter of the inner girth of a round tube (%s)',
    (safety) => {
      const { alpha, f_235, gamma_M0, gamma_M1, gamma_M2, ...both } = S355;
      const own: Record<string, number> =
        safety === 'partial factors' ? { alpha, f_235, gamma_M0, gamma_M1, gamma_M2 } : { Omega_b: 1.67, Omega_J: 2 };
      const at = (d_h: number, round = 0) =>
        outOfRangeWith(tubeAxialBending, safety, { ...both, ...own, round, N: 1, M: 1, L_cr: 4, n_h: 3, d_h });
      expect([at(0.0299), at(0.0301)]).toEqual([undefined, expect.stringMatching(/whole flange/)]);
      expect([at(0.0235, 1), at(0.0236, 1)]).toEqual([undefined, expect.stringMatching(/whole flange/)]);
    },
  );

  it('keeps a positive net modulus wherever the holes leave a flange, in every listed section', () => {
    for (const { shape, width, wall, height, elasticY } of standardSections) {
      const holes = (shape === 'round' ? Math.PI / 4 : 1) * (width - 2 * wall);
      expect(elasticY).toBeGreaterThan(holes * wall * (height - wall));
    }
  });
});

describe('second opinion', () => {
  const bar = (safety: Safety, change: Record<string, number>) => {
    const { alpha, f_235, gamma_M0, gamma_M1, gamma_M2, ...both } = S355;
    const own: Record<string, number> =
      safety === 'partial factors' ? { alpha, f_235, gamma_M0, gamma_M1, gamma_M2 } : { Omega_b: 1.67, Omega_J: 2 };
    return valuesGiven(tubeAxialBending, safety, { ...both, ...own, ...change });
  };

  it('holds u_b for any slenderness, thrust, moment and curve', () => {
    for (const slenderness of [0.02, 0.21, 0.4, 0.8, 1, 1.4, 2, 3, 6])
      for (const n of [0.02, 0.15, 0.25, 0.5, 0.9, 1.5, 10])
        for (const M of [0, 1e3, 1e5]) {
          const L_cr = Math.sqrt((Math.PI ** 2 * 210e9 * 279.43e-8 * slenderness ** 2) / (18.732e-4 * 355e6));
          const given = { N: (n * 18.732e-4 * 355e6) / (1 + slenderness ** 2), M, L_cr };
          for (const { u_b, u_low, u_high } of [
            bar('partial factors', { ...given, alpha: 0.13 }),
            bar('partial factors', { ...given, alpha: 0.49 }),
            bar('partial factors', { ...given, alpha: 0.49, gamma_M1: 1.1 }),
            bar('allowable stress', given),
          ]) {
            const where = JSON.stringify({ slenderness, n, M });
            expect(u_b!, where).toBeGreaterThanOrEqual(u_low! * (1 - 1e-12));
            expect(u_b!, where).toBeLessThanOrEqual(u_high! * (1 + 1e-12));
          }
        }
  });

  it('is Euler or squash below, Rankine with the secant above (worked by hand: SHS 100×100×5, 4 m, 100 kN, 8 kN·m)', () => {
    // N_y 664.986 kN, N_cr 361.97 kN, M_pl 23.5571 kN·m; p = 0.44203: √p · 90° = 59.837°.
    const { u_low, u_high } = bar('partial factors', { N: 1e5, M: 8e3, L_cr: 4 });
    expect(u_low).toBeCloseTo(100 / 361.97 + (8 / 9) * (8 / 23.5571), 4);
    expect(u_high).toBeCloseTo(
      100 / 664.986 + 100 / (0.8 * 361.97) + 8 / 23.5571 / Math.cos((59.837 * Math.PI) / 180),
      4,
    );
    const short = bar('partial factors', { N: 1e5, M: 8e3, L_cr: 0.5, C_m: 0.5 });
    expect(short.u_low).toBeCloseTo(50 / 664.986 + (4 / 9) * (8 / 23.5571), 4);
    const whole = bar('partial factors', { N: 2e5, M: 8e3, L_cr: 0.5 });
    expect(whole.u_low).toBeCloseTo(200 / 664.986 + (8 / 9) * (8 / 23.5571), 4);
    const fifth = bar('partial factors', { N: 0.21 * 664.986e3, M: 0, L_cr: 0.5 });
    expect(fifth.u_low).toBeCloseTo(0.21, 6);
    const near = bar('partial factors', { N: 2.1e5, M: 8e3, L_cr: 4, C_m: 0.5 });
    const rankine = 210 / 664.986 + 210 / (0.8 * 361.97);
    expect(near.u_high).toBeCloseTo(1 + rankine + (4 / 23.5571) * (10 + rankine), 3);
    const bowed = bar('partial factors', { N: 1e5, M: 8e3, L_cr: 4, C_m: 0.5 });
    expect(u_high! - bowed.u_high!).toBeCloseTo(4 / 23.5571 / Math.cos((59.837 * Math.PI) / 180), 4);
  });
});

it('never lets a large thrust take bending off a stocky bar (λ̄ below 0.2), as the line of Table B.1 would', () => {
  const at = (N: number) => valuesGiven(tubeAxialBending, 'partial factors', { ...S355, N, M: 8e3, L_cr: 0.1 });
  expect(at(1e5).k_yy).toBe(1);
  expect(at(1e7).u).toBeCloseTo(1e7 / 664.986e3 + 8 / 23.5571, 4);
});
