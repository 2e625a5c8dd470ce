import { describe, expect, it } from 'vitest';
import { bridle, type Vector3 } from '../../core/recovery/bridle.ts';

/** Two eyes 2 m apart, legs at an angle over the horizontal, the centre below the middle. */
const twoLegs = (degrees: number) => {
  const L = 1 / Math.cos((degrees * Math.PI) / 180);
  return bridle([[-1, 0, 0], [1, 0, 0]], [L, L], [0, 0, -0.2]); // prettier-ignore
};
const square: readonly Vector3[] = [[-1, -1, 0], [1, -1, 0], [1, 1, 0], [-1, 1, 0]]; // prettier-ignore

it('pulls each of two legs as sling tables print: 1.000, 0.707, 0.577 of the load at 30, 45, 60 degrees over the horizontal', () => {
  for (const [degrees, part] of [
    [30, 1],
    [45, 0.7071],
    [60, 0.5774],
  ] as const)
    // prettier-ignore
    for (const T of twoLegs(degrees).tensions) expect(T).toBeCloseTo(part, 4);
});

it('has the tension factors of a rigging table: 1.155, 1.414, 2.000 a leg over its upright half', () => {
  for (const [degrees, factor] of [
    [60, 1.155],
    [45, 1.414],
    [30, 2],
  ] as const)
    expect(2 * twoLegs(degrees).tensions[0]!).toBeCloseTo(factor, 3);
});

it('gives four legs at 60 degrees 0.2887 of the load each: 44.18 kN of 12 t at a dynamic factor of 1.3 without skew, 55.22 kN with 1.25', () => {
  const L = Math.SQRT2 / Math.cos(Math.PI / 3);
  const { tensions, tilt } = bridle(square, [L, L, L, L], [0, 0, 0]);
  for (const T of tensions) expect(T).toBeCloseTo(0.288675, 6);
  expect(tilt).toBeCloseTo(0, 9);
  expect((1.25 * tensions[0]! * 1.3 * 12_000 * 9.81) / 1e3).toBeCloseTo(55.22, 2);
});

describe('legs that are not alike', () => {
  it('balance the weight: forces and their resultant, three legs of three lengths (statics)', () => {
    const eyes: Vector3[] = [[-1, -0.7, 0], [1.3, -0.8, 0.1], [0.2, 1.1, 0]]; // prettier-ignore
    const centre: Vector3 = [0.1, -0.1, -0.3];
    const { tensions, hook } = bridle(eyes, [2.1, 2.3, 2.2], centre);
    const up = [0, 1, 2].map((k) => hook[k]! - centre[k]!);
    const length = Math.hypot(...up);
    for (const k of [0, 1, 2]) {
      const sum = eyes.reduce((s, eye, i) => s + (tensions[i]! * (hook[k]! - eye[k]!)) / Math.hypot(...[0, 1, 2].map((j) => hook[j]! - eye[j]!)), 0); // prettier-ignore
      expect(sum).toBeCloseTo(up[k]! / length, 9);
    }
    eyes.forEach((eye, i) => expect(Math.hypot(...[0, 1, 2].map((j) => hook[j]! - eye[j]!))).toBeCloseTo([2.1, 2.3, 2.2][i]!, 6)); // prettier-ignore
  });

  it('tilt a load whose centre is off by atan(e / h), four legs', () => {
    const L = Math.hypot(Math.SQRT2, 2);
    const { tilt } = bridle(square, [L, L, L, L], [0.2, 0, 0]);
    expect(tilt).toBeCloseTo(Math.atan(0.2 / 2), 9);
  });

  it('a single leg carries all, and hangs the centre below its eye', () => {
    const { tensions, tilt } = bridle([[0.3, 0, 0.5]], [1], [0, 0, 0]);
    expect(tensions[0]).toBeCloseTo(1, 12);
    expect(tilt).toBeCloseTo(Math.atan(0.3 / 0.5), 9);
  });

  it('three of a square’s four legs: the one opposite the lost leg goes slack, the other two share (statics)', () => {
    const L = Math.hypot(Math.SQRT2, 2);
    const { tensions } = bridle(square.slice(1), [L, L, L], [0, 0, 0]);
    expect(tensions[1]!).toBeCloseTo(0, 9);
    expect(tensions[0]!).toBeCloseTo(L / 4, 9);
  });
});

it('refuses legs that are too short to meet, and a load that turns over', () => {
  expect(() => bridle(square, [1, 1, 1, 1], [0, 0, 0])).toThrow(/too short to meet/);
  expect(() => bridle(square, [1.5, 1.5, 1.5, 1.5], [0, 0, 3])).toThrow(/turns over/);
});
