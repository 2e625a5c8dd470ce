import { dissect } from './dissect.ts';
import { nodeGraph } from './node-graph.ts';
import type { StiffnessSystem } from './stiffness-system.ts';
import { isWithin, strandsOf, type Strands } from './strands.ts';
import { supernodes } from './supernodes.ts';

/** How a system is eliminated, down to freedoms. It depends on which freedoms meet in the elements and on what is held, not
 *  on any stiffness: one elimination serves every system of the same pattern, or of less.
 *  Freedom i of the elimination is freedom freedoms[i] of the system; place[freedom of the system] is i, or -1 if held.
 *  Front s eliminates freedoms first[s] … first[s + 1] - 1 and is coupled to rows[rowStart[s]] … rows[rowStart[s + 1] - 1]
 *  above them; strand elementStrand[p] of element elements[p], p from elementStart[s], is added into it. A front stands after all fronts below it in the tree. */
export interface Elimination {
  readonly size: number;
  readonly freedoms: Int32Array;
  readonly place: Int32Array;
  readonly count: number;
  readonly parent: Int32Array;
  readonly first: Int32Array;
  readonly rowStart: Int32Array;
  readonly rows: Int32Array;
  readonly elementStart: Int32Array;
  readonly elements: Int32Array;
  readonly elementStrand: Uint8Array;
  /** Multiplications and additions of the factorisation, pivots not counted. */
  readonly flops: number;
  /** What met in each element. */
  readonly strands: readonly Strands[];
}

/** Whether an elimination serves a system with the same nodes, elements and held freedoms: nothing meets that did not before. */
export const serves = ({ strands }: Elimination, { elements }: StiffnessSystem): boolean =>
  strands.length === elements.length && elements.every((element, e) => isWithin(strandsOf(element), strands[e]!));

/** kept: N, 1 for nodes that are not to be eliminated: their freedoms come last and are the whole of the last front. */
export function elimination(system: StiffnessSystem, kept?: Uint8Array): Elimination {
  const graph = nodeGraph(system, kept);
  const dissected = dissect(graph, system.coordinates, kept);
  const together = kept ? graph.nodes.filter((node) => kept[node] === 1).length : 0;
  const { count, order, first: firstPlace, parent, boundaryStart, boundary } = supernodes(graph, dissected, together);
  // Freedoms of each place.
  const start = new Int32Array(order.length + 1);
  for (let p = 0; p < order.length; p++) start[p + 1] = start[p]! + graph.weight[order[p]!]!;
  const size = start[order.length]!;
  const freedoms = new Int32Array(size);
  const place = new Int32Array(system.held.length).fill(-1);
  let end = 0;
  for (const v of order)
    for (let p = graph.freedomStart[v]!; p < graph.freedomStart[v + 1]!; p++) {
      const k = graph.freedoms[p]!;
      place[k] = end;
      freedoms[end++] = k;
    }
  const first = firstPlace.map((p) => start[p]!);
  const rowStart = new Int32Array(count + 1);
  for (let s = 0; s < count; s++) {
    let rows = 0;
    for (let q = boundaryStart[s]!; q < boundaryStart[s + 1]!; q++)
      rows += start[boundary[q]! + 1]! - start[boundary[q]!]!;
    rowStart[s + 1] = rowStart[s]! + rows;
  }
  const rows = new Int32Array(rowStart[count]!);
  end = 0;
  for (const p of boundary) for (let i = start[p]!; i < start[p + 1]!; i++) rows[end++] = i;
  let flops = 0;
  for (let s = 0; s < count; s++) {
    const w = first[s + 1]! - first[s]!;
    const b = rowStart[s + 1]! - rowStart[s]!;
    flops += w ** 3 / 3 + w * w * b + w * b * b;
  }
  return {
    size,
    freedoms,
    place,
    count,
    parent,
    first,
    rowStart,
    rows,
    ...elementsOfFronts(system, place, first),
    flops,
    strands: system.elements.map((element) => strandsOf(element)),
  };
}

/** Each strand of an element goes to the front that eliminates the first of its freedoms; one without a free freedom goes
 *  nowhere. */
function elementsOfFronts(
  { elements }: StiffnessSystem,
  place: Int32Array,
  first: Int32Array,
): Pick<Elimination, 'elementStart' | 'elements' | 'elementStrand'> {
  const count = first.length - 1;
  const front = new Int32Array(place.length);
  for (let s = 0; s < count; s++) front.fill(s, first[s]!, first[s + 1]!);
  const elementStart = new Int32Array(count + 1);
  const to: number[] = [];
  for (const element of elements)
    for (const members of strandsOf(element).members) {
      let least = place.length;
      for (const a of members) {
        const i = place[6 * element.nodes[(a / 6) | 0]! + (a % 6)]!;
        if (i >= 0 && i < least) least = i;
      }
      const s = least === place.length ? -1 : front[least]!;
      to.push(s);
      if (s >= 0) elementStart[s + 1]!++;
    }
  for (let s = 0; s < count; s++) elementStart[s + 1]! += elementStart[s]!;
  const list = new Int32Array(elementStart[count]!);
  const elementStrand = new Uint8Array(list.length);
  const next = elementStart.slice(0, count);
  let p = 0;
  elements.forEach((element, e) => {
    for (let strand = 0; strand < strandsOf(element).count; strand++) {
      const s = to[p++]!;
      if (s < 0) continue;
      elementStrand[next[s]!] = strand;
      list[next[s]!++] = e;
    }
  });
  return { elementStart, elements: list, elementStrand };
}
