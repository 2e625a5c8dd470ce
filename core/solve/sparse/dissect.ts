import type { NodeGraph } from './node-graph.ts';
import { numbersOf } from './numbers-of.ts';

/** Order of elimination of a graph's vertices by nested dissection (George 1973, SIAM J. Numer. Anal. 10, 345, from
 *  memory): a small set of vertices cuts the graph in two; it is eliminated after both parts, which are ordered in the
 *  same way. Every cut is a true separator of the graph: the vertices are swept along x, along y, along z and along a
 *  breadth-first walk from a far vertex, and at each place of each sweep the cut is the set of vertices with a neighbour
 *  on the other side. The cheapest of all places wins, so that a frame with panels is cut along its tubes without being
 *  told what a tube is. coordinates: 3 for each node of the system. kept: 1 for each node of the system that is not to be
 *  eliminated; these come last, in their order. Gives vertices in their order of elimination. */
export function dissect(graph: NodeGraph, coordinates: Float64Array, kept?: Uint8Array): Int32Array {
  const { count, nodes } = graph;
  const isKept = (v: number): boolean => kept?.[nodes[v]!] === 1;
  const all = numbersOf(count, (v) => v);
  const inside = kept ? all.filter((v) => !isKept(v)) : all;
  const ranks = [0, 1, 2].map((axis) => ranksAlong(coordinates, nodes, axis));
  const work: Work = {
    graph,
    ranks,
    sweeps: sortedAlong(ranks, inside),
    region: numbersOf(count, (v) => (isKept(v) ? -1 : 0)),
    counters: { regions: 0, walks: 0 },
    rank: new Int32Array(count),
    side: new Uint8Array(count),
    walk: new Int32Array(count),
    heldBack: new Int32Array(count),
    told: [],
    places: new Int32Array(4 * count),
    changes: Array.from({ length: 4 }, () => ({ left: new Int32Array(count + 2), right: new Int32Array(count + 2) })),
    order: new Int32Array(count),
  };
  if (inside.length > 0) order(work, 0, inside.length);
  if (kept) work.order.set(all.filter(isKept), inside.length);
  return work.order;
}

/** Parts with at most this many vertices are not cut: the elimination tree sees to them. */
const leaf = 8;
/** A part must get at least this share of the weight. */
const least = 0.2;
/** What a lopsided cut costs: the separator counts for 1 + lopsided · (share of the larger part - 1/2). */
const lopsided = 2;

interface Work {
  readonly graph: NodeGraph;
  /** Rank of each vertex along x, y and z. */
  readonly ranks: readonly Int32Array[];
  /** Vertices along x, y and z: those of a part stand together, at the part's places. */
  readonly sweeps: readonly Int32Array[];
  /** Number of the part that a vertex belongs to, -1 once it is in a separator. */
  readonly region: Int32Array;
  readonly counters: { regions: number; walks: number };
  /** Place of a vertex in the sweep at hand; during a walk, the number of the walk below zero. */
  readonly rank: Int32Array;
  /** 0 left, 1 right, 2 separator. */
  readonly side: Uint8Array;
  readonly walk: Int32Array;
  readonly heldBack: Int32Array;
  /** The sweeps that are tried of the part at hand. */
  readonly told: Int32Array[];
  /** Places of each vertex in up to four sweeps. */
  readonly places: Int32Array;
  readonly changes: readonly Changes[];
  readonly order: Int32Array;
}

/** Orders the part that stands at places lo to hi - 1 of every sweep. */
function order(work: Work, lo: number, hi: number): void {
  const { ranks, sweeps, order: out, side, walk } = work;
  const own = sweeps[0]!;
  if (hi - lo <= leaf) {
    for (let p = lo; p < hi; p++) out[p] = own[p]!;
    return;
  }
  const id = work.region[own[lo]!]!;
  const apart = fallsApart(work, lo, hi, id);
  if (apart > lo) {
    for (let p = lo; p < hi; p++) side[own[p]!] = 1;
    for (let p = lo; p < apart; p++) side[walk[p]!] = 0;
    split(work, lo, hi);
    order(work, lo, apart);
    order(work, apart, hi);
    return;
  }
  breadthFirst(work, walk[hi - 1]!, id, lo);
  const { told } = work;
  told.length = 0;
  // Where a part is flat, the sweep across it runs as one along it does.
  for (let axis = 0; axis < 3; axis++) {
    const [sweep, along] = [sweeps[axis]!, ranks[axis]!];
    if (axis === 0 || along[sweep[lo]!] !== along[sweep[hi - 1]!]) told.push(sweep);
  }
  told.push(walk);
  const best = cheapest(work, told, lo, hi, id);
  if (best.cost === Infinity) {
    for (let p = lo; p < hi; p++) out[p] = own[p]!;
    return;
  }
  mark(work, best, lo, hi, id);
  const [left, right] = split(work, lo, hi);
  order(work, lo, left);
  order(work, left, right);
  for (let p = right; p < hi; p++) out[p] = own[p]!;
}

