import { describe, expect, it } from 'vitest';
import {
  largestAcrossWeldGroup,
  largestInWeldGroup,
  weldSection,
  type WeldLine,
} from '../../core/fixings/eccentric-weld.ts';
import { weldGroupLength } from '../../core/fixings/weld-group-length.ts';
import { sideLostAcross, sideLostInPlane, sideLostLength, weldsLeft } from '../../core/fixings/weld-side-lost.ts';

const { cos, hypot, sin } = Math;
const pair = (k: number): WeldLine[] => [[[-k / 2, -0.5], [-k / 2, 0.5]], [[k / 2, -0.5], [k / 2, 0.5]]]; // prettier-ignore

describe('elastic group of welds', () => {
  it('U of 56 + 190 + 56 mm, 6 mm leg, 25 kN at 100 mm beyond its long run: centroid 10.4 mm, 44.0 MPa (Shigley, Mechanical Engineering Design, from memory)', () => {
    const u: WeldLine[] = [[[0, 0], [0, 190]], [[0, 0], [56, 0]], [[0, 190], [56, 190]]]; // prettier-ignore
    const { L, centroid, xx, yy } = weldSection(u);
    expect([L, centroid[1]]).toEqual([302, 95]);
    expect(centroid[0]).toBeCloseTo(10.4, 1);
    expect((xx + yy) / 1e6).toBeCloseTo(1.6669, 4);
    expect(largestInWeldGroup(u, { Fx: 0, Fy: 25e3, at: [-100, 95] }) / (0.707 * 6)).toBeCloseTo(43.93, 1);
  });

  it('two runs of 50 mm, 100 mm apart, 10 kN at 150 mm: 23.574 and 70.721 MPa on a leg of 6 mm (by hand: A, and M c/I)', () => {
    const runs: WeldLine[] = [[[0, 0], [50, 0]], [[0, 100], [50, 100]]]; // prettier-ignore
    expect(largestAcrossWeldGroup(runs, 1e4, [25, 200]) / (0.707 * 6)).toBeCloseTo(23.574 + 70.721, 1);
    expect(() => largestAcrossWeldGroup([runs[0]!], 1e4, [25, 50])).toThrow(/turns about it/);
    expect(() => weldSection([])).toThrow(/no weld/);
  });
});

describe('instantaneous centre of a group of welds', () => {
  // C of that table counts φ = 0.75 and both runs: 2.784 of them for a weld pulled along.
  it.each([
    [0, 0.2, 2.64],
    [0, 0.5, 1.72],
    [0, 1, 0.957],
    [0, 1.4, 0.695],
    [0.2, 1.4, 0.724],
    [0.5, 0.6, 1.63],
    [0.5, 1, 1.12],
    [0.5, 1.4, 0.844],
    [0.8, 0.4, 2.11],
    [0.8, 1.4, 0.973],
  ])('two runs %f l apart, force at %f l: C = %f (AISC Manual, metric LRFD, Table 8-38)', (k, a, C) => {
    const l = weldGroupLength(pair(k), { direction: [0, 1], at: [a, 0] }, 0.5);
    expect(Math.abs((l * 2.784) / 2 / C - 1)).toBeLessThan(0.003);
  });

  // C in kips for each sixteenth of an inch and each inch: 1.856 for a weld pulled along (E70).
  it.each([
    [0.1, 0.1, 2.28],
    [0.2, 0.1, 2.78],
    [0.3, 0.2, 3.11],
    [0.5, 0.1, 4.37],
    [0.5, 0.15, 4.27],
    [0.5, 0.2, 4.11],
    [0.5, 0.25, 3.9],
    [0.2, 0.25, 2.51],
  ])('a bracket of arms %f l, force %f l from its centroid: C = %f (AISC Manual, 13th ed., Table 8-8)', (k, a, C) => {
    const c: WeldLine[] = [[[0, 0], [0, 1]], [[0, 0], [k, 0]], [[0, 1], [k, 1]]]; // prettier-ignore
    const l = weldGroupLength(c, { direction: [0, 1], at: [a + k ** 2 / (1 + 2 * k), 0.5] }, 0.5);
    expect(Math.abs(1.856 * l - C)).toBeLessThan(0.011);
  });

  it('does not depend on where the group lies, how it is turned or how large it is', () => {
    const lines: WeldLine[] = [[[0, 0], [0.4, 0]], [[0, 0], [0, 0.7]], [[0.5, 0.1], [0.6, 0.6]]]; // prettier-ignore
    const move = ([x, y]: readonly [number, number]): [number, number] => [
      3 * (x * cos(0.7) - y * sin(0.7)) + 5,
      3 * (x * sin(0.7) + y * cos(0.7)) - 2,
    ];
    const direction = [0.3, 0.8] as const;
    const there = lines.map(([p, q]): WeldLine => [move(p), move(q)]);
    const turned: [number, number] = [0.3 * cos(0.7) - 0.8 * sin(0.7), 0.3 * sin(0.7) + 0.8 * cos(0.7)];
    const one = weldGroupLength(lines, { direction, at: [1.1, -0.3] }, 0.5);
    expect(weldGroupLength(there, { direction: turned, at: move([1.1, -0.3]) }, 0.5) / one).toBeCloseTo(3, 5);
  });

  it('with no rise it is never worth more than its length, nor much less than the elastic group', () => {
    for (const [a, b] of [[1, 1], [1, 5], [5, 1], [8, 1]] as const)
      for (const [nx, ny, r] of [[1, 0, 1], [1, 1, 1], [6, 3, 0.1], [6, 0, 0.1]] as const) {
        const sides = { a, b, lx: a, ly: ny ? b : 0, nx, ny, rx: r * (nx > 1 ? a / nx : a), ry: ny ? r * (ny > 1 ? b / ny : b) : 0 }; // prettier-ignore
        const worth = sideLostLength(sides, 0);
        const left = Math.max(...(['x', 'y'] as const).map((lost) => weldSection(weldsLeft(sides, lost)).L));
        expect(worth).toBeLessThanOrEqual(left);
        expect(worth * sideLostInPlane(sides, 1)).toBeGreaterThan(0.95);
      }
  }); // prettier-ignore

  it('refuses a force of no direction', () => {
    expect(() => weldGroupLength(pair(1), { direction: [0, 0], at: [1, 0] }, 0)).toThrow(/no direction/);
  });
});

it('one side lost: runs lie at both ends of what is welded, and the far edge of a square takes W/L + W e c/I', () => {
  const sides = { a: 1, b: 1, lx: 0.8, ly: 0.8, nx: 3, ny: 2, rx: 0.2, ry: 0.1 };
  const left = weldsLeft(sides, 'y');
  expect(left).toHaveLength(3 + 2 + 2);
  expect(left[0]![0][0]).toBeCloseTo(0.1, 12);
  expect(left[2]![1][0]).toBeCloseTo(0.9, 12);
  expect(weldSection(left).L).toBeCloseTo(3 * 0.2 + 4 * 0.1, 12);
  const square = { a: 1, b: 1, lx: 1, ly: 1, nx: 1, ny: 1, rx: 1, ry: 1 };
  expect(sideLostAcross(square, 3)).toBeCloseTo(2, 9);
  expect(hypot(sideLostInPlane({ ...square, ly: 0, ny: 0, ry: 0 }, 1))).toBeCloseTo(hypot(1, 3), 9);
});
