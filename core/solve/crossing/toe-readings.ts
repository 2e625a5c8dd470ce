import type { CrossingWalls, ToeLine } from './crossing-walls.ts';
import type { WallMesh } from './wall-mesh.ts';

/** Distances from the toe, in wall thicknesses, from which stress is extrapolated to it: on cells of a wall thickness,
 *  and on cells of 0.4 of it. Source: IIW recommendations for fatigue of welded joints (IIW-1823), 2.2.3.4, type a, from memory. */
export const toeDistances = { coarse: [0.5, 1.5], fine: [0.4, 1] } as const;

/** How a toe's stress across the weld, along it and in shear, on the tube's outer face, follows from forces of elements. */
export interface ToeReading {
  readonly of: 'main' | 'cross';
  readonly thickness: number;
  /** 1: the patch's first axis runs across the weld; 0: its second. */
  readonly acrossFirst: boolean;
  /** 1 where the outer face is that which a positive moment pulls. */
  readonly face: 1 | -1;
  /** Elements and their weights in the extrapolated value. */
  readonly terms: readonly (readonly [element: number, weight: number])[];
}

/** Every place where a toe's stress is read: one a cell along it. */
export function toeReadings(
  mesh: WallMesh,
  { toes }: CrossingWalls,
  distances: readonly [number, number],
): ToeReading[] {
  return toes.flatMap((toe) => readingsOf(mesh, toe, distances));
}

function readingsOf({ patches }: WallMesh, toe: ToeLine, distances: readonly [number, number]): ToeReading[] {
  const { patch, first } = patches[toe.patch]!;
  const [[i, us], [, vs]] = patch.lines;
  const acrossFirst = toe.axis === i;
  const [lines, others] = acrossFirst ? [us, vs] : [vs, us];
  const start = lines.findIndex((v) => Math.abs(v - toe.from) < 1e-9);
  const cells: number[] = [];
  for (let c = toe.heading > 0 ? start : start - 1; c >= 0 && c + 1 < lines.length; c += toe.heading) cells.push(c);
  const away = cells.map((c) => Math.abs((lines[c]! + lines[c + 1]!) / 2 - toe.from));
  // x × z of a patch at constant y points to smaller y
  const face = (patch.normal === 1 ? -patch.out : patch.out) as 1 | -1;
  return Array.from({ length: others.length - 1 }, (_, o) => o).flatMap((o) => {
    const middle = (others[o]! + others[o + 1]!) / 2;
    if (middle < toe.range[0] || middle > toe.range[1]) return [];
    const terms = weights(away, patch.thickness, distances).map(([c, weight]): [number, number] => [
      first + (acrossFirst ? cells[c]! + o * (us.length - 1) : o + cells[c]! * (us.length - 1)),
      weight,
    ]);
    return [{ of: patch.of as 'main' | 'cross', thickness: patch.thickness, acrossFirst, face, terms }];
  });
}

/** Weights of cells at `away` in the value extrapolated to the toe; values in between are linear. A wall that ends before the farther
 *  distance is read where its first two cells are. */
function weights(away: readonly number[], t: number, [near, far]: readonly [number, number]): [number, number][] {
  if (away.length === 1) return [[0, 1]];
  const short = away.at(-1)! < far * t - 1e-12;
  const [p, q] = short ? [away[0]!, away[1]!] : [near * t, far * t];
  const sum = new Float64Array(away.length);
  for (const [distance, weight] of [[p, q / (q - p)], [q, -p / (q - p)]] as const) {
    const k = Math.max(1, away.findIndex((d) => d >= distance - 1e-12));
    const share = (distance - away[k - 1]!) / (away[k]! - away[k - 1]!);
    sum[k - 1]! += weight * (1 - share);
    sum[k]! += weight * share;
  } // prettier-ignore
  return [...sum].flatMap((weight, c): [number, number][] => (weight === 0 ? [] : [[c, weight]]));
}