/** Where a part that is not connected falls in two, nearly even, once its first pieces stand first in the walk; lo if it is
 *  connected. */
function fallsApart(work: Work, lo: number, hi: number, id: number): number {
  const own = work.sweeps[0]!;
  const first = -(work.counters.walks + 1);
  let begin = lo;
  let reached = breadthFirst(work, own[lo]!, id, lo);
  for (let p = lo; reached < hi && 2 * (reached - lo) < hi - lo; p++) {
    if (work.rank[own[p]!]! <= first) continue;
    begin = reached;
    reached = breadthFirst(work, own[p]!, id, reached);
  }
  return reached < hi ? reached : begin;
}

interface Cut {
  readonly cost: number;
  readonly sweep: Int32Array;
  /** First place of the right part. */
  readonly at: number;
  /** Whether the left part gives the separator, or the right one. */
  readonly leftGives: boolean;
}

/** Vertices of the part that can be reached, into walk[lo …], nearest first. Gives the place after the last. */
function breadthFirst({ graph, region, walk, rank, counters }: Work, from: number, id: number, lo: number): number {
  const { start, adjacent } = graph;
  const mark = -++counters.walks;
  let end = lo;
  walk[end++] = from;
  rank[from] = mark;
  for (let p = lo; p < end; p++) {
    const v = walk[p]!;
    for (let q = start[v]!; q < start[v + 1]!; q++) {
      const w = adjacent[q]!;
      if (region[w] !== id || rank[w] === mark) continue;
      rank[w] = mark;
      walk[end++] = w;
    }
  }
  return end;
}

/** The cheapest cut at any place of up to four sweeps; of equal ones the first. The vertices' neighbours are gone through once
 *  for all of them. */
function cheapest(work: Work, sweeps: readonly Int32Array[], lo: number, hi: number, id: number): Cut {
  const { graph, region, places, changes } = work;
  const { start, adjacent, weight } = graph;
  let total = 0;
  for (let p = lo; p < hi; p++) total += weight[sweeps[0]![p]!]!;
  for (let k = 0; k < sweeps.length; k++) {
    const sweep = sweeps[k]!;
    const { left, right } = changes[k]!;
    for (let p = lo; p < hi; p++) {
      places[4 * sweep[p]! + k] = p;
      left[p] = right[p] = 0;
    }
    left[hi] = right[hi] = left[hi + 1] = right[hi + 1] = 0;
  }
  for (let p = lo; p < hi; p++) {
    const v = sweeps[0]![p]!;
    let a0 = places[4 * v]!;
    let a1 = places[4 * v + 1]!;
    let a2 = places[4 * v + 2]!;
    let a3 = places[4 * v + 3]!;
    let z0 = a0;
    let z1 = a1;
    let z2 = a2;
    let z3 = a3;
    for (let q = start[v]!; q < start[v + 1]!; q++) {
      const w = adjacent[q]!;
      if (region[w] !== id) continue;
      const r0 = places[4 * w]!;
      const r1 = places[4 * w + 1]!;
      const r2 = places[4 * w + 2]!;
      const r3 = places[4 * w + 3]!;
      if (r0 < a0) a0 = r0;
      if (r0 > z0) z0 = r0;
      if (r1 < a1) a1 = r1;
      if (r1 > z1) z1 = r1;
      if (r2 < a2) a2 = r2;
      if (r2 > z2) z2 = r2;
      if (r3 < a3) a3 = r3;
      if (r3 > z3) z3 = r3;
    }
    const own = weight[v]!;
    note(changes[0]!, own, places[4 * v]!, a0, z0);
    if (sweeps.length > 1) note(changes[1]!, own, places[4 * v + 1]!, a1, z1);
    if (sweeps.length > 2) note(changes[2]!, own, places[4 * v + 2]!, a2, z2);
    if (sweeps.length > 3) note(changes[3]!, own, places[4 * v + 3]!, a3, z3);
  }
  let best: Cut = { cost: Infinity, sweep: sweeps[0]!, at: lo, leftGives: true };
  for (let k = 0; k < sweeps.length; k++) best = cheaper(changes[k]!, weight, total, sweeps[k]!, lo, hi, best);
  return best;
}

/** The cheapest cut at any place of one sweep, or the best so far. */
function cheaper(
  { left, right }: Changes,
  weight: Int32Array,
  total: number,
  sweep: Int32Array,
  lo: number,
  hi: number,
  best: Cut,
): Cut {
  let least = best.cost;
  let at = -1;
  let leftGives = true;
  let before = 0;
  let fromLeft = 0;
  let fromRight = 0;
  for (let c = lo + 1; c < hi; c++) {
    before += weight[sweep[c - 1]!]!;
    fromLeft += left[c]!;
    fromRight += right[c]!;
    const one = cost(fromLeft, before - fromLeft, total - before);
    if (one < least) [least, at, leftGives] = [one, c, true];
    const other = cost(fromRight, before, total - before - fromRight);
    if (other < least) [least, at, leftGives] = [other, c, false];
  }
  return at < 0 ? best : { cost: least, sweep, at, leftGives };
}

