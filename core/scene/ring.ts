import type { Point } from '../geometry/geometry.ts';

/** A corner of a closed line in a plane; with a normal where the line is a curve that goes on smoothly. m */
export interface RingPoint {
  readonly u: number;
  readonly v: number;
  /** Out of the material. */
  readonly normal?: readonly [u: number, v: number];
  /** A line is drawn along the solid from here: a sharp corner, or the middle of a rounded one. */
  readonly edge: boolean;
}

/** Closed line with the material on its left: outer lines counter-clockwise, holes clockwise. */
export type Ring = readonly RingPoint[];

/** Furthest that a chord may stay off its arc, m: a quarter of a millimetre, under a pixel at any zoom that shows a whole bay. */
export const sagitta = 0.00025;

const { PI: π, acos, ceil, cos, sin, max } = Math;

/** Chords in a quarter of a circle of radius r: half the angle of a chord is acos(1 − sagitta/r). At least two. */
export const chordsInQuarter = (r: number): number => (r <= sagitta ? 2 : max(2, ceil(π / 4 / acos(1 - sagitta / r))));

/** Area of a disc less that of its chords' polygon, m²: r² (π − 2n sin(π/2n)), n chords in a quarter. */
export const lostByChords = (r: number): number => {
  const n = chordsInQuarter(r);
  return r ** 2 * (π - 2 * n * sin(π / (2 * n)));
};

/** Sharp corners. */
export const polygon = (points: readonly Point[]): Ring => points.map(([u, v]) => ({ u, v, edge: true }));

/** A circle as its chords. */
export function circle(u: number, v: number, r: number, quarter = chordsInQuarter(r)): Ring {
  return arc(u, v, r, 0, 2 * π, 4 * quarter).slice(0, -1);
}

/** An arc from one angle to another, both ends included. */
export function arc(u: number, v: number, r: number, from: number, to: number, chords: number): RingPoint[] {
  return Array.from({ length: chords + 1 }, (_, i) => {
    const angle = from + ((to - from) * i) / chords;
    const normal = [cos(angle), sin(angle)] as const;
    return { u: u + r * normal[0], v: v + r * normal[1], normal, edge: false };
  });
}

/** A rectangle about the origin with its corners rounded, each by `n` chords; one edge line along the middle of each corner. */
export function roundedRectangle(width: number, height: number, r: number, n = chordsInQuarter(r)): Ring {
  const [a, b] = [width / 2, height / 2];
  if (r === 0)
    return polygon([
      [-a, -b],
      [a, -b],
      [a, b],
      [-a, b],
    ]);
  const middle = Math.floor(n / 2);
  const corner = (u: number, v: number, from: number) =>
    arc(u, v, r, from, from + π / 2, n).map((point, i) => ({ ...point, edge: i === middle }));
  return [
    ...corner(a - r, b - r, 0),
    ...corner(r - a, b - r, π / 2),
    ...corner(r - a, r - b, π),
    ...corner(a - r, r - b, 1.5 * π),
  ];
}

/** The same line as the border of a hole. */
export const asHole = (ring: Ring): Ring =>
  ring
    .map(({ normal, ...point }) => (normal ? { ...point, normal: [-normal[0], -normal[1]] as const } : point))
    .reverse();
