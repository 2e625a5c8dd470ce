import type { ElementStiffness } from '../structure/element-stiffness.ts';
import { strandsOf } from './strands.ts';
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
    const { strand, count: strands } = strandsOf(element);
    if (end + strand.length > members.length) members = longer(members);
    for (let of = 0; of < strands; of++) {
      const number = cliqueStart.length;
      for (let a = 0; a < strand.length; a++) {
        if (strand[a] !== of) continue;
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
  const group = Int32Array.from(held.keys());
  const root = (i: number): number => {
    while (group[i] !== i) i = group[i]!;
    return i;
  };
  for (const element of elements) {
    const { strand } = strandsOf(element);
    element.nodes.forEach((node, a) => {
      for (let k = 1; k < 6; k++) {
        const of = strand[6 * a + k]!;
        if (of < 0 || held[6 * node + k] !== 0) continue;
        for (let j = 0; j < k; j++) {
          if (strand[6 * a + j] !== of || held[6 * node + j] !== 0) continue;
          const [p, q] = [root(6 * node + j), root(6 * node + k)];
          group[Math.max(p, q)] = Math.min(p, q);
          break;
        }
      }
    });
  }
  const vertex = new Int32Array(held.length).fill(-1);
  const nodes: number[] = [];
  const freedomStart = [0];
  const freedoms: number[] = [];
  for (let first = 0; first < held.length; first += 6)
    for (let k = first; k < first + 6; k++) {
      if (held[k] !== 0 || group[k] !== k) continue;
      for (let i = k; i < first + 6; i++)
        if (held[i] === 0 && root(i) === k) {
          vertex[i] = nodes.length;
          freedoms.push(i);
        }
      nodes.push(first / 6);
      freedomStart.push(freedoms.length);
    }
  return {
    count: nodes.length,
    nodes: Int32Array.from(nodes),
    vertex,
    freedomStart: Int32Array.from(freedomStart),
    freedoms: Int32Array.from(freedoms),
    weight: Int32Array.from(nodes, (_, v) => freedomStart[v + 1]! - freedomStart[v]!),
  };
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
    adjacent.subarray(start[v]!, length).sort();
    start[v + 1] = length;
  }
  return { start, adjacent: adjacent.slice(0, length) };
}

const longer = (list: Int32Array): Int32Array<ArrayBuffer> => {
  const made = new Int32Array(2 * list.length);
  made.set(list);
  return made;
};
