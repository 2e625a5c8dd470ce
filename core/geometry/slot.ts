import type { Point } from './geometry.ts';

/** A slotted hole: straight between two round ends. `length`: over all, m. */
export interface Slot {
  readonly length: number;
  readonly along: 'x' | 'y';
}

/** A round hole, or a slot as wide as the diameter. m */
export interface HoleShape {
  readonly diameter: number;
  readonly slot?: Slot | undefined;
}

const { PI: π, cos, sin } = Math;

/** From a hole's centre to the centre of a slot's round ends, m: along x or y. Nothing for a round hole. */
export const slotReach = ({ diameter, slot }: HoleShape, axis: 'x' | 'y'): number =>
  slot?.along === axis ? (slot.length - diameter) / 2 : 0;

const straight = ({ diameter, slot }: HoleShape): number => (slot ? slot.length - diameter : 0);

/** m² */
export const holeArea = (hole: HoleShape): number => (π / 4) * hole.diameter ** 2 + straight(hole) * hole.diameter;

/** m */
export const holePerimeter = (hole: HoleShape): number => π * hole.diameter + 2 * straight(hole);

/** Second moments ∫x², ∫y² about the hole's own centre, m⁴: rectangle and two half discs, exact. */
export function holeMoments(hole: HoleShape): readonly [xx: number, yy: number] {
  const [R, h] = [hole.diameter / 2, straight(hole) / 2];
  const disc = (π / 4) * R ** 4;
  const long = (4 / 3) * R * h ** 3 + π * R ** 2 * h ** 2 + (8 / 3) * h * R ** 3 + disc;
  const wide = (4 / 3) * h * R ** 3 + disc;
  return hole.slot?.along === 'y' ? [wide, long] : [long, wide];
}

/** The outline of a slot, counter-clockwise, each round end as chords. m */
export function slotRing(x: number, y: number, hole: HoleShape, chords = 12): Point[] {
  const [a, b] = [slotReach(hole, 'x'), slotReach(hole, 'y')];
  const start = a > 0 ? -π / 2 : 0;
  const end = (sign: 1 | -1, from: number): Point[] =>
    Array.from({ length: chords + 1 }, (_, k): Point => {
      const angle = from + (π * k) / chords;
      return [x + sign * a + (hole.diameter / 2) * cos(angle), y + sign * b + (hole.diameter / 2) * sin(angle)];
    });
  return [...end(1, start), ...end(-1, start + π)];
}

/** Where a slot's straights begin and end, counter-clockwise: the first two are one straight, then a round end follows. m */
export function slotCorners(hole: HoleShape & { readonly x: number; readonly y: number }): Point[] {
  const { x, y, diameter } = hole;
  const [a, b, R] = [slotReach(hole, 'x'), slotReach(hole, 'y'), diameter / 2];
  return a > 0
    ? [[x - a, y - R], [x + a, y - R], [x + a, y + R], [x - a, y + R]]
    : [[x + R, y - b], [x + R, y + b], [x - R, y + b], [x - R, y - b]]; // prettier-ignore
}