/** Where the weight in a separator changes along a sweep. */
interface Changes {
  readonly left: Int32Array;
  readonly right: Int32Array;
}

/** A cut at c (left: places below c) takes a vertex at p from the left part when p < c ≤ last, from the right when first < c ≤ p;
 *  first and last: of it and its neighbours. */
function note({ left, right }: Changes, weight: number, p: number, first: number, last: number): void {
  left[p + 1]! += weight;
  left[last + 1]! -= weight;
  right[first + 1]! += weight;
  right[p + 1]! -= weight;
}

function cost(separator: number, left: number, right: number): number {
  const both = left + right;
  if (Math.min(left, right) < least * both || both === 0) return Infinity;
  return separator * (1 + lopsided * (Math.max(left, right) / both - 0.5));
}

function mark(
  { graph, region, rank, side }: Work,
  { sweep, at, leftGives }: Cut,
  lo: number,
  hi: number,
  id: number,
): void {
  const { start, adjacent } = graph;
  for (let p = lo; p < hi; p++) rank[sweep[p]!] = p;
  for (let p = lo; p < hi; p++) {
    const v = sweep[p]!;
    const own = p < at ? 0 : 1;
    side[v] = own;
    if (own === (leftGives ? 1 : 0)) continue;
    for (let q = start[v]!; q < start[v + 1]!; q++) {
      const w = adjacent[q]!;
      if (region[w] === id && rank[w]! < at !== p < at) {
        side[v] = 2;
        break;
      }
    }
  }
}

/** Left before right before separator in every sweep, each in its order. Gives the ends of left and right. */
function split({ sweeps, side, region, heldBack, counters }: Work, lo: number, hi: number): [number, number] {
  let left = lo;
  let right = lo;
  for (const sweep of sweeps) {
    let held = 0;
    left = lo;
    for (let p = lo; p < hi; p++) {
      const v = sweep[p]!;
      if (side[v] === 0) sweep[left++] = v;
      else heldBack[held++] = v;
    }
    right = left;
    for (let p = 0; p < held; p++) if (side[heldBack[p]!] === 1) sweep[right++] = heldBack[p]!;
    let end = right;
    for (let p = 0; p < held; p++) if (side[heldBack[p]!] === 2) sweep[end++] = heldBack[p]!;
  }
  const sweep = sweeps[0]!;
  const one = ++counters.regions;
  const two = ++counters.regions;
  for (let p = lo; p < hi; p++) region[sweep[p]!] = p < left ? one : p < right ? two : -1;
  return [left, right];
}

/** Vertices along each axis; equal ones by the other axes, so that a sweep runs along the lines of a mesh. */
function sortedAlong(ranks: readonly Int32Array[], list: Int32Array): readonly Int32Array[] {
  return [0, 1, 2].map((axis) => {
    let sorted = list;
    for (const k of [2, 1, 0]) sorted = countingSort(sorted, ranks[(axis + k) % 3]!);
    return sorted;
  });
}

/** Rank of each vertex along one axis; what differs by less than a ten-millionth of the whole is equal. */
function ranksAlong(coordinates: Float64Array, nodes: Int32Array, axis: number): Int32Array {
  let low = Infinity;
  let high = -Infinity;
  for (const node of nodes) {
    low = Math.min(low, coordinates[3 * node + axis]!);
    high = Math.max(high, coordinates[3 * node + axis]!);
  }
  const step = (high - low) / 1e7;
  const place = numbersOf(nodes.length, (v) =>
    step > 0 ? Math.round((coordinates[3 * nodes[v]! + axis]! - low) / step) : 0,
  );
  const sorted = place.slice().sort();
  let distinct = 0;
  for (let p = 0; p < sorted.length; p++) if (p === 0 || sorted[p] !== sorted[p - 1]) sorted[distinct++] = sorted[p]!;
  return place.map((value) => {
    let a = 0;
    let b = distinct - 1;
    while (a < b) {
      const middle = (a + b) >> 1;
      if (sorted[middle]! < value) a = middle + 1;
      else b = middle;
    }
    return a;
  });
}

/** Stable: equal ranks keep their order. */
function countingSort(list: Int32Array, rank: Int32Array): Int32Array {
  const next = new Int32Array(rank.length + 1);
  for (const v of list) next[rank[v]! + 1]!++;
  for (let r = 0; r < rank.length; r++) next[r + 1]! += next[r]!;
  const sorted = new Int32Array(list.length);
  for (const v of list) sorted[next[rank[v]!]!++] = v;
  return sorted;
}
