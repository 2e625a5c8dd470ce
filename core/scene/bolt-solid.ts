import { sleeveOf } from '../geometry/sleeve-of.ts';
import type { Bolt } from '../catalogue/rows.ts';
import type { BoltedFixing } from '../document/schema.ts';
import { emptyMesh, type GrowingMesh } from './growing-mesh.ts';
import { prism } from './prism.ts';
import { circle, polygon, type Ring } from './ring.ts';

const { PI: π, cos, sin, sqrt } = Math;

/** What a bolt goes through, m. */
export interface BoltSeat {
  readonly row: Bolt;
  readonly fixing: Pick<BoltedFixing, 'into' | 'countersunk' | 'sleeve'>;
  /** Thickness of the panel. */
  readonly thickness: number;
  readonly hole: number;
  readonly tubeHeight: number;
  readonly wall: number;
}

/**
 * A bolt as it is built in: head, washers, shank, nut and what stands in the tube, as `fastenersOn` weighs it. It
 * stands along z, outwards from the panel, z = 0 where panel and tube meet. Each piece is a closed solid; they touch or
 * run through each other (the shank through nut and washers), so it is for looking at, not for weighing. No thread, no
 * chamfers; few chords, since there are thousands of it. A countersunk head is a disc level with the panel.
 */
export function boltSolid({ row, fixing, thickness: t, hole, tubeHeight: H, wall }: BoltSeat): GrowingMesh {
  const into = emptyMesh();
  const d = row.diameter;
  const stack = (ring: Ring, from: number, to: number): void =>
    prism(
      into,
      { outer: ring, holes: [] },
      { origin: [0, 0, 0], u: [1, 0, 0], v: [0, 1, 0] },
      [from, to],
      new Set([ring]),
    );
  const shank = (from: number, to: number): void => stack(circle(0, 0, d / 2, 2), from, to);
  const washer = (from: number): void => stack(circle(0, 0, row.washerOuter / 2, 3), from, from + row.washerThickness);
  const nut = (from: number): void => stack(hexagon(row.headAcrossFlats), from, from + row.nutHeight);

  const past = row.nutHeight + 2 * row.pitch;
  const seat = t + row.washerThickness;
  // Of a clamp the leg beside the tube is shown, with its end below.
  if (fixing.into === 'welded stud' || fixing.into === 'clamp') {
    shank(fixing.into === 'clamp' ? -H - d : 0, seat + past);
    washer(t);
    nut(seat);
    return into;
  }
  if (fixing.countersunk) stack(circle(0, 0, d, 3), t / 2, t + 0.0005);
  else {
    washer(t);
    stack(hexagon(row.headAcrossFlats), seat, seat + row.headHeight);
  }
  const head = fixing.countersunk ? t : seat;
  const [w, n] = [row.washerThickness, row.nutHeight];
  switch (fixing.into) {
    case 'through-bolt with sleeve':
      shank(-H - w - past, head);
      stack(circle(0, 0, sleeveOf(fixing, hole, d).outer / 2, 2), wall - H, -wall);
      washer(-H - w);
      nut(-H - w - n);
      return into;
    case 'one-sided':
      shank(-wall - w - past, head);
      washer(-wall - w);
      nut(-wall - w - n);
      return into;
    case 'tapped pad':
      shank(-wall - d, head);
      stack(square(3 * d), -wall - d, -wall);
      return into;
  }
}

const hexagon = (acrossFlats: number): Ring =>
  polygon(
    Array.from({ length: 6 }, (_, i) => {
      const angle = (i * π) / 3;
      return [(acrossFlats / sqrt(3)) * cos(angle), (acrossFlats / sqrt(3)) * sin(angle)];
    }),
  );

const square = (side: number): Ring =>
  polygon([
    [-side / 2, -side / 2],
    [side / 2, -side / 2],
    [side / 2, side / 2],
    [-side / 2, side / 2],
  ]);
