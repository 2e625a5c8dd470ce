import { describe, expect, it } from 'vitest';
import { eccentricGroup, largestInGroup, type BoltPoint } from '../../core/fixings/eccentric-group.ts';

const { hypot } = Math;

describe('elastic group of bolts in shear', () => {
  const group: BoltPoint[] = [[-0.075, -0.06], [0.075, -0.06], [-0.075, 0.06], [0.075, 0.06]]; // prettier-ignore

  it('gives 21.0 and 14.8 kN for the bracket of Shigley, Mechanical Engineering Design (4 bolts, 16 kN at 425 mm; from memory)', () => {
    const forces = eccentricGroup(group, { Fx: 0, Fy: 16e3, at: [0.425, 0] }).map(([x, y]) => hypot(x, y) / 1e3);
    expect(forces[1]).toBeCloseTo(20.973, 2);
    expect(forces[3]).toBeCloseTo(20.973, 2);
    expect(forces[0]).toBeCloseTo(14.789, 2);
    expect(forces[2]).toBeCloseTo(14.789, 2);
    expect(largestInGroup(group, { Fx: 0, Fy: 16e3, at: [0.425, 0] })).toBeCloseTo(20973, -1);
  });

  it.each([
    [2, 4, 0.7022],
    [3, 3, 1.6641],
    [4, 3, 2.5607],
    [6, 6, 3.0232],
  ])(
    'gives C = P / R of one row of %i bolts at 3 in, %i in beside the load: %f (vector method, worked by hand)',
    (n, e, C) => {
      const row = Array.from({ length: n }, (_, i): BoltPoint => [0, 3 * i]);
      expect(1 / largestInGroup(row, { Fx: 0, Fy: 1, at: [e, 0] })).toBeCloseTo(C, 3);
    },
  );

  it('balances force and moment, along both axes', () => {
    const odd: BoltPoint[] = [[0, 0], [0.3, 0.02], [0.1, 0.4], [0.35, 0.5], [-0.2, 0.1]]; // prettier-ignore
    const force = { Fx: 3, Fy: -7, at: [0.9, -0.4] as const };
    const carried = eccentricGroup(odd, force);
    const sum = (of: (f: readonly [number, number], p: BoltPoint) => number): number =>
      carried.reduce((s, f, i) => s + of(f, odd[i]!), 0);
    expect(sum(([x]) => x)).toBeCloseTo(3, 12);
    expect(sum(([, y]) => y)).toBeCloseTo(-7, 12);
    expect(sum(([fx, fy], [x, y]) => x * fy - y * fx)).toBeCloseTo(0.9 * -7 - -0.4 * 3, 12);
  });

  it('refuses an empty group, and a moment on bolts in one place', () => {
    expect(() => eccentricGroup([], { Fx: 0, Fy: 1, at: [0, 0] })).toThrow(/no bolt/);
    expect(() => eccentricGroup([[0, 0]], { Fx: 0, Fy: 1, at: [1, 0] })).toThrow(/one place/);
    expect(eccentricGroup([[0, 0]], { Fx: 0, Fy: 1, at: [0, 0] })).toEqual([[0, 1]]);
  });
});
