import { describe, expect, it } from 'vitest';
import { cycleDamage } from '../../core/fatigue/cycle-damage.ts';
import { rangesOf, type CycleResponse } from '../../core/fatigue/cycle-response.ts';
import { historyDamage } from '../../core/fatigue/history-damage.ts';
import { blocksOf, type LoadHistory } from '../../core/fatigue/load-history.ts';
import { snCurve } from '../../core/fatigue/sn-curve.ts';
import { countedCycles } from '../../core/fatigue/counted-cycles.ts';
import { seeded } from '../geometry/seeded.ts';

const MPa = 1e6;

describe('stress ranges of a cycle, contact followed (statics worked by hand)', () => {
  it.each([
    // 30 at the peak, 10 at the trough, rest in the middle
    [{ up: 30, down: 10, z: 0, sides: 'opposite' }, 1, [40, 0]],
    [{ up: 30, down: 10, z: 0, sides: 'same' }, 1, [30, 10]],
    [{ up: 30, down: 10, z: 0, sides: 'same' }, 0.5, [15, 5]],
    // at rest half the way up: slopes 60 above, 20/3 below
    [{ up: 30, down: 10, z: 0.5, sides: 'same' }, 1, [30, 10]],
    [{ up: 30, down: 10, z: 0.5, sides: 'same' }, 0.75, [15, 25 / 3]],
    [{ up: 30, down: 10, z: 0.5, sides: 'same' }, 0.3, [4, 0]],
    [{ up: 30, down: 10, z: 0.5, sides: 'opposite' }, 0.75, [15 + 25 / 3, 0]],
    // at rest below the middle: small cycles stay on the upper side, slope 20
    [{ up: 30, down: 10, z: -0.5, sides: 'same' }, 0.25, [10, 0]],
    // a line that is slack half the way up and on
    [{ up: 0, down: 30, z: 0.5, sides: 'opposite' }, 1, [30, 0]],
    [{ up: 0, down: 30, z: 0.5, sides: 'opposite' }, 0.5, [20, 0]],
    // never at rest: the difference
    [{ up: 10, down: 30, z: 2, sides: 'opposite' }, 0.5, [10, 0]],
  ] as const)('%j at %d of the swing', (response, r, ranges) => {
    const given = rangesOf(response as CycleResponse, r);
    expect(given[0]).toBeCloseTo(ranges[0], 9);
    expect(given[1]).toBeCloseTo(ranges[1], 9);
  });

  it('are those that rainflow counts when the cycle is run many times and its stress written down', () => {
    const random = seeded(6);
    for (let n = 0; n < 30; n++) {
      const response: CycleResponse = {
        up: 50 * random(),
        down: 50 * random(),
        z: 1.8 * random() - 0.9,
        sides: n % 2 ? 'same' : 'opposite',
      };
      const r = random();
      const { up, down, z, sides } = response;
      const stress = (x: number) =>
        x > z ? (up * (x - z)) / (1 - z) : ((sides === 'same' ? 1 : -1) * down * (z - x)) / (1 + z);
      // every turn of the force, and the place of rest between
      const turns = [0, r, ...(Math.abs(z) < r ? [z] : []), -r, ...(Math.abs(z) < r ? [z] : [])];
      const series = Float64Array.from(
        Array.from({ length: 200 }, () => turns.slice(1))
          .flat()
          .map(stress),
      );
      const cycles = countedCycles(series).filter(({ count }) => count > 100);
      const counted = cycles.map(({ range }) => range).sort((a, b) => b - a);
      const expected = rangesOf(response, r).filter((range) => range > 1e-9);
      expect(counted.length).toBe(expected.length);
      expected.forEach((range, i) => expect(counted[i]).toBeCloseTo(range, 9));
    }
  });
});

describe('damage of a history at a detail', () => {
  const curve = snCurve('F', 'protected');
  const waves: LoadHistory = { kind: 'weibull', largest: 1.2, inCycles: 1e8, shape: 0.9, cycles: 4e7 };

  it('is that of the blocks where contact changes over, and the closed form where it does not', () => {
    const kinked: CycleResponse = { up: 180 * MPa, down: 60 * MPa, z: 0.2, sides: 'same' };
    const { ratio, n } = blocksOf(waves, 3000); // ten times finer
    let fine = 0;
    ratio.forEach((r, i) => {
      for (const range of rangesOf(kinked, r)) fine += n[i]! * cycleDamage(curve, range);
    });
    expect(Math.abs(historyDamage(curve, waves, kinked) / fine - 1)).toBeLessThan(2e-3);
    const straight: CycleResponse = { ...kinked, z: 0 };
    fine = 0;
    ratio.forEach((r, i) => {
      for (const range of rangesOf(straight, r)) fine += n[i]! * cycleDamage(curve, range);
    });
    expect(Math.abs(historyDamage(curve, waves, straight) / fine - 1)).toBeLessThan(1e-4);
  });

  it('of one size of cycle is n / N, each range of the cycle by itself, with the thickness on the stress', () => {
    const one: LoadHistory = { kind: 'constant', ratio: 1, cycles: 2e5 };
    const D = historyDamage(snCurve('W3', 'free'), one, { up: 20 * MPa, down: 10 * MPa, z: 0, sides: 'same' }, 1.5);
    expect(D / ((2e5 * (30 ** 3 + 15 ** 3)) / 10 ** 10.493)).toBeCloseTo(1, 9);
  });
});
