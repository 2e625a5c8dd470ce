import type { ElementStiffness } from '../structure/element-stiffness.ts';
import { numbersOf } from './numbers-of.ts';
import { strandsOf, type Strands } from './strands.ts';
import type { StiffnessSystem } from './stiffness-system.ts';

/** Which freedoms meet in an element, gathered at the nodes: a vertex is a node's free freedoms that some element joins to one
 *  another. A flat panel in a level has two at each node, what stretches it and what bends it, which never meet inside it:
 *  its elimination costs a quarter. Vertex v belongs to node nodes[v] of the system and has the freedoms
 *  freedoms[freedomStart[v]] … freedoms[freedomStart[v + 1] - 1] of it.
 *  The neighbours of v, ascending and without v: adjacent[start[v]] … adjacent[start[v + 1] - 1]. */
export interface NodeGraph {
  readonly count: number;
  readonly nodes: Int32Array;
  readonly freedomStart: Int32Array;
  readonly freedoms: Int32Array;
  /** Free freedoms of each vertex, 1 to 6. */
  readonly weight: Int32Array;
  readonly start: Int32Array;
  readonly adjacent: Int32Array;
}

/** The graph of a system; with `kept`, the nodes marked 1 there are all neighbours of one another as well. */
export function nodeGraph({ elements, held }: StiffnessSystem, kept?: Uint8Array): NodeGraph {
  const own = vertices(elements, held);
  const { count, nodes, vertex } = own;
  const clique: number[] = [];
  if (kept) for (let v = 0; v < count; v++) if (kept[nodes[v]!] === 1) clique.push(v);
  // Cliques of vertices: one for each strand of each element.
  const cliqueStart = [0];
  let members = new Int32Array(8 * elements.length + clique.length + 64);
  let end = 0;
  const seenIn = new Int32Array(count).fill(-1);
  for (const element of elements) {
    const strands = strandsOf(element);
    while (end + strands.strand.length > members.length) members = longer(members);
    for (const strand of strands.members) {
      const number = cliqueStart.length;
      for (const a of strand) {
        const v = vertex[6 * element.nodes[(a / 6) | 0]! + (a % 6)]!;
        if (v < 0 || seenIn[v] === number) continue;
        seenIn[v] = number;
        members[end++] = v;
      }
      cliqueStart.push(end);
    }
  }
  while (end + clique.length > members.length) members = longer(members);
  members.set(clique, end);
  cliqueStart.push(end + clique.length);
  return { ...own, ...neighbours(count, cliqueStart, members) };
}

/** Free freedoms of each node in the groups that the elements make of them, in the order of the nodes. */
function vertices(
  elements: readonly ElementStiffness[],
  held: Uint8Array,
): Pick<NodeGraph, 'count' | 'nodes' | 'freedomStart' | 'freedoms' | 'weight'> & { readonly vertex: Int32Array } {
  // For each freedom the least freedom of its node's group.
  const group = numbersOf(held.length, (i) => i);
  const met = new Map<Strands, readonly (readonly number[])[]>();
  for (const element of elements) {
    const strands = strandsOf(element);
    let lists = met.get(strands);
    if (!lists) met.set(strands, (lists = metAtNodes(strands)));
    for (let a = 0; a < element.nodes.length; a++) {
      const first = 6 * element.nodes[a]!;
      // Freedoms of one strand after one another, 6 for its end.
      let before = -1;
      for (const k of lists[a]!) {
        if (k === 6) before = -1;
        else if (held[first + k] === 0) {
          if (before >= 0) join(group, before, first + k);
          before = first + k;
        }
      }
    }
  }
  for (let i = 0; i < group.length; i++) group[i] = group[group[i]!]!;
  const vertex = new Int32Array(held.length).fill(-1);
  const nodes: number[] = [];
  const freedomStart = [0];
  const freedoms: number[] = [];
  for (let first = 0; first < held.length; first += 6)
    for (let k = first; k < first + 6; k++) {
      if (held[k] !== 0 || group[k] !== k) continue;
      for (let i = k; i < first + 6; i++)
        if (held[i] === 0 && group[i] === k) {
          vertex[i] = nodes.length;
          freedoms.push(i);
        }
      nodes.push(first / 6);
      freedomStart.push(freedoms.length);
    }
  return {
    count: nodes.length,
    nodes: numbersOf(nodes.length, (v) => nodes[v]!),
    vertex,
    freedomStart: numbersOf(freedomStart.length, (v) => freedomStart[v]!),
    freedoms: numbersOf(freedoms.length, (p) => freedoms[p]!),
    weight: numbersOf(nodes.length, (v) => freedomStart[v + 1]! - freedomStart[v]!),
  };
}

/** At each node of an element, its freedoms strand by strand, each strand's ascending and ended by a 6. */
const metAtNodes = ({ strand, count }: Strands): number[][] =>
  Array.from({ length: strand.length / 6 }, (_, a) =>
    Array.from({ length: count }, (__, of) => [
      ...[0, 1, 2, 3, 4, 5].filter((k) => strand[6 * a + k] === of),
      6,
    ]).flat(),
  );

/** Joins the groups of two freedoms under the least of both. */
function join(group: Int32Array, a: number, b: number): void {
  while (group[a] !== a) a = group[a]!;
  while (group[b] !== b) b = group[b]!;
  group[Math.max(a, b)] = Math.min(a, b);
}

/** Neighbours of each vertex, once each, from the cliques. */
function neighbours(
  count: number,
  cliqueStart: readonly number[],
  members: Int32Array,
): Pick<NodeGraph, 'start' | 'adjacent'> {
  const cliques = cliqueStart.length - 1;
  const at = new Int32Array(count + 1);
  for (let p = 0; p < cliqueStart[cliques]!; p++) at[members[p]! + 1]!++;
  for (let v = 0; v < count; v++) at[v + 1]! += at[v]!;
  const touching = new Int32Array(at[count]!);
  const next = at.slice(0, count);
  for (let c = 0; c < cliques; c++)
    for (let p = cliqueStart[c]!; p < cliqueStart[c + 1]!; p++) touching[next[members[p]!]!++] = c;
  const seen = new Int32Array(count).fill(-1);
  const start = new Int32Array(count + 1);
  let adjacent = new Int32Array(16 * count + 16);
  let length = 0;
  for (let v = 0; v < count; v++) {
    seen[v] = v;
    for (let q = at[v]!; q < at[v + 1]!; q++)
      for (let p = cliqueStart[touching[q]!]!; p < cliqueStart[touching[q]! + 1]!; p++) {
        const w = members[p]!;
        if (seen[w] === v) continue;
        seen[w] = v;
        if (length === adjacent.length) adjacent = longer(adjacent);
        adjacent[length++] = w;
      }
    start[v + 1] = length;
  }
  // Handed to its neighbours in turn, each vertex comes into their lists in ascending order.
  const ascending = new Int32Array(length);
  next.set(start.subarray(0, count));
  for (let v = 0; v < count; v++) for (let q = start[v]!; q < start[v + 1]!; q++) ascending[next[adjacent[q]!]!++] = v;
  return { start, adjacent: ascending };
}

const longer = (list: Int32Array): Int32Array<ArrayBuffer> => {
  const made = new Int32Array(2 * list.length);
  made.set(list);
  return made;
};
