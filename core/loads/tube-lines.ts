import type { Tube } from '../geometry/geometry.ts';

/** A line load on a tube between two places along it, linear between `first` and `last` N/m (up positive), acting
 *  `offset` m off the centre line (towards higher y on a main tube, higher x on a cross tube). */
export interface LineLoad {
  readonly tube: number;
  readonly from: number;
  readonly to: number;
  readonly first: number;
  readonly last: number;
  readonly offset: number;
}

/** Force up and first moments of a load: [ΣF, Σ x F, Σ y F], N and N·m. */
export type Resultant = readonly [force: number, x: number, y: number];

/**
 * All tubes as lines, cut into cells on which every load is linear. A load is one Float64Array with four numbers a
 * cell: q at both ends (N/m, up) and the torque per length at both ends (q times its offset, N·m/m). Loads can then be
 * scaled and added as vectors, and nothing is lost to a mesh.
 */
export interface TubeLines {
  readonly tubes: readonly Tube[];
  readonly mains: number;
  /** First and last place along each tube: its steel, and what is loaded or crossed past its end. */
  readonly ends: readonly (readonly [number, number])[];
  /** Cells of tube i: firstCell[i] up to firstCell[i + 1]. */
  readonly firstCell: Int32Array;
  readonly from: Float64Array;
  readonly to: Float64Array;
  /** Cell tubes and their centre lines. */
  readonly tubeOf: Int32Array;
}

/** Cuts the tubes at the given places (along each tube), which hold the ends of all loads and all nodes. */
export function tubeLines(tubes: readonly Tube[], mains: number, places: readonly (readonly number[])[]): TubeLines {
  const firstCell = new Int32Array(tubes.length + 1);
  const from: number[] = [];
  const to: number[] = [];
  const tubeOf: number[] = [];
  const ends: [number, number][] = [];
  tubes.forEach((_, tube) => {
    const sorted = Float64Array.from(places[tube]!).sort();
    ends.push([sorted[0]!, sorted[sorted.length - 1]!]);
    for (let i = 1; i < sorted.length; i++) {
      if (sorted[i]! === sorted[i - 1]!) continue;
      from.push(sorted[i - 1]!);
      to.push(sorted[i]!);
      tubeOf.push(tube);
    }
    firstCell[tube + 1] = from.length;
  });
  return {
    tubes,
    mains,
    ends,
    firstCell,
    from: Float64Array.from(from),
    to: Float64Array.from(to),
    tubeOf: Int32Array.from(tubeOf),
  };
}

/** A load that acts on few cells. */
export interface SparseLoad {
  readonly index: Int32Array;
  readonly value: Float64Array;
}

/** Line loads laid on the cells, `first` and `last` scaled by `scale`. Trusts that the loads' ends are among the cells' ends. */
export function layLoads(lines: TubeLines, loads: readonly LineLoad[], into: Float64Array, scale = 1): Float64Array {
  const { from, to } = lines;
  for (const load of loads) {
    const slope = (load.last - load.first) / (load.to - load.from);
    for (
      let e = cellFrom(lines, load.tube, load.from);
      e < lines.firstCell[load.tube + 1]! && from[e]! < load.to;
      e++
    ) {
      const q0 = scale * (load.first + slope * (from[e]! - load.from));
      const q1 = scale * (load.first + slope * (to[e]! - load.from));
      into[4 * e]! += q0;
      into[4 * e + 1]! += q1;
      into[4 * e + 2]! += q0 * load.offset;
      into[4 * e + 3]! += q1 * load.offset;
    }
  }
  return into;
}

export function sparse(load: Float64Array): SparseLoad {
  const index: number[] = [];
  load.forEach((q, i) => q !== 0 && index.push(i));
  return { index: Int32Array.from(index), value: Float64Array.from(index, (i) => load[i]!) };
}

