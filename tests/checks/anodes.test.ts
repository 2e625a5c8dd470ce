import { describe, expect, it } from 'vitest';
import { anodeCurrentFinal } from '../../core/checks/anode-current-final.ts';
import { anodeCurrentInitial } from '../../core/checks/anode-current-initial.ts';
import { anodeMass } from '../../core/checks/anode-mass.ts';
import { coatingBreakdown } from '../../core/durability/coating-breakdown.ts';
import { currentDensity } from '../../core/durability/current-density.ts';
import type { Check } from '../../core/checks/check.ts';
import { valuesGiven } from './bolt-values.ts';

const hour = 3600;
const breakdown = coatingBreakdown('III', 60, 20);
const { initial, mean, final } = currentDensity(60, 273.15 + 10);
/** 400 m² with a coating of category III, 60 m deep at 10 °C for 20 years; anodes of 45 kg, 1 m long, without a core. */
const given = {
  A_c: 400, A_b: 0, i_i: initial, i_m: mean, i_f: final, f_ci: 0.02, f_cm: breakdown.mean, f_cf: breakdown.final,
  t_f: 20 * 8760 * hour, N: 7, m_a: 45, epsilon: 2000 * hour, epsilon_0: 2980 * hour, u: 0.9,
  rho_w: 0.3, dE: 0.25, rho_a: 2700, flush: 0, L: 1, b: 0, d_k: 0, k_d: 1,
}; // prettier-ignore

/** What a check gives of those inputs that it asks for. */
const values = (check: Check, change: Partial<typeof given> = {}) =>
  valuesGiven(
    check,
    'partial factors',
    Object.fromEntries(Object.entries({ ...given, ...change }).filter(([symbol]) => symbol in check.inputs)),
  );

describe('a plate of 400 m² by DNV-RP-B401 (constants from memory; worked by hand, 20 years of 8760 h)', () => {
  it('counts 10 % of the coating as bare in the mean and 18 % at the end', () => {
    expect(breakdown.mean).toBeCloseTo(0.1, 12);
    expect(breakdown.final).toBeCloseTo(0.18, 12);
  });

  it('needs 3.20 A in the mean, 1.36 A at first and 7.92 A at the end, and 311.5 kg', () => {
    const { I_m, M_Ed, M_Rd } = values(anodeMass);
    expect(I_m).toBeCloseTo(3.2, 9);
    expect(M_Ed).toBeCloseTo(311.5, 1);
    expect(M_Rd).toBe(315);
    expect(values(anodeCurrentInitial).I_Ed).toBeCloseTo(1.36, 9);
    expect(values(anodeCurrentFinal).I_Ed).toBeCloseTo(7.92, 9);
  });

  it('needs 3115 kg if it is bare', () => {
    expect(values(anodeMass, { A_c: 0, A_b: 400 }).M_Ed).toBeCloseTo(3114.7, 1);
  });

  it('takes seven anodes: 6.92 by mass, 6.72 by the current at the end (1.178 A each, 0.2122 Ω, 24.3 mm)', () => {
    const { M_Ed } = values(anodeMass);
    const { I_Ed, I_a, R_a, r_a } = values(anodeCurrentFinal);
    expect(M_Ed! / 45).toBeCloseTo(6.92, 2);
    expect(I_Ed! / I_a!).toBeCloseTo(6.72, 2);
    expect(R_a).toBeCloseTo(0.2122, 4);
    expect(I_a).toBeCloseTo(1.178, 3);
    expect(r_a! * 1e3).toBeCloseTo(24.3, 1);
  });
});

describe('the resistance of an anode', () => {
  const at = (change: Partial<typeof given>) => values(anodeCurrentInitial, change);

  it('is 0.1435 Ω for 45 kg on a metre, 0.1284 Ω for a radius of 100 mm (McCoy’s formula, worked by hand)', () => {
    expect(at({}).R_a).toBeCloseTo(0.1435, 4);
    expect(at({ m_a: 2700 * Math.PI * 0.01 }).R_a).toBeCloseTo(0.12838, 5);
  });

  it('of a bar four times as long as its radius is 7 % more by Dwight’s formula than by McCoy’s, 1.8936 to 1.7726 (worked by hand)', () => {
    const radius = (r: number) => at({ m_a: 2700 * Math.PI * r ** 2 }).R_a!;
    expect(radius(0.250001) / radius(0.249999)).toBeCloseTo(1.8936 / 1.7726, 3);
    // a wire: ρ/(2 π L) (ln(4 L/r) − 1) is Dwight's for r/L → 0
    expect(radius(1e-4)).toBeCloseTo((0.3 / (2 * Math.PI)) * (Math.log(4e4) - 1), 9);
  });

  it('of a flush one is ρ/2S with S the mean of its length and width; near the steel a bar has 1.3 times its own', () => {
    expect(at({ flush: 1, L: 0.6, b: 0.2 }).R_a).toBeCloseTo(0.3 / (2 * 0.4), 12);
    expect(at({ k_d: 1.3 }).R_a! / at({}).R_a!).toBeCloseTo(1.3, 12);
  });

  it('lies between the balls in and around the bar, slender and short, new and used up', () => {
    for (const check of [anodeCurrentInitial, anodeCurrentFinal])
      for (const m_a of [2, 10, 45, 120, 300])
        for (const d_k of [0, 0.06]) {
          const { I_low, I_Rd, I_high } = values(check, { m_a, d_k });
          expect([I_low! <= I_Rd!, I_Rd! <= I_high!]).toEqual([true, true]);
        }
  });
});

it('asks for currents near those of a class society for the North Sea from 55 to 62° N: 180, 90 and 120 mA/m² (Lloyd’s Register, offshore units, Table 4.1.1, read in a public copy)', () => {
  const here = currentDensity(20, 273.15 + 9);
  for (const [ours, theirs] of [
    [here.initial, 0.18],
    [here.mean, 0.09],
    [here.final, 0.12],
  ] as const)
    // prettier-ignore
    expect(Math.abs(ours / theirs - 1)).toBeLessThan(0.12);
});

it('asks for more current the colder the water and never less at first than in the mean', () => {
  for (const depth of [10, 60, 200]) {
    const by = [25, 15, 9, 4].map((celsius) => currentDensity(depth, 273.15 + celsius));
    for (const of of ['initial', 'mean', 'final'] as const)
      expect(by.map((one) => one[of])).toEqual(by.map((one) => one[of]).sort((a, b) => a - b));
    for (const one of by) expect(one.initial > one.final && one.final > one.mean).toBe(true);
  }
  expect(() => currentDensity(400, 280)).toThrow(/down to 300 m/);
});

it('lets a coating break down to bare steel and no further', () => {
  const short = coatingBreakdown('I', 10, 9);
  const long = coatingBreakdown('I', 10, 30);
  expect(short.final).toBeCloseTo(1, 12);
  expect(long.final).toBe(1);
  // by time steps: the mean of min(1, a + b t)
  const steps = 100_000;
  const mean = Array.from({ length: steps }, (_, i) => Math.min(1, 0.1 + (0.1 * 30 * (i + 0.5)) / steps)).reduce((a, b) => a + b) / steps; // prettier-ignore
  expect(long.mean).toBeCloseTo(mean, 6);
  expect(coatingBreakdown('none', 10, 1)).toEqual({ mean: 1, final: 1 });
});
