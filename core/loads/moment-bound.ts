import { cellResultant, type TubeLines } from './tube-lines.ts';

/** A force up at a point in plan. */
export interface PointForce {
  readonly x: number;
  readonly y: number;
  readonly force: number;
}

/** Places along each set of tubes where the plate is cut, sorted: crossings, ends and supports. Cells end there. */
export interface CutPlaces {
  readonly main: readonly number[];
  readonly cross: readonly number[];
}

/**
 * A bound on each tube's moment by statics alone, without any stiffness: cut the whole plate across a set of tubes. All
 * tubes of the set together carry the moment of everything on one side of the cut,
 *    M_cut(x) = Σ F_i (x − x_i)  over loads and supports with x_i < x,
 * and one of them carries at most that and what the others may carry the other way between two cuts, W l / 6 of the
 * load W on a length l (a simple beam under a load that rises to its middle, as panels' edges give it; any beam table).
 *    bound = largest |M_cut| + Σ over the set of the largest W l / 6
 * With slings of unequal length (`skewForce`) also that force over the supports' distance, which a cut does not see.
 */
export class MomentBound {
  readonly #lines: TubeLines;
  readonly #sets: readonly CutSet[];

  constructor(lines: TubeLines, cuts: CutPlaces) {
    this.#lines = lines;
    this.#sets = [cutSet(lines, 'main', cuts.main), cutSet(lines, 'cross', cuts.cross)];
  }

  /** For each tube, N·m: the load on the cells and the supports' forces with it. */
  of(load: Float64Array, supports: readonly PointForce[], skewForce: number): Float64Array {
    const bound = new Float64Array(this.#lines.tubes.length);
    for (const set of this.#sets) {
      const along = supports.filter(({ force }) => force !== 0).map((p) => (set.name === 'main' ? p.x : p.y));
      const distance = along.length > 0 ? Math.max(...along) - Math.min(...along) : 0;
      bound.fill(largestCut(this.#lines, load, supports, set) + localMoments(this.#lines, load, set) + skewForce * distance, ...set.tubes);
    }
    return bound;
  }
}

interface CutSet {
  readonly name: 'main' | 'cross';
  readonly tubes: readonly [first: number, end: number];
  readonly places: readonly number[];
  /** Of each cell: between cuts k − 1 and k (2 k), or at cut k (2 k + 1). */
  readonly slot: Int32Array;
}

function cutSet(lines: TubeLines, name: 'main' | 'cross', places: readonly number[]): CutSet {
  const { tubes, mains, tubeOf, from, to } = lines;
  const slot = Int32Array.from(tubeOf, (tube, e) => slotOf(places, tubes[tube]!.set === name ? (from[e]! + to[e]!) / 2 : tubes[tube]!.at));
  return { name, tubes: name === 'main' ? [0, mains] : [mains, tubes.length], places, slot };
}

/** Cuts and places closer than this, in m, are one. */
const sameCut = 1e-6;

function slotOf(places: readonly number[], place: number): number {
  let k = 0;
  while (k < places.length && places[k]! < place - sameCut) k++;
  return k < places.length && Math.abs(places[k]! - place) <= sameCut ? 2 * k + 1 : 2 * k;
}

function largestCut(lines: TubeLines, load: Float64Array, supports: readonly PointForce[], { name, places, slot }: CutSet): number {
  const along = name === 'main' ? 1 : 2;
  // force and first moment of all in one slot
  const force = new Float64Array(2 * places.length + 1);
  const first = new Float64Array(2 * places.length + 1);
  const part = new Float64Array(3);
  for (let e = 0; e < slot.length; e++) {
    part.fill(0);
    cellResultant(lines, load, e, part);
    force[slot[e]!]! += part[0]!;
    first[slot[e]!]! += part[along]!;
  }
  for (const { x, y, force: V } of supports) {
    const place = name === 'main' ? x : y;
    const at = slotOf(places, place);
    force[at]! += V;
    first[at]! += V * place;
  }
  let [F, S, largest] = [0, 0, 0];
  for (let k = 0; k < force.length; k++) {
    const cut = places[k >> 1];
    // on either side of what acts at the cut itself
    if (k % 2 && cut !== undefined) largest = Math.max(largest, Math.abs(F * cut - S), Math.abs((F + force[k]!) * cut - S - first[k]!));
    F += force[k]!;
    S += first[k]!;
  }
  return largest;
}

/** Σ over the set's tubes of the largest W l / 6 between two cuts. */
function localMoments({ from, to, firstCell }: TubeLines, load: Float64Array, { tubes: [first, end], places, slot }: CutSet): number {
  let sum = 0;
  for (let tube = first; tube < end; tube++) {
    let [largest, W, between] = [0, 0, -1];
    for (let e = firstCell[tube]!; e < firstCell[tube + 1]!; e++) {
      if (slot[e] !== between) [W, between] = [0, slot[e]!];
      W += ((Math.abs(load[4 * e]!) + Math.abs(load[4 * e + 1]!)) / 2) * (to[e]! - from[e]!);
      const k = between >> 1;
      if (k > 0 && k < places.length) largest = Math.max(largest, (W * (places[k]! - places[k - 1]!)) / 6);
    }
    sum += largest;
  }
  return sum;
}
