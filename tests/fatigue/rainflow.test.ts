import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countedCycles, type Cycles } from '../../core/fatigue/counted-cycles.ts';
import { rainflow } from '../../core/fatigue/rainflow.ts';
import { Refusal } from '../../core/refusal.ts';

const counted = (...values: number[]): readonly Cycles[] => countedCycles(Float64Array.from(values));

describe('rainflow counting', () => {
  it('gives the table of ASTM E1049-85, 5.4.4 and Fig. 6, for −2 1 −3 5 −1 3 −4 4 −2: ranges, means and counts (numbers of the table from memory)', () => {
    expect(counted(-2, 1, -3, 5, -1, 3, -4, 4, -2)).toEqual([
      { range: 3, mean: -0.5, count: 0.5 },
      { range: 4, mean: -1, count: 0.5 },
      { range: 4, mean: 1, count: 1 },
      { range: 6, mean: 1, count: 0.5 },
      { range: 8, mean: 0, count: 0.5 },
      { range: 8, mean: 1, count: 0.5 },
      { range: 9, mean: 0.5, count: 0.5 },
    ]);
  });

  it('sums n r³ to 1094 and n r⁵ to 67838 for that example (worked by hand from the table)', () => {
    const sum = (power: number) =>
      counted(-2, 1, -3, 5, -1, 3, -4, 4, -2).reduce((all, { range, count }) => all + count * range ** power, 0);
    expect([sum(3), sum(5)]).toEqual([1094, 67838]);
  });

  it('counts values on the way and plateaus as nothing', () => {
    expect(counted(0, 1, 1, 2, 5, 5, 3, 1, 1)).toEqual(counted(0, 5, 1));
  });

  it('counts nothing of a series that never moves, and of none', () => {
    expect(counted(7, 7, 7)).toEqual([]);
    expect(counted()).toEqual([]);
  });

  it.each([
    [[0, 1, NaN, 2], 3],
    [[0, Infinity, 1], 2],
    [[0, 1, -Infinity], 3],
    [[NaN, 1], 1],
    [[NaN], 1],
  ])('refuses %j and names value %i', (values, place) => {
    expect(() => counted(...values)).toThrow(Refusal);
    expect(() => counted(...values)).toThrow(new RegExp(`value ${place}\\b`, 'i'));
  });
});

const series = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 2, maxLength: 300 });
const total = (cycles: readonly Cycles[]): number => cycles.reduce((sum, { count }) => sum + count, 0);
const spectrum = (cycles: readonly Cycles[], scale = 1): [number, number][] => {
  const of = new Map<number, number>();
  for (const { range, count } of cycles) of.set(range * scale, (of.get(range * scale) ?? 0) + count);
  return [...of].sort(([a], [b]) => a - b);
};

describe('whatever the series', () => {
  it('half as many cycles are counted as there are ranges between reversals', () => {
    fc.assert(
      fc.property(series, (values) => {
        let ranges = 0;
        let direction = 0;
        for (let i = 1; i < values.length; i++) {
          const now = Math.sign(values[i]! - values[i - 1]!);
          if (now !== 0 && now !== direction) {
            ranges++;
            direction = now;
          }
        }
        expect(total(counted(...values))).toBe(ranges / 2);
      }),
    );
  });

  it('the largest range is that from the lowest to the highest value', () => {
    fc.assert(
      fc.property(series, (values) => {
        const cycles = counted(...values);
        const spread = Math.max(...values) - Math.min(...values);
        expect(cycles.length === 0 ? 0 : cycles.at(-1)!.range).toBe(spread);
      }),
    );
  });

  it('turned over, every range and count stays and the means change sign', () => {
    fc.assert(
      fc.property(series, (values) => {
        const turned = counted(...values.map((value) => 0 - value));
        const mirrored = counted(...values)
          .map(({ range, mean, count }) => ({ range, mean: 0 - mean, count }))
          .sort((a, b) => a.range - b.range || a.mean - b.mean);
        expect(turned).toEqual(mirrored);
      }),
    );
  });

  it('twice as large, every range is twice as large', () => {
    fc.assert(
      fc.property(series, (values) => {
        expect(spectrum(counted(...values.map((value) => 2 * value)))).toEqual(spectrum(counted(...values), 2));
      }),
    );
  });

  it('begun at its highest value and closed there, each repetition adds the same whole cycles', () => {
    fc.assert(
      fc.property(series, (values) => {
        const at = values.indexOf(Math.max(...values));
        const round = [...values.slice(at), ...values.slice(0, at)];
        const times = (n: number) => spectrum(counted(...Array.from({ length: n }, () => round).flat(), round[0]!));
        const once = new Map(times(1));
        for (const [range, count] of times(3)) expect(count).toBe(3 * (once.get(range) ?? NaN));
      }),
    );
  });

  it('cut into the cycles that a walk with a pile of pairs closes (a second method: four points at a time)', () => {
    fc.assert(
      fc.property(series, (values) => {
        expect(spectrum(counted(...values))).toEqual(fourPoints(values));
      }),
    );
  });
});

/** The four-point method: an inner pair between two outer points that contain it is a cycle; the rest are halves. */
function fourPoints(values: readonly number[]): [number, number][] {
  const turning: number[] = [];
  for (const value of values) {
    if (turning.at(-1) === value) continue;
    const [a, b] = [turning.at(-2), turning.at(-1)];
    if (a !== undefined && b !== undefined && Math.sign(b - a) === Math.sign(value - b)) turning.pop();
    turning.push(value);
  }
  const of = new Map<number, number>();
  const add = (range: number, count: number) => of.set(range, (of.get(range) ?? 0) + count);
  for (let i = 0; i + 3 < turning.length;) {
    const [a, b, c, d] = turning.slice(i, i + 4) as [number, number, number, number];
    const inner = Math.abs(c - b);
    if (inner <= Math.abs(b - a) && inner <= Math.abs(d - c)) {
      add(inner, 1);
      turning.splice(i + 1, 2);
      i = Math.max(0, i - 2);
    } else i++;
  }
  for (let i = 1; i < turning.length; i++) add(Math.abs(turning[i]! - turning[i - 1]!), 0.5);
  return [...of].sort(([a], [b]) => a - b);
}

it('takes a vibration of a hundred thousand that dies away, whose ranges all stay open, in one pass', () => {
  const dying = Float64Array.from({ length: 100_000 }, (_, i) => (i % 2 ? -1 : 1) * (100_000 - i));
  let count = 0;
  rainflow(dying, (_range, _mean, n) => (count += n));
  expect(count).toBe(99_999 / 2);
});
