import { describe, expect, it } from 'vitest';
import { boltGroupCoefficient } from '../../core/fixings/bolt-group-coefficient.ts';
import { largestInGroup, type BoltPoint } from '../../core/fixings/eccentric-group.ts';
import { rowLostCoefficient } from '../../core/fixings/row-lost-coefficient.ts';
import { rowsLeft } from '../../core/fixings/rows-left.ts';
import { seeded } from '../geometry/seeded.ts';

const { abs, cos, exp, hypot, sin, PI } = Math;
const row = (n: number, s = 3): BoltPoint[] => Array.from({ length: n }, (_, i) => [0, s * i]);
const middle = (n: number, e: number, s = 3): BoltPoint => [e, ((n - 1) * s) / 2];

describe('instantaneous centre of a bolt group', () => {
  it.each([
    [2, 4, 0.69],
    [3, 3, 1.75],
    [4, 3, 2.81],
    [6, 6, 3.55],
  ])(
    'gives C of one row of %i bolts at 3 in, %i in beside the load: %f (AISC Manual, Part 7, tables of C; from memory)',
    (n, e, C) => {
      const of = (up: number) => boltGroupCoefficient(row(n), { direction: [0, up], at: middle(n, e) });
      expect(abs(of(1) - C)).toBeLessThan(0.0051);
      expect(of(-1)).toBeCloseTo(of(1), 9);
    },
  );

  it('agrees with a search for the centre on a line, which a row loaded along itself allows (second method)', () => {
    for (const [n, e] of [
      [2, 4],
      [3, 3],
      [5, 1.5],
      [8, 12],
    ] as const)
      // prettier-ignore
      expect(boltGroupCoefficient(row(n), { direction: [0, 1], at: middle(n, e) })).toBeCloseTo(byBisection(n, e), 6);
  });

  it('is in balance: turning the group or its scale changes nothing', () => {
    const group: BoltPoint[] = [[0, 0], [0.08, 0], [0.2, 0.05], [0.02, 0.3], [0.19, 0.22]]; // prettier-ignore
    const C = boltGroupCoefficient(group, { direction: [1, 2], at: [0.5, 0.1] });
    const turned = (by: number, scale: number) => ([x, y]: BoltPoint): BoltPoint => [scale * (cos(by) * x - sin(by) * y), scale * (sin(by) * x + cos(by) * y)]; // prettier-ignore
    for (const [by, scale] of [
      [0.7, 1],
      [PI, 39.37],
      [-2, 1e-3],
    ] as const) {
      // prettier-ignore
      const t = turned(by, scale);
      expect(boltGroupCoefficient(group.map(t), { direction: t([1, 2]), at: t([0.5, 0.1]) })).toBeCloseTo(C, 8);
    }
  });

  it('settles on any pattern, between 0.95 of the elastic group and the number of bolts', () => {
    const random = seeded(7);
    for (let k = 0; k < 200; k++) {
      const n = 2 + Math.floor(12 * random());
      const group = Array.from({ length: n }, (): BoltPoint => [random(), 3 * random()]);
      const angle = 2 * PI * random();
      const at: BoltPoint = [10 * random() - 5, 10 * random() - 5];
      const C = boltGroupCoefficient(group, { direction: [cos(angle), sin(angle)], at });
      const elastic = 1 / largestInGroup(group, { Fx: cos(angle), Fy: sin(angle), at });
      expect(C).toBeGreaterThan(0.95 * elastic);
      expect(C).toBeLessThanOrEqual(n);
    }
  });

  it('counts all bolts where nothing turns them, and refuses what cannot be', () => {
    expect(boltGroupCoefficient(row(5), { direction: [1, 0], at: middle(5, 7) })).toBe(5);
    const line = { direction: [0, 1], at: [1, 0] } as const;
    expect(() => boltGroupCoefficient([], line)).toThrow(/no bolt/);
    expect(() => boltGroupCoefficient([[0, 0], [0, 0]], line)).toThrow(/one place/); // prettier-ignore
    expect(() => boltGroupCoefficient(row(2), { direction: [0, 0], at: [1, 0] })).toThrow(/no direction/);
  });
});

it('takes the worst of the rows that may be lost', () => {
  const rows = { a: 1.2, b: 0.8, nx: 5, ny: 4 };
  const worth = (['xLow', 'xHigh', 'yLow', 'yHigh'] as const).flatMap(
    (lost) =>
    ([[1, 0], [0, 1]] as const).map((direction) => boltGroupCoefficient(rowsLeft(rows, lost), { direction, at: [0.6, 0.4] })), // prettier-ignore
  );
  expect(rowLostCoefficient(rows)).toBeCloseTo(Math.min(...worth), 9);
});

/** C of a row loaded along itself at e from its line: the centre lies on the line across its middle, at x0 behind it. */
function byBisection(n: number, e: number): number {
  const ys = row(n).map(([, y]) => y - (3 * (n - 1)) / 2);
  const sums = (x0: number) => {
    const far = Math.max(...ys.map((y) => hypot(x0, y)));
    let [V, M] = [0, 0];
    for (const y of ys) {
      const r = hypot(x0, y);
      const R = (1 - exp((-3.4 * r) / far)) ** 0.55;
      V += (R * x0) / r;
      M += R * r;
    }
    return { V, P: M / (e + x0) };
  };
  let [low, high] = [1e-9, 1e4];
  for (let i = 0; i < 200; i++) {
    const x = (low + high) / 2;
    const { V, P } = sums(x);
    if (V < P) low = x;
    else high = x;
  }
  return sums(low).P;
}
