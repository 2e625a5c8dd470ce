import type { Crossing } from '../geometry/geometry.ts';
import type { Motion, TubeFrame } from './tube-frame.ts';

/**
 * What acts on a crossing under one solved load, N and N·m: right-handed about x (along the main tubes), y and z (up), as forces on the
 * joint from the arm at larger x or y. M0 V0 T0 run through the main tube and M1 V1 T1 through the cross tube (the mean of both
 * sides); P, D1 and D0 go over from the cross tube: a force up, and moments about x and y.
 */
export interface CrossingActions {
  readonly M0: number;
  readonly V0: number;
  readonly T0: number;
  readonly M1: number;
  readonly V1: number;
  readonly T1: number;
  readonly P: number;
  readonly D1: number;
  readonly D0: number;
}

/** The actions at each crossing, by its id: from those of both tubes on either side of it. */
export function crossingActions(
  frame: TubeFrame,
  crossings: readonly Crossing[],
  motion: Motion,
  load: Float64Array,
): Map<string, CrossingActions> {
  const { tubes, ends } = frame.lines;
  const index = new Map(tubes.map(({ id }, i) => [id, i]));
  const places = tubes.map((): Map<number, Sides> => new Map());
  for (const { main, cross, x, y } of crossings)
    for (const [tube, place] of [[index.get(main)!, x], [index.get(cross)!, y]] as const)
      places[tube]!.set(nano(place), { before: [0, 0, 0], after: [0, 0, 0] }); // prettier-ignore
  const begun = new Set<Sides>();
  frame.walk(motion, load, (tube, place, M, V, T) => {
    const sides = places[tube]!.get(nano(place));
    if (!sides) return;
    // a walk comes to a node at the end of one piece of tube and at the start of the next
    const first = !begun.has(sides) && nano(place) !== nano(ends[tube]![0]);
    begun.add(sides);
    sides[first ? 'before' : 'after'] = [M, V, T];
  });
  return new Map(
    crossings.map(({ id, main, cross, x, y }) => {
      const chord = places[index.get(main)!]!.get(nano(x))!;
      const brace = places[index.get(cross)!]!.get(nano(y))!;
      const mean = ({ before, after }: Sides, k: number): number => (before[k]! + after[k]!) / 2;
      const jump = ({ before, after }: Sides, k: number): number => after[k]! - before[k]!;
      // moments that hollow a tube upward turn by −y on the main tube's arm and by x on the cross tube's; shear is positive down there
      return [
        id,
        {
          M0: -mean(chord, 0),
          V0: -mean(chord, 1),
          T0: mean(chord, 2),
          M1: mean(brace, 0),
          V1: -mean(brace, 1),
          T1: mean(brace, 2),
          P: -jump(brace, 1),
          D1: jump(brace, 0),
          D0: jump(brace, 2),
        },
      ];
    }),
  );
}

/** Moment, shear and torque on either side of a crossing. */
interface Sides {
  before: readonly number[];
  after: readonly number[];
}

/** Places a nanometre apart are one. */
const nano = (place: number): number => Math.round(1e9 * place);
