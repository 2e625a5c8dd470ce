import { describe, expect, it } from 'vitest';
import { crossingEffectiveWidth } from '../../core/checks/crossing-effective-width.ts';
import { crossingJoint } from '../../core/checks/crossing-joint.ts';
import { crossingRound } from '../../core/checks/crossing-round.ts';
import { crossingSideWall } from '../../core/checks/crossing-side-wall.ts';
import { crossingWeld } from '../../core/checks/crossing-weld.ts';
import { outOfRangeWith } from './at.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';

const { PI, sqrt } = Math;
const chord = { f_y0: 355e6, M_0: 0, N_0: 0, W_0: 198.8e-6, A_0: 44.75e-4 };
const forces = { M_1: 0, N_1: 1e4 };
const sizes = { b_0: 0.15, h_0: 0.15, t_0: 0.008, b_1: 0.15, h_1: 0.1 };
const side = (change: Record<string, number> = {}) =>
  valuesGiven(crossingSideWall, 'partial factors', { ...chord, ...forces, ...sizes, E: 210e9, alpha: 0.21, gamma_M5: 1, ...change }); // prettier-ignore
const sideASD = (change: Record<string, number> = {}) =>
  valuesGiven(crossingSideWall, 'allowable stress', { ...chord, ...forces, ...sizes, E: 200e9, Omega_b: 1.67, Omega_J: 2, ...change }); // prettier-ignore

describe('side walls, EN 1993-1-8, Tables 7.11 and 7.14 (worked by hand for SHS 150×8 in S355, cross tube 150 wide, 100 along)', () => {
  it('buckles at λ = 3.46 (150/8 − 2)/(π √(E/f)) = 0.7585, χ of curve a 0.8186 (as in EN 1993-1-1, Table 6.2: between 0.85 and 0.80)', () => {
    const { lambda, chi, N_wall } = side();
    expect(lambda).toBeCloseTo((3.46 * 16.75) / (PI * sqrt(210e3 / 355)), 9);
    expect(lambda).toBeCloseTo(0.7585, 4);
    expect(chi).toBeCloseTo(0.8186, 4);
    expect(N_wall! / 1e3).toBeCloseTo((0.8 * chi! * 355 * 8 * 280) / 1e3, 6);
    expect(side({ alpha: 0.49 }).chi).toBeCloseTo(0.6882, 4);
    expect(side({ t_0: 0.05 }).chi).toBe(1);
  });

  it.each([
    [0.4, 0.9528],
    [0.6, 0.89],
    [0.8, 0.7957],
    [1, 0.6656],
  ])('has χ of curve a at λ = %f: %f (EN 1993-1-1, 6.3.1.2, recomputed)', (lambda, chi) => {
    const h_0 = 0.008 * (2 + (lambda * PI * sqrt(210e3 / 355)) / 3.46);
    expect(side({ h_0 }).chi).toBeCloseTo(chi, 4);
  });

  it('is the side wall at the whole width, the face at 0.85, and a straight line between', () => {
    const at = (b_1: number) => side({ b_1 });
    expect(at(0.15).N_Rd).toBeCloseTo(side().N_wall!, 6);
    const face = at(0.1275);
    // The face by the check of narrower tubes, at 0.85 itself.
    const narrow = valuesGiven(crossingJoint, 'partial factors', { ...chord, ...forces, ...sizes, b_1: 0.1275, gamma_M5: 1 }); // prettier-ignore
    expect(face.N_Rd! / narrow.N_Rd!).toBeCloseTo(1, 9);
    expect(face.M_face! / narrow.M_Rd!).toBeCloseTo(1, 9);
    expect(at(0.13875).N_Rd).toBeCloseTo((face.N_Rd! + at(0.15).N_Rd!) / 2, 3);
  });

  it('crushes at 0.8 · 355 · 8 · 142 · 140 N·mm = 45.17 kN·m; pushed out of square at 44.35 kN·m', () => {
    const { M_wall, M_dist, M_Rd } = side();
    expect(M_wall! / 1e3).toBeCloseTo(45.17, 2);
    expect(M_dist! / 1e3).toBeCloseTo((2 * 355 * 8 * (800 + sqrt(150 * 150 * 8 * 300))) / 1e6, 6);
    expect(M_Rd! / 1e3).toBeCloseTo(Math.min(45.17, M_dist! / 1e3), 2);
    expect(side({ gamma_M5: 1.1 }).M_Rd! * 1.1).toBeCloseTo(M_Rd!, 3);
    expect(side({ N_1: side().N_Rd! / 2, M_1: M_Rd! / 4 }).u).toBeCloseTo(0.75, 9);
  });

  it('AISC 360-10, K2.3 (from memory): 2 · 355 · 8 · 140 N yielding, 48 t³ √(E F)/(H − 3 t) buckling', () => {
    const { N_yield, N_crip, N_wall } = sideASD();
    expect(N_yield! * 1.67).toBeCloseTo(2 * 355 * 8 * 140, 3);
    expect(N_crip! * 2).toBeCloseTo((48 * 512 * sqrt(200e3 * 355)) / 126, 3);
    expect(N_wall).toBe(Math.min(N_yield!, N_crip!));
    expect(sideASD({ h_1: 0.01, t_0: 0.014 }).N_crip! * 2).toBeCloseTo(1.6 * 196 * (1 + 30 / 108) * sqrt(200e3 * 355), 2); // prettier-ignore
  });

  it('lies between its bounds over its range, and leaves it where a wall is thinner than 1/35 of the side', () => {
    for (const t_0 of [0.0045, 0.008, 0.0125])
      for (const b_1 of [0.128, 0.14, 0.15])
        for (const h_1 of [0.05, 0.15, 0.3])
          for (const v of [side({ t_0, b_1, h_1 }), sideASD({ t_0, b_1, h_1 })]) {
            expect(v.N_Rd!).toBeGreaterThan(v.N_fan!);
            expect(v.N_Rd!).toBeLessThan(v.N_high!);
          }
    const range = (change: Record<string, number>) =>
      outOfRangeWith(crossingSideWall, 'partial factors', { ...chord, ...forces, ...sizes, E: 210e9, alpha: 0.21, gamma_M5: 1, ...change }); // prettier-ignore
    expect([range({ t_0: 0.0043 }), range({ t_0: 0.0042 })]).toEqual([undefined, expect.stringMatching(/1\/35/)]);
    expect(range({ h_0: 0.31, t_0: 0.01 })).toMatch(/flatter/);
    expect(range({ M_0: 5 * 355e6 * 198.8e-6 })).toMatch(/beyond its strength/);
  });
});

