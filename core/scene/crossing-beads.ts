import type { Crossing, Tube } from '../geometry/geometry.ts';
import { legOf, type Bead } from './bead.ts';
import type { Vector } from './scene.ts';

const right: Vector = [1, 0, 0];
const left: Vector = [-1, 0, 0];
const on: Vector = [0, 1, 0];
const back: Vector = [0, -1, 0];
const up: Vector = [0, 0, 1];
const down: Vector = [0, 0, -1];

/** Welds where two tubes meet, of the grid's throat. Drawn on the flats; the run around a corner is not drawn. */
export function crossingBeads({ x, y }: Crossing, main: Tube, cross: Tube, throat: number): Bead[] {
  return main.top <= cross.bottom + 1e-6
    ? stackedBeads(x, y, main, cross, legOf(throat))
    : flushBeads(x, y, main, cross, legOf(throat));
}

/** Around the flats in contact: each run lies in the groove under a rounded corner. */
function stackedBeads(x: number, y: number, main: Tube, cross: Tube, leg: number): Bead[] {
  const [a, b] = [flatHalf(cross), flatHalf(main)];
  const z = main.top;
  return [
    { root: [x + a, y, z], legs: [right, up], leg: wide(cross, leg), length: 2 * b },
    { root: [x - a, y, z], legs: [left, up], leg: wide(cross, leg), length: 2 * b },
    { root: [x, y + b, z], legs: [on, down], leg: wide(main, leg), length: 2 * a },
    { root: [x, y - b, z], legs: [back, down], leg: wide(main, leg), length: 2 * a },
  ];
}

/** Where a piece of the cross tube ends on a main tube's side. */
function flushBeads(x: number, y: number, main: Tube, cross: Tube, leg: number): Bead[] {
  const half = main.section.width / 2;
  const [R, r] = [main.section.outerRadius, cross.section.outerRadius];
  const b = cross.section.width / 2;
  const low = Math.max(cross.bottom + r, main.bottom + R);
  const high = Math.min(cross.top - r, main.top - R);
  return ([1, -1] as const).flatMap((side): Bead[] => {
    const face = y + side * half;
    const meets = cross.pieces.some(([from, to]) => Math.abs((side > 0 ? from : to) - face) < 1e-6);
    if (!meets) return [];
    const [away, into] = side > 0 ? [on, back] : [back, on];
    const upright = (sideways: Vector, at: number): Bead => ({
      root: [at, face, (low + high) / 2],
      legs: [sideways, away],
      leg,
      length: high - low,
    });
    /** Over the tube a fillet where the main tube's side is flat there; where it curves away, the groove is filled. */
    const lying = (z: number, out: Vector, inwards: Vector, room: number): Bead => ({
      root: [x, face, z],
      ...(room >= leg || main.section.shape === 'round'
        ? { legs: [out, away] as const, leg }
        : { legs: [inwards, into] as const, leg: R }),
      length: 2 * (b - r),
    });
    return [
      upright(right, x + b),
      upright(left, x - b),
      lying(cross.top, up, down, main.top - R - cross.top),
      lying(cross.bottom, down, up, cross.bottom - main.bottom - R),
    ];
  });
}

const flatHalf = ({ section }: Tube): number => section.width / 2 - section.outerRadius;

/** The bead reaches out from under the corner: as wide as the corner's radius at least. */
const wide = ({ section }: Tube, leg: number): number =>
  section.shape === 'round' ? leg : Math.max(leg, section.outerRadius);
