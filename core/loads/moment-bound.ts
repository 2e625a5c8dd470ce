import { cellResultant, type TubeLines } from './tube-lines.ts';
import type { FramePoint } from './tube-frame.ts';

/**
 * A bound on each tube's moment by statics alone, without any stiffness: cut the whole plate across a set of tubes. All
 * tubes of the set together carry the moment of everything on one side of the cut,
 *    M_cut(x) = Σ F_i (x − x_i)  over loads and supports with x_i < x,
 * and one of them carries at most that, and what the others may carry the other way between two crossings, W l / 4 of
 * the load W on a length l (a load in the middle of a simple beam: the worst place). Bound = largest |M_cut| + Σ W l / 4.
 * With slings of unequal length (`skewForce`) also that force over the supports' distance, which a cut does not see.
 */
export function momentBound(lines: TubeLines, load: Float64Array, supports: readonly { readonly point: FramePoint; readonly force: number }[], skewForce: number, crossings: CutPlaces): Float64Array {
  const bound = new Float64Array(lines.tubes.length);
  for (const set of ['main', 'cross'] as const) {
    const cut = largestCut(lines, load, supports, set, crossings[set]);
    const along = supports.map(({ point }) => (set === 'main' ? point.x : point.y));
    const distance = along.length > 0 ? Math.max(...along) - Math.min(...along) : 0;
    const [first, last] = set === 'main' ? [0, lines.mains] : [lines.mains, lines.tubes.length];
    let local = 0;
    for (let tube = first; tube < last; tube++) local += localMoment(lines, load, tube, crossings[set]);
    bound.fill(cut + local + skewForce * distance, first, last);
  }
  return bound;
}

/** Places of the crossings along each set of tubes, sorted, and of the plate's ends: where it is cut. Cells end there. */
export interface CutPlaces {
  readonly main: readonly number[];
  readonly cross: readonly number[];
}

function largestCut(lines: TubeLines, load: Float64Array, supports: readonly { point: FramePoint; force: number }[], set: 'main' | 'cross', places: readonly number[]): number {
  // Everything that acts between two cuts (2 k) or at one (2 k + 1), as a force and its first moment along the tubes.
  const slots = 2 * places.length + 1;
  const force = new Float64Array(slots);
  const first = new Float64Array(slots);
  const slotOf = (place: number): number => {
    let k = 0;
    while (k < places.length && places[k]! < place - sameCut) k++;
    return k < places.length && Math.abs(places[k]! - place) <= sameCut ? 2 * k + 1 : 2 * k;
  };
  const along = set === 'main' ? 1 : 2;
  const part = new Float64Array(3);
  lines.tubes.forEach((tube, i) => {
    const own = tube.set === set;
    const across = own ? -1 : slotOf(tube.at);
    for (let e = lines.firstCell[i]!; e < lines.firstCell[i + 1]!; e++) {
      part.fill(0);
      cellResultant(lines, load, e, part);
      const slot = own ? slotOf((lines.from[e]! + lines.to[e]!) / 2) : across;
      force[slot]! += part[0]!;
      first[slot]! += part[along]!;
    }
  });
  for (const { point, force: V } of supports) {
    const place = set === 'main' ? point.x : point.y;
    const slot = slotOf(place);
    force[slot]! += V;
    first[slot]! += V * place;
  }
  let [F, S, largest] = [0, 0, 0];
  for (let slot = 0; slot < slots; slot++) {
    const cut = places[slot >> 1];
    // on either side of what acts at the cut itself
    if (slot % 2 && cut !== undefined) largest = Math.max(largest, Math.abs(F * cut - S));
    F += force[slot]!;
    S += first[slot]!;
    if (slot % 2 && cut !== undefined) largest = Math.max(largest, Math.abs(F * cut - S));
  }
  return largest;
}

/** Cuts and places closer than this, in m, are one. */
const sameCut = 1e-6;

/** Largest W l / 4 of a tube between two cuts. */
function localMoment(lines: TubeLines, load: Float64Array, tube: number, places: readonly number[]): number {
  let largest = 0;
  let k = 0;
  let W = 0;
  for (let e = lines.firstCell[tube]!; e < lines.firstCell[tube + 1]!; e++) {
    while (k < places.length && lines.from[e]! >= places[k]! - sameCut) {
      k++;
      W = 0;
    }
    W += ((Math.abs(load[4 * e]!) + Math.abs(load[4 * e + 1]!)) / 2) * (lines.to[e]! - lines.from[e]!);
    const length = k > 0 && k < places.length ? places[k]! - places[k - 1]! : 0;
    largest = Math.max(largest, (W * length) / 4);
  }
  return largest;
}
