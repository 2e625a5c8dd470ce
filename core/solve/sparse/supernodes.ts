import type { NodeGraph } from './node-graph.ts';
import { numbersOf } from './numbers-of.ts';

/** Vertices that are eliminated together, as a tree in postorder: a supernode stands after all below it.
 *  order: vertices in their final order of elimination. Supernode s takes places first[s] … first[s + 1] - 1; the places
 *  it is coupled to further up, ascending, are boundary[boundaryStart[s]] … boundary[boundaryStart[s + 1] - 1]. */
export interface Supernodes {
  readonly count: number;
  readonly order: Int32Array;
  readonly first: Int32Array;
  readonly parent: Int32Array;
  readonly boundaryStart: Int32Array;
  readonly boundary: Int32Array;
}

/** Supernodes of a graph for an order of elimination. Sources: Liu 1990, SIAM J. Matrix Anal. Appl. 11, 134 (elimination
 *  tree, postorder, fundamental supernodes); Ashcraft & Grimes 1989, ACM Trans. Math. Softw. 15, 291 (relaxed
 *  amalgamation); both from memory. The last `kept` vertices, which must all be neighbours of one another, stay together
 *  in a supernode of their own. */
export function supernodes(graph: NodeGraph, dissected: Int32Array, kept = 0): Supernodes {
  const { tree, order } = postordered(graph, dissected);
  const place = inverse(order);
  const weight = order.map((v) => graph.weight[v]!);
  const { count: below, freedoms } = columnCounts(graph, order, place, tree, weight);
  const merged = amalgamated(fundamental(tree, below, freedoms, weight, order.length - kept), kept > 0);
  return withBoundaries(graph, order, merged);
}

/** Elimination tree of the graph in the given order, then both relabelled so that every subtree stands together. */
function postordered(graph: NodeGraph, given: Int32Array): { tree: Int32Array; order: Int32Array } {
  const tree = eliminationTree(graph, given, inverse(given));
  const n = given.length;
  const places = postorder(tree);
  const label = inverse(places);
  const relabelled = new Int32Array(n);
  for (let i = 0; i < n; i++) relabelled[label[i]!] = tree[i]! < 0 ? -1 : label[tree[i]!]!;
  return { tree: relabelled, order: places.map((p) => given[p]!) };
}

/** tree[i]: first place above i that the elimination of i couples to it; -1 at a root. */
function eliminationTree({ start, adjacent }: NodeGraph, order: Int32Array, place: Int32Array): Int32Array {
  const tree = new Int32Array(order.length).fill(-1);
  const ancestor = new Int32Array(order.length).fill(-1);
  for (let i = 0; i < order.length; i++) {
    const v = order[i]!;
    for (let q = start[v]!; q < start[v + 1]!; q++) {
      let k = place[adjacent[q]!]!;
      while (k < i) {
        const next = ancestor[k]!;
        ancestor[k] = i;
        if (next < 0) {
          tree[k] = i;
          break;
        }
        if (next === i) break;
        k = next;
      }
    }
  }
  return tree;
}

/** Places in an order in which children come before their parent and each subtree stands together. */
function postorder(tree: Int32Array, childFirst?: (a: number, b: number) => number): Int32Array {
  const n = tree.length;
  const children = childrenOf(tree);
  if (childFirst) for (const list of children) list.sort(childFirst);
  const order = new Int32Array(n);
  let end = 0;
  const path: number[] = [];
  const nextChild = new Int32Array(n);
  for (let root = 0; root < n; root++) {
    if (tree[root]! >= 0) continue;
    path.push(root);
    while (path.length > 0) {
      const i = path[path.length - 1]!;
      const list = children[i]!;
      if (nextChild[i]! < list.length) path.push(list[nextChild[i]!++]!);
      else {
        order[end++] = i;
        path.pop();
      }
    }
  }
  return order;
}

function childrenOf(tree: Int32Array): number[][] {
  const children: number[][] = Array.from(tree, () => []);
  tree.forEach((parent, i) => {
    if (parent >= 0) children[parent]!.push(i);
  });
  return children;
}

const inverse = (order: Int32Array): Int32Array => {
  const place = new Int32Array(order.length);
  for (let i = 0; i < order.length; i++) place[order[i]!] = i;
  return place;
};

/** For each column of the factor, how many places below the diagonal are not zero, and how many freedoms they hold: row i
 *  of the factor is found by climbing the tree from each neighbour of i. */
function columnCounts(
  { start, adjacent }: NodeGraph,
  order: Int32Array,
  place: Int32Array,
  tree: Int32Array,
  weight: Int32Array,
): { count: Int32Array; freedoms: Int32Array } {
  const count = new Int32Array(order.length);
  const freedoms = new Int32Array(order.length);
  const seen = new Int32Array(order.length).fill(-1);
  for (let i = 0; i < order.length; i++) {
    seen[i] = i;
    const v = order[i]!;
    for (let q = start[v]!; q < start[v + 1]!; q++)
      for (let k = place[adjacent[q]!]!; k < i && seen[k] !== i; k = tree[k]!) {
        seen[k] = i;
        count[k]!++;
        freedoms[k]! += weight[i]!;
      }
  }
  return { count, freedoms };
}

/** A tree of groups of places: width in own freedoms, boundary in freedoms further up. */
interface Groups {
  readonly tree: Int32Array;
  readonly places: number[][];
  readonly width: Float64Array;
  readonly boundary: Float64Array;
}