describe('effective width and punching, EN 1993-1-8, Table 7.11 (worked by hand)', () => {
  const brace = { t_1: 0.006, f_y1: 355e6, W_1: 140e-6, slim: 35 };
  const width = (change: Record<string, number> = {}) => {
    const { h_0: _, ...own } = sizes;
    return valuesGiven(crossingEffectiveWidth, 'partial factors', { ...forces, ...own, ...brace, f_y0: 355e6, gamma_M5: 1, ...change }); // prettier-ignore
  };

  it('counts 10/(150/8) · 8/6 · 150 = 106.7 mm of 150: 355 · 6 · (200 − 24 + 213.3) = 829.3 kN; the moment loses its middle', () => {
    const { b_eff, N_b, N_Rd, M_Rd } = width();
    expect(b_eff! * 1e3).toBeCloseTo(106.667, 3);
    expect(N_b! / 1e3).toBeCloseTo(829.28, 2);
    expect(N_Rd).toBe(N_b);
    expect(M_Rd! / 1e3).toBeCloseTo((355 * (140e3 - 0.5 * (1 - 106.667 / 150) ** 2 * 150 ** 2 * 6)) / 1e6, 3);
    expect(width({ t_0: 0.012 }).b_eff).toBe(0.15);
  });

  it('punches inside the side walls: 355/√3 · 8 · (200 + 2 · 70.93) = 560.6 kN at 133 mm', () => {
    const { N_p, b_ep } = width({ b_1: 0.133 });
    expect(b_ep! * 1e3).toBeCloseTo(70.933, 3);
    expect(N_p! / 1e3).toBeCloseTo(560.6, 1);
    const outside = width({ b_1: 0.1341 });
    expect(outside.N_p).toBe(outside.N_b);
    expect(width({ b_1: 0.133, N_1: 560.6e3 / 2, M_1: 0 }).u).toBeCloseTo(0.5, 3);
  });

  it('stays within its bounds and its range', () => {
    for (const t_1 of [0.005, 0.01])
      for (const b_1 of [0.128, 0.15]) {
        const v = width({ t_1, b_1 });
        expect([v.N_Rd! > v.N_low!, v.N_Rd! < v.N_high!]).toEqual([true, true]);
      }
    const asd = valuesGiven(crossingEffectiveWidth, 'allowable stress', { b_0: 0.15, t_0: 0.008, b_1: 0.15, h_1: 0.1, ...forces, ...brace, f_y0: 355e6, Omega_b: 1.67 }); // prettier-ignore
    expect(asd.N_b! * 1.67).toBeCloseTo(width().N_b!, 3);
    const range = (t_1: number) => outOfRangeWith(crossingEffectiveWidth, 'partial factors', { b_0: 0.15, t_0: 0.008, b_1: 0.14, h_1: 0.1, t_1, slim: 35 }); // prettier-ignore
    expect([range(0.0041), range(0.0039)]).toEqual([undefined, expect.stringMatching(/1\/35/)]);
  });
});

