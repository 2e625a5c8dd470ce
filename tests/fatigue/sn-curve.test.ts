import { describe, expect, it } from 'vitest';
import { cycleDamage } from '../../core/fatigue/cycle-damage.ts';
import { minerSum } from '../../core/fatigue/miner-sum.ts';
import { snCurve, snCurveNames, type Environment } from '../../core/fatigue/sn-curve.ts';
import { thicknessFactor } from '../../core/fatigue/thickness-factor.ts';

const MPa = 1e6;
const cycles = (name: string, environment: Environment, range: number, t = 0.025): number => {
  const curve = snCurve(name, environment);
  return 1 / cycleDamage(curve, thicknessFactor(curve, t) * range * MPa);
};

describe('S-N curves of DNV-RP-C203', () => {
  // Points derived by hand from the tables' log a: N = 10^(log a − m log 100).
  it.each([
    ['D', 'air', 100, 0.025, 1.4588e6],
    ['D', 'protected', 100, 0.025, 5.808e5],
    ['D', 'free', 100, 0.025, 4.864e5],
    ['D', 'air', 100, 0.04, 1.1003e6],
    ['D', 'air', 100, 0.01, 1.4588e6],
    ['B1', 'air', 200, 0.025, 10 ** 15.117 / 200 ** 4],
    ['C1', 'protected', 30, 0.025, 10 ** 16.081 / 30 ** 5],
    ['W3', 'protected', 10, 0.025, 10 ** 13.617 / 10 ** 5],
    ['W3', 'free', 10, 0.025, 10 ** 10.493 / 10 ** 3],
  ] as const)('%s %s at %d MPa and %d m fails after %d cycles (tables 2-1, 2-2, 2-4)', (name, where, range, t, N) => {
    expect(Math.abs(cycles(name, where, range, t) / N - 1)).toBeLessThan(1e-4);
  });

  // Stress ranges at 10⁷ cycles, as Table 2-1 prints them.
  it.each([
    ['B1', 106.97],
    ['B2', 93.59],
    ['C', 73.1],
    ['C1', 65.5],
    ['C2', 58.48],
    ['D', 52.63],
    ['E', 46.78],
    ['F', 41.52],
    ['F1', 36.84],
    ['F3', 32.75],
    ['G', 29.24],
    ['W1', 26.32],
    ['W2', 23.39],
    ['W3', 21.05],
  ] as const)('%s in air stands at %d MPa for 10 million cycles (Table 2-1, from memory)', (name, stress) => {
    const { S_k, N_k } = snCurve(name, 'air');
    expect(Math.abs(S_k / MPa / stress - 1)).toBeLessThan(1e-3);
    expect(Math.abs(N_k / 1e7 - 1)).toBeLessThan(4e-3); // the lines meet there to the third digit of log a
  });

  it('has its knee at a million cycles under protection (Table 2-2)', () => {
    for (const name of snCurveNames.slice(0, 14))
      expect(Math.abs(snCurve(name, 'protected').N_k / 1e6 - 1), name).toBeLessThan(0.02);
  });

  it('never lets the sea do better than air, nor free corrosion better than protection', () => {
    for (const name of snCurveNames.slice(2, 14))
      for (const range of [5, 20, 50, 100, 300]) {
        expect(cycles(name, 'protected', range)).toBeLessThanOrEqual(cycles(name, 'air', range) * 1.0001);
        expect(cycles(name, 'free', range)).toBeLessThan(cycles(name, 'protected', range));
      }
  });

  it('refuses a class that is not held, and says which are', () => {
    expect(() => snCurve('Q', 'air')).toThrow(/No S-N curve “Q” is held.*B1, B2, C,.*W3, 160/);
    expect(() => snCurve('constructor', 'air')).toThrow(/No S-N curve/);
  });
});

describe('S-N curves of EN 1993-1-9', () => {
  it('pass through the category at 2 million cycles, bend at 0.737 of it, and stop at 0.405 (7.1(3), (1 − 3))', () => {
    const curve = snCurve('90', 'air');
    expect(1 / cycleDamage(curve, 90 * MPa)).toBeCloseTo(2e6, 3);
    expect(curve.S_k / (90 * MPa)).toBeCloseTo(0.737, 3);
    expect(curve.cutOff / (90 * MPa)).toBeCloseTo(0.405, 3);
    expect(1 / cycleDamage(curve, 1.0001 * curve.cutOff) / 1e8).toBeCloseTo(1, 2);
    expect(cycleDamage(curve, 0.9999 * curve.cutOff)).toBe(0);
  });

  it('gives Miner’s sum 1.172411e-5 of ASTM E1049’s example in category 36, a unit of 10 MPa, without knee or cut-off (worked by hand)', () => {
    const straight = { ...snCurve('36', 'air'), S_k: 36 * MPa, N_k: 2e6, m_2: 3, cutOff: 0 };
    const cycles = [
      [3, 0.5],
      [4, 1.5],
      [6, 0.5],
      [8, 1],
      [9, 0.5],
    ].map(([range, count]) => ({ range: range! * 10 * MPa, count: count! }));
    expect(minerSum(straight, cycles)).toBeCloseTo(1.172411e-5, 11);
  });

  it('are refused in the sea, in words', () => {
    expect(() => snCurve('90', 'protected')).toThrow(
      /holds in air, not in seawater with cathodic protection.*Take a class of DNV-RP-C203/,
    );
    expect(() => snCurve('36', 'free')).toThrow(/free to corrode/);
  });

  it('are those of the like classes of DNV-RP-C203: W3 is 36, G 50, F3 56, E 80, D 90 at 2 million cycles', () => {
    for (const [name, category] of [
      ['W3', 36],
      ['W1', 45],
      ['G', 50],
      ['F3', 56],
      ['F', 71],
      ['E', 80],
      ['D', 90],
      ['C', 125],
    ] as const)
      expect(Math.abs(cycles(name, 'air', category) / 2e6 - 1), name).toBeLessThan(0.02);
  });
});

it('grows with the power of the range: twice the range, 2³ the damage above the knee and 2⁵ below', () => {
  const curve = snCurve('F', 'protected');
  const D = (range: number) => cycleDamage(curve, range);
  expect(D(4 * curve.S_k) / D(2 * curve.S_k)).toBeCloseTo(8, 9);
  expect(D(curve.S_k / 2) / D(curve.S_k / 4)).toBeCloseTo(32, 9);
});

it('refuses a thickness of nothing', () => {
  expect(() => thicknessFactor(snCurve('D', 'air'), 0)).toThrow(/thickness must be positive/);
});