/** Neighbouring columns of one chain with the same rows below them; from place `kept` on, one group. */
function fundamental(
  tree: Int32Array,
  below: Int32Array,
  freedoms: Int32Array,
  weight: Int32Array,
  kept: number,
): Groups {
  const n = tree.length;
  const group = new Int32Array(n);
  const places: number[][] = [];
  for (let j = 0; j < n; j++) {
    const joins = j > kept || (j > 0 && j < kept && tree[j - 1] === j && below[j - 1]! === below[j]! + 1);
    if (joins) places[places.length - 1]!.push(j);
    else places.push([j]);
    group[j] = places.length - 1;
  }
  const last = places.map((list) => list[list.length - 1]!);
  return {
    tree: numbersOf(last.length, (s) => (tree[last[s]!]! < 0 ? -1 : group[tree[last[s]!]!]!)),
    places,
    width: Float64Array.from(numbersOf(places.length, (s) => places[s]!.reduce((sum, j) => sum + weight[j]!, 0))),
    boundary: Float64Array.from(numbersOf(last.length, (s) => freedoms[last[s]!]!)),
  };
}

/** A group is taken into the one above it while the zeros that this stores are few: small fronts waste more time on
 *  themselves than on zeros. Up to so many own freedoms, up to so great a share of zeros. */
const relaxed: readonly (readonly [width: number, zeros: number])[] = [
  [24, 0.8],
  [96, 0.15],
  [Infinity, 0.05],
];

/** Groups merged upwards, again in postorder, each group's places ascending. lastAlone: nothing joins the last group. */
function amalgamated({ tree, places, width, boundary }: Groups, lastAlone: boolean): Groups {
  const n = tree.length;
  const children = childrenOf(tree);
  const zeros = new Float64Array(n);
  const into = new Int32Array(n).fill(-1);
  for (let s = 0; s < (lastAlone ? n - 1 : n); s++) {
    const kept: number[] = [];
    const rest = children[s]!.sort((a, b) => boundary[b]! - boundary[a]! || a - b);
    for (const c of rest) {
      const together = width[c]! + width[s]!;
      const wasted = zeros[c]! + zeros[s]! + width[c]! * (width[s]! + boundary[s]! - boundary[c]!);
      const stored = (together * (together + 1)) / 2 + together * boundary[s]!;
      if (relaxed.some(([most, share]) => together <= most && wasted <= share * stored)) {
        width[s] = together;
        zeros[s] = wasted;
        into[c] = s;
        places[s]!.push(...places[c]!);
        kept.push(...children[c]!);
      } else kept.push(c);
    }
    children[s] = kept;
  }
  const alive = Array.from(tree.keys()).filter((s) => into[s]! < 0);
  const number = new Int32Array(n).fill(-1);
  alive.forEach((s, i) => (number[s] = i));
  const above = Int32Array.from(alive, () => -1);
  for (const s of alive) for (const c of children[s]!) above[number[c]!] = number[s]!;
  const b = Float64Array.from(alive, (s) => boundary[s]!);
  const w = Float64Array.from(alive, (s) => width[s]!);
  const order = postorder(above, childOrder(above, b));
  const label = inverse(order);
  return {
    tree: Int32Array.from(order, (i) => (above[i]! < 0 ? -1 : label[above[i]!]!)),
    places: Array.from(order, (i) => places[alive[i]!]!.sort((x, y) => x - y)),
    width: Float64Array.from(order, (i) => w[i]!),
    boundary: Float64Array.from(order, (i) => b[i]!),
  };
}

/** The child whose subtree needs most room beyond what it leaves behind comes first (Liu 1986, from memory). */
function childOrder(tree: Int32Array, boundary: Float64Array): (a: number, b: number) => number {
  const children = childrenOf(tree);
  const peak = new Float64Array(tree.length);
  const left = boundary.map((b) => b * b);
  const first = (a: number, b: number): number => peak[b]! - left[b]! - (peak[a]! - left[a]!) || a - b;
  for (const s of postorder(tree)) {
    let held = 0;
    let most = 0;
    for (const c of children[s]!.sort(first)) {
      most = Math.max(most, held + peak[c]!);
      held += left[c]!;
    }
    peak[s] = Math.max(most, held + left[s]!);
  }
  return first;
}

/** Final order, and what each supernode is coupled to above it: its own neighbours and those its children leave. */
function withBoundaries({ start, adjacent }: NodeGraph, order: Int32Array, { tree, places }: Groups): Supernodes {
  const n = order.length;
  const finalOrder = new Int32Array(n);
  const first = new Int32Array(places.length + 1);
  let end = 0;
  places.forEach((list, s) => {
    for (const j of list) finalOrder[end++] = order[j]!;
    first[s + 1] = end;
  });
  const place = inverse(finalOrder);
  const seen = new Int32Array(n).fill(-1);
  const boundaryStart = new Int32Array(places.length + 1);
  const lists: Int32Array[] = [];
  const children = childrenOf(tree);
  for (let s = 0; s < places.length; s++) {
    const to = first[s + 1]!;
    const list: number[] = [];
    for (let i = first[s]!; i < to; i++) {
      const v = finalOrder[i]!;
      for (let q = start[v]!; q < start[v + 1]!; q++) {
        const j = place[adjacent[q]!]!;
        if (j < to || seen[j] === s) continue;
        seen[j] = s;
        list.push(j);
      }
    }
    for (const c of children[s]!)
      for (const j of lists[c]!) {
        if (j < to || seen[j] === s) continue;
        seen[j] = s;
        list.push(j);
      }
    lists.push(Int32Array.from(list).sort());
    boundaryStart[s + 1] = boundaryStart[s]! + list.length;
  }
  const boundary = new Int32Array(boundaryStart[places.length]!);
  lists.forEach((list, s) => boundary.set(list, boundaryStart[s]!));
  return { count: places.length, order: finalOrder, first, parent: tree, boundaryStart, boundary };
}
