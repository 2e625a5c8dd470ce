import { pointReactions, pointSupportedPlate } from '../solve/point-supported-plate.ts';
import type { UniformPlate } from '../solve/uniform-plate.ts';
import { boltGroupCoefficient } from './bolt-group-coefficient.ts';
import { centroidOf, eccentricGroup, type BoltPoint } from './eccentric-group.ts';
import type { BoltRow } from './rows-left.ts';
import { tensionGroup } from './tension-group.ts';

const { hypot, max, min } = Math;

/** Bolts anywhere on a plate a × b, m from its low corner, and which of them stand along each of its sides. */
export interface ListedGroup {
  readonly a: number;
  readonly b: number;
  readonly points: readonly BoltPoint[];
  readonly rows: Readonly<Record<BoltRow, readonly number[]>>;
}

/** What is left of a group for each of its rows that may be lost, corner bolts with it; a side without bolts has no row to lose. */
export const groupsLeft = ({ points, rows }: ListedGroup): readonly (readonly BoltPoint[])[] =>
  Object.values(rows)
    .filter((row) => row.length > 0)
    .map((row) => points.filter((_, i) => !row.includes(i)));

/** Largest push of a bolt against a pressure on the plate, over that pressure, m²: the plate bending between rigid bolts.
 *  Refuses what `pointSupportedPlate` refuses. Error: 0.5 %. Source: see there. */
export const pushOfPlate = (group: ListedGroup, plate: Plate): number =>
  max(0, ...pointReactions(onePascal(group, plate), { points: group.points }));

/** The same with a row lost, the worst of them: the plate bending between the bolts that are left. */
export const pushOfPlateLeft = (group: ListedGroup, plate: Plate): number =>
  max(...groupsLeft(group).map((points) => max(...pointReactions(onePascal(group, plate), { points }))));

/** The same with a row lost, the worst of them: the plate rigid on the bolts that are left (elastic group), m².
 *  Refuses what is left on one line. Source: see `tensionGroup`. */
export const pushOfGroupLeft = (group: ListedGroup): number => {
  const { a, b } = group;
  return max(...groupsLeft(group).map((points) => max(...tensionGroup(points, a * b, [a / 2, b / 2]))));
};

/** Largest stress of the plate on its bolts, times t² / q, m²: outside discs of `exclusionRadius` (m) round them. With
 *  `left`, on the bolts that are left when a row is lost, the worst of them. Error: see `pointSupportedPlate`. */
export function stressOfPlate(group: ListedGroup, plate: Plate, exclusionRadius: number, left = false): number {
  const of = onePascal(group, plate);
  const groups = left ? groupsLeft(group) : [group.points];
  return (
    max(...groups.map((points) => pointSupportedPlate(of, { points, exclusionRadius }).stressLargest)) * plate.t ** 2
  );
}

/** Largest deflection of the plate on its bolts, times D / q, m⁴. Error: see `pointSupportedPlate`. */
export function sagOfPlate(group: ListedGroup, plate: Plate, exclusionRadius: number): number {
  const { E, t, nu } = plate;
  const w = pointSupportedPlate(onePascal(group, plate), { points: group.points, exclusionRadius }).deflectionLargest;
  return (w * E * t ** 3) / (12 * (1 - nu ** 2));
}

type Plate = Pick<UniformPlate, 't' | 'E' | 'nu'>;
const onePascal = ({ a, b }: ListedGroup, plate: Plate): UniformPlate => ({ ...plate, a, b, q: 1 });

/** The elastic group under a weight that hangs in its plane at the plate's middle, a row lost, at its worst bolt. */
export interface HungGroup {
  /** Bolts that are left, and Σ r² of them about their centroid, m². */
  readonly n: number;
  readonly polar: number;
  /** Lever of the weight about the centroid, m. */
  readonly lever: number;
  /** The worst bolt from the centroid, m: square to the weight's line, positive where both shears add up; and along it. */
  readonly across: number;
  readonly along: number;
}

/** Worst of rows, of both directions and of all bolts that are left; the shear of that bolt under a weight W is
 *    W √((1/n + lever · across / Σr²)² + (lever · along / Σr²)²).
 *  Source: elastic group, see `eccentricGroup`, which finds the bolt. Refuses a group with no bolt left. */
export function hungGroup(group: ListedGroup): HungGroup {
  const at: BoltPoint = [group.a / 2, group.b / 2];
  let worst: HungGroup | undefined;
  let most = -1;
  for (const left of groupsLeft(group)) {
    const [cx, cy] = centroidOf(left);
    const polar = left.reduce((sum, [x, y]) => sum + (x - cx) ** 2 + (y - cy) ** 2, 0);
    for (const way of ['x', 'y'] as const) {
      const shear = eccentricGroup(left, { Fx: way === 'x' ? 1 : 0, Fy: way === 'y' ? 1 : 0, at });
      const lever = way === 'x' ? at[1] - cy : at[0] - cx;
      const sign = lever < 0 ? -1 : 1;
      left.forEach(([x, y], i) => {
        const size = hypot(...shear[i]!);
        if (size <= most) return;
        most = size;
        const [dx, dy] = [x - cx, y - cy];
        worst = { n: left.length, polar, lever: sign * lever, across: sign * (way === 'x' ? dy : dx), along: Math.abs(way === 'x' ? dx : dy) }; // prettier-ignore
      });
    }
  }
  return worst ?? { n: 0, polar: 0, lever: 0, across: 0, along: 0 };
}

/** Number of bolts that those left are worth under the same weight, by the instantaneous centre: the least of rows and
 *  directions. Source and error: see `boltGroupCoefficient`. */
export function coefficientLeft(group: ListedGroup): number {
  const at: BoltPoint = [group.a / 2, group.b / 2];
  return min(...groupsLeft(group).flatMap((left) => ([[1, 0], [0, 1]] as const).map((direction) => boltGroupCoefficient(left, { direction, at })))); // prettier-ignore
}
