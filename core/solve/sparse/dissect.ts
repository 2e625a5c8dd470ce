import type { NodeGraph } from './node-graph.ts';

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
  const inside = Int32Array.from(nodes.keys()).filter((v) => !isKept(v));
  const ranks = [0, 1, 2].map((axis) => ranksAlong(coordinates, nodes, axis));
  const work: Work = {
    graph,
    ranks,
    sweeps: sortedAlong(ranks, inside),
    region: Int32Array.from(nodes, (_, v) => (isKept(v) ? -1 : 0)),
    counters: { regions: 0, walks: 0 },
    rank: new Int32Array(count),
    side: new Uint8Array(count),
    walk: new Int32Array(count),
    heldBack: new Int32Array(count),
    leftChange: new Int32Array(count + 2),
    rightChange: new Int32Array(count + 2),
    order: new Int32Array(count),
  };
  if (inside.length > 0) order(work, 0, inside.length);
  work.order.set(Int32Array.from(nodes.keys()).filter(isKept), inside.length);
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
  readonly leftChange: Int32Array;
  readonly rightChange: Int32Array;
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
  let best: Cut = { cost: Infinity, sweep: own, at: lo, leftGives: true };
  for (const [axis, sweep] of sweeps.entries()) {
    // Where a part is flat, the sweep across it runs as one along it does.
    const along = ranks[axis]!;
    if (axis === 0 || along[sweep[lo]!] !== along[sweep[hi - 1]!]) best = cheapest(work, sweep, lo, hi, id, best);
  }
  best = cheapest(work, walk, lo, hi, id, best);
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

/** The cheapest cut at any place of one sweep, or the best so far. */
function cheapest(work: Work, sweep: Int32Array, lo: number, hi: number, id: number, best: Cut): Cut {
  const { graph, region, rank, leftChange, rightChange } = work;
  const { start, adjacent, weight } = graph;
  let total = 0;
  for (let p = lo; p < hi; p++) {
    rank[sweep[p]!] = p;
    leftChange[p] = rightChange[p] = 0;
    total += weight[sweep[p]!]!;
  }
  leftChange[hi] = rightChange[hi] = leftChange[hi + 1] = rightChange[hi + 1] = 0;
  for (let p = lo; p < hi; p++) {
    const v = sweep[p]!;
    let first = p;
    let last = p;
    for (let q = start[v]!; q < start[v + 1]!; q++) {
      const w = adjacent[q]!;
      if (region[w] !== id) continue;
      const r = rank[w]!;
      if (r < first) first = r;
      if (r > last) last = r;
    }
    // A cut at c (left: places below c) takes v from the left part when p < c ≤ last, from the right when first < c ≤ p.
    leftChange[p + 1]! += weight[v]!;
    leftChange[last + 1]! -= weight[v]!;
    rightChange[first + 1]! += weight[v]!;
    rightChange[p + 1]! -= weight[v]!;
  }
  let before = 0;
  let fromLeft = 0;
  let fromRight = 0;
  for (let c = lo + 1; c < hi; c++) {
    before += weight[sweep[c - 1]!]!;
    fromLeft += leftChange[c]!;
    fromRight += rightChange[c]!;
    const one = cost(fromLeft, before - fromLeft, total - before);
    if (one < best.cost) best = { cost: one, sweep, at: c, leftGives: true };
    const other = cost(fromRight, before, total - before - fromRight);
    if (other < best.cost) best = { cost: other, sweep, at: c, leftGives: false };
  }
  return best;
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
  const place = Int32Array.from(nodes, (node) =>
    step > 0 ? Math.round((coordinates[3 * node + axis]! - low) / step) : 0,
  );
  const sorted = Int32Array.from(place).sort();
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