describe('round tubes, EN 1993-1-8, Tables 7.2 and 7.5 (formulas from memory, worked by hand for 168.3×6.3 and 88.9×5 in S355)', () => {
  const tubes = { ...chord, ...forces, d_0: 0.1683, t_0: 0.0063, d_1: 0.0889, t_1: 0.005 };
  const en = (change: Record<string, number> = {}) =>
    valuesGiven(crossingRound, 'partial factors', { ...tubes, gamma_M5: 1, ...change });

  it('takes the least of T, X and punching: 160.0, 128.1 and 360.6 kN', () => {
    const { N_T, N_X, N_P, N_Rd, M_Rd, M_Y } = en();
    const [beta, ft2] = [0.0889 / 0.1683, 355 * 6.3 ** 2];
    expect(N_T! / 1e3).toBeCloseTo(((0.1683 / 0.0126) ** 0.2 * ft2 * (2.8 + 14.2 * beta ** 2)) / 1e3, 1);
    expect(N_X! / 1e3).toBeCloseTo((5.2 * ft2) / (1 - 0.81 * beta) / 1e3, 6);
    expect(N_P! / 1e3).toBeCloseTo((355 / sqrt(3)) * 6.3 * PI * 0.0889, 6);
    expect([N_T, N_X, N_P].map((N) => Number((N! / 1e3).toFixed(1)))).toEqual([160, 128.1, 360.6]);
    expect(N_Rd).toBe(N_X);
    expect(M_Y! / 1e3).toBeCloseTo(5.913, 2);
    expect(M_Rd).toBe(M_Y);
    expect(en({ d_1: 0.16 }).N_P).toBe(en({ d_1: 0.16 }).N_T! < en({ d_1: 0.16 }).N_X! ? en({ d_1: 0.16 }).N_T : en({ d_1: 0.16 }).N_X); // prettier-ignore
  });

  it('falls with the stress of the main tube: k_p = 1 − 0.3 · 0.6 · 1.6 = 0.712; a pull and a moment add up', () => {
    expect(en({ M_0: 0.6 * 355e6 * 198.8e-6 }).k_p).toBeCloseTo(0.712, 9);
    expect(en({ N_0: 0.6 * 355e6 * 44.75e-4 }).k_p).toBeCloseTo(0.712, 9);
    expect(en({ N_1: en().N_Rd! / 2, M_1: en().M_Rd! / 4 }).u).toBeCloseTo(0.75, 9);
  });

  it('AISC 360-10, K2.2 (from memory): 3.1 + 15.6 β², 5.7, 3.0, over 1.67', () => {
    const asd = valuesGiven(crossingRound, 'allowable stress', { ...tubes, Omega_b: 1.67 });
    const beta = 0.0889 / 0.1683;
    const ft2 = 355 * 6.3 ** 2;
    expect(asd.N_X! * 1.67).toBeCloseTo((5.7 * ft2) / (1 - 0.81 * beta), 3);
    expect(asd.N_T! * 1.67).toBeCloseTo((0.1683 / 0.0126) ** 0.2 * ft2 * (3.1 + 15.6 * beta ** 2), 2);
    expect(asd.M_Y! * 1.67 * 1e3).toBeCloseTo((3 * ft2 * 88.9) / (1 - 0.81 * beta), 0);
    expect(asd.N_P! * 1.67).toBeCloseTo(0.6 * 355 * 6.3 * PI * 88.9, 2);
  });

  it('stays between its bounds and in the range of Table 7.1 (from memory)', () => {
    for (const d_1 of [0.04, 0.0889, 0.16, 0.1683]) {
      const v = en({ d_1 });
      expect([v.N_Rd! > v.N_fan!, v.N_Rd! < v.N_torn!]).toEqual([true, true]);
    }
    const range = (change: Record<string, number>) =>
      outOfRangeWith(crossingRound, 'partial factors', { ...tubes, gamma_M5: 1, ...change });
    expect([range({ d_1: 0.0337, t_1: 0.003 }), range({ d_1: 0.0336, t_1: 0.003 })]).toEqual([undefined, expect.stringMatching(/fifth/)]); // prettier-ignore
    expect([range({ t_0: 0.00421 }), range({ t_0: 0.0042 })]).toEqual([undefined, expect.stringMatching(/10 and 40/)]);
    expect(range({ t_0: 0.017 })).toMatch(/10 and 40/);
    expect([range({ t_1: 0.0089 }), range({ t_1: 0.0017 })]).toEqual([expect.stringMatching(/10 and 50/), expect.stringMatching(/10 and 50/)]); // prettier-ignore
    expect(range({ M_0: 2 * 355e6 * 198.8e-6 })).toMatch(/beyond its strength/);
  });
});

