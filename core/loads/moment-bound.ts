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
 * What a tube's moment hardly passes, by statics alone, without any stiffness. The plate is parted into strips, one for each
 * tube of a set: what acts between two of them goes to both by the lever rule, as if the crossing tubes were hinged
 * there. Cut at x, a strip has from what acts on either side of the cut
 *    M = Σ F_i (x − x_i);  of the two sides the mean
 * (they differ by what the strip hands to others). A tube carries at most what all strips together do at their worst
 * cut, and what the tubes carry between two cuts, W l / 6 of the load W on a length l (a simple beam under a load that
 * rises to its middle, as panels' edges give it; any beam table):
 *    bound = largest over the cuts of Σ |M| over the strips + Σ over the tubes of the largest W l / 6
 * It is no strict bound: none exists without stiffness, and single tubes of a grid may push against each other inside it.
 * It held for every tube of the random grids in the tests (tests/loads/equilibrium.test.ts); a moment beyond it is worth
 * a look, one below it is not proven by it.
 */
export class MomentBound {
  readonly #lines: TubeLines;
  readonly #sets: readonly CutSet[];

  constructor(lines: TubeLines, cuts: CutPlaces) {
    this.#lines = lines;
    this.#sets = [cutSet(lines, 'main', cuts.main), cutSet(lines, 'cross', cuts.cross)];
  }

  /** For each tube, N·m: the load on the cells and the supports' forces with it. */
  of(load: Float64Array, supports: readonly PointForce[]): Float64Array {
    const bound = new Float64Array(this.#lines.tubes.length);
    for (const set of this.#sets)
      bound.fill(largestCut(this.#lines, load, supports, set) + localMoments(this.#lines, load, set), ...set.tubes);
    return bound;
  }
}

interface CutSet {
  readonly name: 'main' | 'cross';
  readonly tubes: readonly [first: number, end: number];
  readonly places: readonly number[];
  /** Centre lines of the set's tubes, sorted: the strips. */
  readonly strips: readonly number[];
  /** Of each cell: between cuts k − 1 and k (2 k), or at cut k (2 k + 1). */
  readonly slot: Int32Array;
  /** Of each cell: its strip, and the part that goes to the next one. */
  readonly strip: Int32Array;
  readonly next: Float64Array;
}

function cutSet(lines: TubeLines, name: 'main' | 'cross', places: readonly number[]): CutSet {
  const { tubes, mains, tubeOf, from, to } = lines;
  const range = name === 'main' ? ([0, mains] as const) : ([mains, tubes.length] as const);
  const strips = tubes.slice(...range).map(({ at }) => at);
  const middle = (e: number): number => (from[e]! + to[e]!) / 2;
  const own = (e: number): boolean => tubes[tubeOf[e]!]!.set === name;
  const levers = Array.from(tubeOf, (tube, e) => lever(strips, own(e) ? tubes[tube]!.at : middle(e)));
  return {
    name,
    tubes: range,
    places,
    strips,
    slot: Int32Array.from(tubeOf, (tube, e) => slotOf(places, own(e) ? middle(e) : tubes[tube]!.at)),
    strip: Int32Array.from(levers, ([strip]) => strip),
    next: Float64Array.from(levers, ([, part]) => part),
  };
}

/** Cuts and places closer than this, in m, are one. */
const sameCut = 1e-6;

function slotOf(places: readonly number[], place: number): number {
  let k = 0;
  while (k < places.length && places[k]! < place - sameCut) k++;
  return k < places.length && Math.abs(places[k]! - place) <= sameCut ? 2 * k + 1 : 2 * k;
}

/** The strip at or below a place, and the part of a force there that goes to the next strip. Outside, the outermost takes all. */
function lever(strips: readonly number[], at: number): readonly [strip: number, next: number] {
  let i = 0;
  while (i < strips.length - 2 && strips[i + 1]! < at) i++;
  const part = (at - strips[i]!) / (strips[i + 1]! - strips[i]!);
  return [i, part < 0 ? 0 : part > 1 ? 1 : part];
}

function largestCut(
  lines: TubeLines,
  load: Float64Array,
  supports: readonly PointForce[],
  { name, places, strips, slot, strip, next }: CutSet,
): number {
  const [along, slots] = [name === 'main' ? 1 : 2, 2 * places.length + 1];
  // force and first moment of all in one slot of one strip
  const force = new Float64Array(strips.length * slots);
  const first = new Float64Array(strips.length * slots);
  const add = (i: number, part: number, F: number, S: number): void => {
    force[i]! += F * (1 - part);
    first[i]! += S * (1 - part);
    if (part === 0) return;
    force[i + slots]! += F * part;
    first[i + slots]! += S * part;
  };
  const cell = new Float64Array(3);
  for (let e = 0; e < slot.length; e++) {
    cell.fill(0);
    cellResultant(lines, load, e, cell);
    add(strip[e]! * slots + slot[e]!, next[e]!, cell[0]!, cell[along]!);
  }
  for (const { x, y, force: V } of supports) {
    if (V === 0) continue;
    const [place, across] = name === 'main' ? [x, y] : [y, x];
    const [i, part] = lever(strips, across);
    add(i * slots + slotOf(places, place), part, V, V * place);
  }
  // each cut twice, before and after what acts at the cut itself
  const sums = new Float64Array(2 * places.length);
  for (let i = 0; i < strips.length; i++) {
    let [F, S, allF, allS] = [0, 0, 0, 0];
    for (let k = i * slots; k < (i + 1) * slots; k++) {
      allF += force[k]!;
      allS += first[k]!;
    }
    for (let k = 0; k < places.length; k++) {
      const cut = places[k]!;
      for (const side of [0, 1] as const) {
        F += force[i * slots + 2 * k + side]!;
        S += first[i * slots + 2 * k + side]!;
        sums[2 * k + side]! += (Math.abs(F * cut - S) + Math.abs((allF - F) * cut - (allS - S))) / 2;
      }
    }
  }
  return sums.reduce((most, sum) => Math.max(most, sum), 0);
}

/** Σ over the set's tubes of the largest W l / 6 between two cuts. */
function localMoments(
  { from, to, firstCell }: TubeLines,
  load: Float64Array,
  { tubes: [first, end], places, slot }: CutSet,
): number {
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
