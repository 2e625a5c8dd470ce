import { describe, expect, it } from 'vitest';
import { crossingJoint } from '../../core/checks/crossing-joint.ts';
import { outOfRangeWith } from './at.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';

const joint = {
  b_0: 0.15,
  h_0: 0.15,
  t_0: 0.008,
  b_1: 0.1,
  h_1: 0.1,
  f_y0: 355e6,
  M_0: 0,
  N_0: 0,
  W_0: 198.8e-6,
  A_0: 44.75e-4,
  M_1: 0,
  N_1: 1e4,
};
const en = (change: Record<string, number> = {}) =>
  valuesGiven(crossingJoint, 'partial factors', { ...joint, gamma_M5: 1, ...change });
const asd = (change: Record<string, number> = {}) =>
  valuesGiven(crossingJoint, 'allowable stress', { ...joint, Omega_b: 1.67, ...change });

describe('EN 1993-1-8, 7.5 (formulas from memory; pull formula re-derived from yield lines)', () => {
  it('gives 248.29 kN for a 100×100 on a 150×8 in S355, 233.39 kN at n = 0.6, where k_n = 0.94', () => {
    expect(en().N_Rd! / 1e3).toBeCloseTo(248.29, 2);
    const pressed = en({ M_0: 0.6 * 355e6 * 198.8e-6 });
    expect(pressed.k_n).toBeCloseTo(0.94, 9);
    expect(pressed.N_Rd! / 1e3).toBeCloseTo(233.39, 2);
    expect(en({ N_0: 0.6 * 355e6 * 44.75e-4 }).k_n).toBeCloseTo(0.94, 9);
    expect(en({ gamma_M5: 1.1 }).N_Rd! / 1e3).toBeCloseTo(248.29 / 1.1, 2);
  });

  it('does the work of the yield lines: 4 h_1/c + 8 x/c + 4 b_0/x per moment of yielding, c = b_0 (1 − β)/2, x = √(b_0 c/2)', () => {
    for (const [b_1, h_1] of [
      [0.06, 0.1],
      [0.1, 0.05],
      [0.12, 0.15],
    ] as const) {
      const [c, m_p] = [(0.15 - b_1) / 2, (355e6 * 0.008 ** 2) / 4];
      const x = Math.sqrt((0.15 * c) / 2);
      expect(en({ b_1, h_1 }).N_Rd! / (m_p * ((4 * h_1) / c + (8 * x) / c + (4 * 0.15) / x))).toBeCloseTo(1, 9);
    }
  });

  it('gives 14.479 kN·m about the axis of the main tube (Table 7.14, worked by hand)', () => {
    expect(en().M_Rd! / 1e3).toBeCloseTo(14.479, 3);
  });

  it('adds pull and moment', () => {
    expect(en({ N_1: 248.29e3 / 2, M_1: 14.479e3 / 4 }).u).toBeCloseTo(0.75, 4);
  });
});

describe('AISC 360, K (chord plastification)', () => {
  it.each([
    [0.1, 0.2, 219404],
    [0.15, 0.25, 408960],
  ])(
    'gives the nominal %d × %d on a 200×8 of 355 MPa: %d N (a published joint calculation; formula from memory)',
    (b_1, h_1, N) => {
      expect(asd({ b_0: 0.2, h_0: 0.2, b_1, h_1 }).N_Rd! * 1.67).toBeCloseTo(N, 0);
    },
  );

  it('takes the stress of the main tube over 0.6 of its yield strength', () => {
    const { n, k_n } = asd({ M_0: 0.36 * 355e6 * 198.8e-6 });
    expect(n).toBeCloseTo(0.6, 9);
    expect(k_n).toBeCloseTo(0.94, 9);
    expect(asd({ N_0: 0.36 * 355e6 * 44.75e-4 }).n).toBeCloseTo(0.6, 9);
  });
});

it('carries more than a pull at a point, whose fan gives π f t² (yield-line theory)', () => {
  for (const b_1 of [0.04, 0.08, 0.12])
    for (const h_1 of [0.02, 0.2]) expect(en({ b_1, h_1 }).N_Rd!).toBeGreaterThan(en({ b_1, h_1 }).N_fan!);
  expect(en().N_fan! / 1e3).toBeCloseTo((Math.PI * 355 * 64) / 1e3, 6);
});