describe('which formulas hold at a crossing of the model', () => {
  const applied = (grid: unknown) => {
    const model = demoModel({ grid });
    const situation = situationOf(model, 'service-down');
    return [crossingJoint, crossingSideWall, crossingEffectiveWidth, crossingRound, crossingWeld]
      .filter((check) => check.applies(model, 'A/1', situation) === true)
      .map(({ id }) => id);
  };

  it('is one kind for each crossing; stacked and mixed tubes have none', () => {
    expect(applied({})).toEqual(['crossing-side-wall', 'crossing-effective-width']);
    expect(applied({ crossTubes: { section: 'SHS 100x100x5 hot' } })).toEqual(['crossing-joint']);
    const round = { section: 'CHS 168.3x6.3 hot' };
    expect(applied({ mainTubes: round, crossTubes: { section: 'CHS 88.9x5 hot' } })).toEqual(['crossing-round']);
    expect(applied({ mainTubes: round })).toEqual(['crossing-weld']);
    expect(applied({ arrangement: 'stacked' })).toEqual(['crossing-weld']);
  });

  it('reads its sizes at the end of life, and the curve by how the tube is made', () => {
    const model = demoModel();
    expect(reads(crossingSideWall, 'alpha', model, 'A/1')).toBe(0.21);
    expect(reads(crossingSideWall, 'E', model, 'A/1')).toBe(210e9);
    expect(reads(crossingEffectiveWidth, 'f_y1', model, 'A/1')).toBe(355e6);
    expect(reads(crossingEffectiveWidth, 't_1', model, 'A/1')).toBeLessThan(0.008);
    const cold = demoModel({ grid: { mainTubes: { section: 'SHS 150x150x8 cold', material: 'S355H cold formed' } } });
    expect(reads(crossingSideWall, 'alpha', cold, 'A/1')).toBe(0.49);
    const round = demoModel({ grid: { mainTubes: { section: 'CHS 168.3x6.3 hot' }, crossTubes: { section: 'CHS 88.9x5 hot' }, }, protection: { lossPerFace: { tubeOutside: '0 mm', tubeInside: '0 mm' } } }); // prettier-ignore
    expect([reads(crossingRound, 'd_0', round, 'A/1'), reads(crossingRound, 'd_1', round, 'A/1')]).toEqual([0.1683, 0.0889]); // prettier-ignore
  });
});
