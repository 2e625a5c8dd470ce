import { describe, expect, it } from 'vitest';
import { tubeAxialBending } from '../../core/checks/tube-axial-bending.ts';
import { outOfRangeWith } from './at.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { tubeBending } from '../../core/checks/tube-bending.ts';
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
  f_y: 355e6,
  C_m: 1,
};
const S355 = { ...SHS100x5, f_235: 235e6, E: 210e9, alpha: 0.21, gamma_M1: 1 };

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
  const strut = { ...SHS100x5, f_y: 50 * ksi, E: 29000 * ksi, Omega_b: 1.67 };
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
      Omega_b: 1.67,
      N: 1e4,
      M: 0,
      L_cr: (slenderness * Math.sqrt(279.43 / 18.732)) / 100,
      ...change,
    });

  it('begins to reduce at λ̄ = 0.2, and grows the moment by 1 + (λ̄ − 0.2) n below λ̄ = 1 (Table B.1)', () => {
    const { lambda_bar, n, k_yy, r_N, r_M, u_low, u_Rd } = en({});
    expect(lambda_bar).toBeCloseTo(1.35541 / 2, 5);
    expect(k_yy).toBeCloseTo(1 + (1.35541 / 2 - 0.2) * n!, 5);
    expect(u_low).toBeCloseTo((1e5 / (18.732e-4 * 355e6) + 8e3 / (66.358e-6 * 355e6)) / 2, 9);
    expect(u_low).toBeCloseTo((r_N! + r_M!) / 2, 12);
    expect(u_Rd).toBe(1);
    expect(en({ L_cr: (4 * 0.22) / 1.35541 }).chi).toBeLessThan(1);
  });

  it('passes from inelastic to elastic buckling at F_y/F_e = 2.25: 0.877 F_e = 16.865 ksi at L/r = 122 (E3-3, worked by hand)', () => {
    expect(asd(122).F_cr! / ksi).toBeCloseTo(16.865, 2);
    expect(asd(122).r_N).toBeCloseTo((1e4 * 1.67) / (18.732e-4 * 50 * ksi), 9);
  });

  it('takes H1-1a from a fifth on, with the shape of the moment, and 1 + 1.6 N/N_e from 0.9 on', () => {
    const N = (0.22 * asd(100).F_cr! * 18.732e-4) / 1.67;
    const M = (0.3 * 66.358e-6 * 50 * ksi) / 1.67;
    const grown = 0.3 / (1 - (1.6 * N) / asd(100).N_cr!);
    expect(asd(100, { N, M }).u).toBeCloseTo(0.22 + (8 / 9) * grown, 9);
    expect(asd(100, { N, M, C_m: 0.5 }).u).toBeCloseTo(0.22 + (4 / 9) * grown, 9);
    expect(asd(200, { N: (0.95 / 1.6) * asd(200).N_cr! }).u).toBeCloseTo(1.95, 9);
  });

  it('takes an even moment, and every other number from where bending takes it', () => {
    expect(reads(tubeAxialBending, 'C_m', demoModel(), 'A')).toBe(1);
    for (const symbol of ['M', 'round', 'H', 'B', 't', 'W_el', 'W_pl', 'E', 'f_y', 'f_235'])
      expect(tubeAxialBending.inputs[symbol]!.read, symbol).toBe(tubeBending.inputs[symbol]!.read);
    for (const symbol of ['N', 'A'])
      expect(tubeAxialBending.inputs[symbol]!.read, symbol).toBe(tubeTorsion.inputs[symbol]!.read);
  });
});

it('takes the moment by the net section, and thrust by the whole one (EN 1993-1-1, 6.3.1.1(4), from memory)', () => {
  const at = (change: Record<string, number>) =>
    valuesGiven(tubeAxialBending, 'partial factors', { ...S355, N: 1e5, M: 8e3, L_cr: 4, ...change });
  const two = at({ n_h: 2, d_h: 0.011 });
  expect(two.r_M! / at({}).r_M!).toBeCloseTo(66.358 / (66.358 - 10.45), 9);
  expect(two.n).toBe(at({}).n);
});
