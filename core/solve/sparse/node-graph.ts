import type { StiffnessSystem } from './stiffness-system.ts';

/** Which nodes share an element. Only nodes with a free freedom take part: node nodes[v] of the system is vertex v.
 *  The neighbours of v, ascending and without v: adjacent[start[v]] … adjacent[start[v + 1] - 1]. */
export interface NodeGraph {
  readonly count: number;
  readonly nodes: Int32Array;
  /** Vertex of each node of the system, -1 where all is held. */
  readonly vertex: Int32Array;
  /** Free freedoms of each vertex, 1 to 6. */
  readonly weight: Int32Array;
  readonly start: Int32Array;
  readonly adjacent: Int32Array;
}

/** The graph of a system; with `kept`, the nodes marked 1 there are all neighbours of one another as well. */
export function nodeGraph({ elements, held }: StiffnessSystem, kept?: Uint8Array): NodeGraph {
  const nodeCount = held.length / 6;
  const vertex = new Int32Array(nodeCount).fill(-1);
  const nodes = new Int32Array(nodeCount);
  const weight = new Int32Array(nodeCount);
  let count = 0;
  for (let node = 0; node < nodeCount; node++) {
    let free = 0;
    for (let k = 0; k < 6; k++) if (held[6 * node + k] === 0) free++;
    if (free === 0) continue;
    vertex[node] = count;
    nodes[count] = node;
    weight[count++] = free;
  }
  const clique = Int32Array.from(kept ? nodes.subarray(0, count).filter((node) => kept[node] === 1) : []);
  const joined: readonly ArrayLike<number>[] = [...elements.map((element) => element.nodes), clique];
  // Elements at each vertex.
  const at = new Int32Array(count + 1);
  for (const of of joined) for (let a = 0; a < of.length; a++) if (vertex[of[a]!]! >= 0) at[vertex[of[a]!]! + 1]!++;
  for (let v = 0; v < count; v++) at[v + 1]! += at[v]!;
  const touching = new Int32Array(at[count]!);
  const next = at.slice(0, count);
  joined.forEach((of, e) => {
    for (let a = 0; a < of.length; a++) if (vertex[of[a]!]! >= 0) touching[next[vertex[of[a]!]!]!++] = e;
  });
  // Neighbours once each.
  const seen = new Int32Array(count).fill(-1);
  const start = new Int32Array(count + 1);
  let adjacent = new Int32Array(16 * count + 16);
  let length = 0;
  for (let v = 0; v < count; v++) {
    seen[v] = v;
    for (let p = at[v]!; p < at[v + 1]!; p++) {
      const of = joined[touching[p]!]!;
      for (let a = 0; a < of.length; a++) {
        const w = vertex[of[a]!]!;
        if (w < 0 || seen[w] === v) continue;
        seen[w] = v;
        if (length === adjacent.length) {
          const longer = new Int32Array(2 * length);
          longer.set(adjacent);
          adjacent = longer;
        }
        adjacent[length++] = w;
      }
    }
    adjacent.subarray(start[v]!, length).sort();
    start[v + 1] = length;
  }
  return {
    count,
    nodes: nodes.slice(0, count),
    vertex,
    weight: weight.slice(0, count),
    start,
    adjacent: adjacent.slice(0, length),
  };
}