export function addSparse(into: Float64Array, { index, value }: SparseLoad, scale: number): void {
  for (let i = 0; i < index.length; i++) into[index[i]!]! += scale * value[i]!;
}

export function addLoad(into: Float64Array, load: Float64Array, scale: number): void {
  for (let i = 0; i < into.length; i++) into[i]! += scale * load[i]!;
}

/** First cell of a tube that begins at or after a place. */
function cellFrom({ firstCell, from }: TubeLines, tube: number, place: number): number {
  let [low, high] = [firstCell[tube]!, firstCell[tube + 1]!];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (from[middle]! < place) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Force and first moments of cell e under a load, added to [F, X, Y]. */
export function cellResultant(
  { tubes, mains, from, to, tubeOf }: TubeLines,
  load: Float64Array,
  e: number,
  into: Float64Array,
): void {
  const q0 = load[4 * e]!;
  const q1 = load[4 * e + 1]!;
  const length = to[e]! - from[e]!;
  const force = ((q0 + q1) / 2) * length;
  const along = force * from[e]! + (length * length * (q0 + 2 * q1)) / 6;
  const across = force * tubes[tubeOf[e]!]!.at + ((load[4 * e + 2]! + load[4 * e + 3]!) / 2) * length;
  const isMain = tubeOf[e]! < mains;
  into[0]! += force;
  into[1]! += isMain ? along : across;
  into[2]! += isMain ? across : along;
}

export function resultant(lines: TubeLines, load: Float64Array): Resultant {
  const sum = new Float64Array(3);
  for (let e = 0; e < lines.from.length; e++) cellResultant(lines, load, e, sum);
  return [sum[0]!, sum[1]!, sum[2]!];
}

/**
 * Loads by which a resultant lies on the tubes as on a mass in rigid motion: per length
 *    μ (c_0 + c_1 x + c_2 y),  c from the three sums of force and first moments
 * mu: mass per length of each tube, kg/m. This is both how the plate's inertia balances a load, and how weight known
 * only as a sum and a centre is laid on the tubes. Gives the three loads of unit force, and of unit first moments.
 */
export function massLoads(
  lines: TubeLines,
  mu: readonly number[],
): readonly [Float64Array, Float64Array, Float64Array] {
  const { tubes, mains, from, to, tubeOf } = lines;
  const cells = from.length;
  const basis = [0, 1, 2].map(() => new Float64Array(4 * cells));
  for (let e = 0; e < cells; e++) {
    const tube = tubeOf[e]!;
    const isMain = tube < mains;
    const at = tubes[tube]!.at;
    for (const [end, place] of [[0, from[e]!], [1, to[e]!]] as const) {
      const i = 4 * e + end;
      basis[0]![i] = mu[tube]!;
      basis[1]![i] = mu[tube]! * (isMain ? place : at);
      basis[2]![i] = mu[tube]! * (isMain ? at : place);
    } // prettier-ignore
  }
  const columns = basis.map((load) => resultant(lines, load));
  const unit = (of: Resultant): Float64Array => {
    const c = solveThree(columns, of);
    const load = new Float64Array(4 * cells);
    basis.forEach((b, i) => addLoad(load, b, c[i]!));
    return load;
  };
  return [unit([1, 0, 0]), unit([0, 1, 0]), unit([0, 0, 1])];
}

/** c with Σ c_i column_i = b, by Cramer's rule; tubes that cross always span a plane. */
function solveThree(columns: readonly Resultant[], b: Resultant): [number, number, number] {
  const det = (p: Resultant, q: Resultant, r: Resultant): number =>
    p[0] * (q[1] * r[2] - q[2] * r[1]) - q[0] * (p[1] * r[2] - p[2] * r[1]) + r[0] * (p[1] * q[2] - p[2] * q[1]);
  const [u, v, w] = columns as [Resultant, Resultant, Resultant];
  const d = det(u, v, w);
  return [det(b, v, w) / d, det(u, b, w) / d, det(u, v, b) / d];
}