it('holds to the range of EN 1993-1-8, Table 7.8 (from memory)', () => {
  const range = (change: Record<string, number>) =>
    outOfRangeWith(crossingJoint, 'partial factors', { ...joint, gamma_M5: 1, ...change });
  expect(range({})).toBeUndefined();
  expect([range({ b_1: 0.038 }), range({ b_1: 0.037 })]).toEqual([undefined, expect.stringMatching(/quarter/)]);
  expect([range({ t_0: 0.00429 }), range({ t_0: 0.00428 })]).toEqual([undefined, expect.stringMatching(/1\/35/)]);
  expect(range({ h_0: 0.29, t_0: 0.008 })).toMatch(/1\/35/);
  expect([range({ h_0: 0.3, t_0: 0.01 }), range({ h_0: 0.302, t_0: 0.01 })]).toEqual([
    undefined,
    expect.stringMatching(/flatter/),
  ]);
  expect([range({ h_0: 0.075 }), range({ h_0: 0.074 })]).toEqual([undefined, expect.stringMatching(/flatter/)]);
  expect(range({ M_0: 5 * 355e6 * 198.8e-6 })).toMatch(/beyond its strength/);
});

describe('what it reads from the model', () => {
  const model = demoModel({ grid: { crossTubes: { section: 'SHS 100x100x5 hot' } } });
  const situation = situationOf(model, 'service-down');

  it('meets the side wall of the main tube: its height is the face, sizes at the end of life', () => {
    const flat = demoModel({
      grid: { mainTubes: { section: 'RHS 150x100x6.3 hot' }, crossTubes: { section: 'RHS 100x50x5 hot' } },
    });
    const read = (symbol: string) => reads(crossingJoint, symbol, flat, 'A/1') * 1e3;
    expect(['b_0', 'h_0', 't_0', 'b_1', 'h_1'].map((symbol) => Number(read(symbol).toFixed(6)))).toEqual([
      149, 99, 5.6, 99, 49,
    ]);
  });

  it('takes the forces of both tubes from the situation', () => {
    const [main, cross] = [situation.tubes.get('B')!, situation.tubes.get('2')!];
    expect(reads(crossingJoint, 'M_1', model, 'B/2', situation)).toBe(cross.moment);
    expect(reads(crossingJoint, 'N_1', model, 'B/2', situation)).toBe(Math.abs(cross.axial));
    expect(reads(crossingJoint, 'M_0', model, 'B/2', situation)).toBe(main.moment);
    expect(reads(crossingJoint, 'N_0', model, 'B/2', situation)).toBe(Math.abs(main.axial));
    expect(reads(crossingJoint, 'f_y0', model, 'B/2')).toBe(355e6);
    expect(reads(crossingJoint, 'gamma_M5', model, 'B/2')).toBe(1);
  });

  it('applies where a formula is held: flush, rectangular, no wider than 0.85 of the face', () => {
    expect(crossingJoint.places(model)).toHaveLength(12);
    expect(crossingJoint.applies(model, 'A/1', situation)).toBe(true);
    const applies = (grid: unknown) => crossingJoint.applies(demoModel({ grid }), 'A/1', situation);
    expect(applies({})).toMatch(/0\.85 of the face/);
    expect(applies({ arrangement: 'stacked', crossTubes: { section: 'SHS 100x100x5 hot' } })).toMatch(
      /no published joint formula/,
    );
    expect(
      applies({ mainTubes: { section: 'CHS 168.3x6.3 hot' }, crossTubes: { section: 'SHS 100x100x5 hot' } }),
    ).toMatch(/round/);
  });
});

it('holds both sides of the main tube to 35 walls, and its sum to 1', () => {
  const range = (change: Record<string, number>) =>
    outOfRangeWith(crossingJoint, 'partial factors', { ...joint, gamma_M5: 1, ...change });
  expect([range({ b_0: 0.28, b_1: 0.2 }), range({ b_0: 0.281, b_1: 0.2 })]).toEqual([
    undefined,
    expect.stringMatching(/1\/35/),
  ]);
  expect([en().u_Rd, asd().u_Rd]).toEqual([1, 1]);
});

it('reads the section of the main tube: W_el 199 cm³, A 44.8 cm² of SHS 150×150×8 (EN 10210-2, from memory)', () => {
  const kept = demoModel({
    grid: { crossTubes: { section: 'SHS 100x100x5 hot' } },
    protection: { lossPerFace: { tubeOutside: '0 mm', tubeInside: '0 mm' } },
  });
  expect(reads(crossingJoint, 'W_0', kept, 'A/1') * 1e6).toBeCloseTo(199, 0);
  expect(reads(crossingJoint, 'A_0', kept, 'A/1') * 1e4).toBeCloseTo(44.8, 1);
});
