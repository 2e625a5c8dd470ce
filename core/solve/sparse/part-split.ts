import type { ElementStiffness } from '../structure/element-stiffness.ts';
import type { StiffnessSystem } from './stiffness-system.ts';
import { strandsOf, type Strands } from './strands.ts';

/** A part of a system by itself: its own nodes, which only its elements touch, and the edge, by which it hangs on the rest.
 *  Numbers and coordinates are the part's own, so that equal parts are equal wherever they are: nodes in the order in which
 *  its elements name them, edge first; coordinates from the first node, to a nanometre, but upright the number of the level
 *  alone: they only guide the order, which panels of every thickness then have in common. Edge nodes are free: what holds them
 *  is the rest's affair. */
export interface Part {
  /** Node of the system for each of the part. */
  readonly nodes: Int32Array;
  readonly edge: number;
  readonly coordinates: Float64Array;
  readonly held: Uint8Array;
  /** Which elements of the system are its own, and their nodes in its numbers. */
  readonly elements: Int32Array;
  readonly joins: readonly (readonly number[])[];
  /** Equal for parts that are eliminated alike. */
  readonly pattern: string;
}

export interface Split {
  readonly parts: readonly Part[];
  /** 1 for nodes that belong to a part alone. */
  readonly inside: Uint8Array;
  /** Elements that belong to no part. */
  readonly rest: Int32Array;
}

/** Parts of a system by the number that each element has, -1 for none. An element without one that joins nodes of one part
 *  alone (a tube between two bolts of a panel, where no other panel lies) goes with it. A part that has no node to itself
 *  is none. */
export function partSplit({ coordinates, elements, held }: StiffnessSystem, numbers: Int32Array): Split {
  const count = numbers.reduce((most, part) => Math.max(most, part + 1), 0);
  const touched = owners(elements, numbers, held.length / 6, (part) => part);
  const of = numbers.map((part, e) => {
    if (part >= 0) return part;
    const [first, ...others] = elements[e]!.nodes;
    const mine = first === undefined ? -1 : touched[first]!;
    return mine >= 0 && others.every((node) => touched[node] === mine) ? mine : -1;
  });
  const owner = owners(elements, of, held.length / 6, (part) => (part < 0 ? shared : part));
  const lists = Array.from({ length: count }, (): number[] => []);
  const rest: number[] = [];
  const hasOwn = new Uint8Array(count);
  for (const part of owner) if (part >= 0) hasOwn[part] = 1;
  of.forEach((part, e) => (part >= 0 && hasOwn[part] === 1 ? lists[part]! : rest).push(e));
  return {
    parts: lists.filter((list) => list.length > 0).map((list) => partOf(list, coordinates, elements, held, owner)),
    inside: Uint8Array.from(owner, (part) => (part >= 0 ? 1 : 0)),
    rest: Int32Array.from(rest),
  };
}

const shared = -2;

/** The one part that touches each node; -1 where none does, `shared` where several do. */
function owners(
  elements: readonly ElementStiffness[],
  of: Int32Array,
  count: number,
  counts: (part: number) => number,
): Int32Array {
  const owner = new Int32Array(count).fill(-1);
  elements.forEach(({ nodes }, e) => {
    const mine = counts(of[e]!);
    if (mine === -1) return;
    for (const node of nodes) owner[node] = owner[node] === -1 || owner[node] === mine ? mine : shared;
  });
  return owner;
}

function partOf(
  list: readonly number[],
  coordinates: Float64Array,
  elements: readonly ElementStiffness[],
  held: Uint8Array,
  owner: Int32Array,
): Part {
  const number = new Map<number, number>();
  for (const isEdge of [true, false])
    for (const e of list)
      for (const node of elements[e]!.nodes)
        if (owner[node]! < 0 === isEdge && !number.has(node)) number.set(node, number.size);
  const nodes = Int32Array.from(number.keys());
  const edge = nodes.reduce((sum, node) => sum + (owner[node]! < 0 ? 1 : 0), 0);
  const nanometres = new Float64Array(3 * nodes.length);
  for (let i = 0; i < nanometres.length; i++)
    nanometres[i] = Math.round(1e9 * (coordinates[3 * nodes[(i / 3) | 0]! + (i % 3)]! - coordinates[3 * nodes[0]! + (i % 3)]!)); // prettier-ignore
  numberLevels(nanometres, edge);
  const own = new Uint8Array(6 * nodes.length);
  for (let i = 6 * edge; i < own.length; i++) own[i] = held[6 * nodes[(i / 6) | 0]! + (i % 6)]!;
  const joins = list.map((e) => elements[e]!.nodes.map((node) => number.get(node)!));
  const strands = list.map((e) => kindOf(strandsOf(elements[e]!)));
  return {
    nodes,
    edge,
    coordinates: nanometres.map((n) => n / 1e9),
    held: own,
    elements: Int32Array.from(list),
    joins,
    pattern: [edge, nanometres.join(), own.join(''), joins.map((join) => join.join()).join(' '), strands.join()].join(
      '|',
    ),
  };
}

/** Heights become the numbers of the levels that own nodes stand at, from below; of the edge, which is not ordered, nought. */
function numberLevels(places: Float64Array, edge: number): void {
  const heights = new Set<number>();
  for (let i = 2; i < places.length; i += 3) if (i >= 3 * edge) heights.add(places[i]!);
  const levels = new Map([...heights].sort((a, b) => a - b).map((height, level) => [height, level]));
  for (let i = 2; i < places.length; i += 3) places[i] = i >= 3 * edge ? levels.get(places[i]!)! : 0;
}

const kinds = new WeakMap<Strands, number>();
let nextKind = 0;

/** A number for each kind of strands. */
function kindOf(strands: Strands): number {
  const known = kinds.get(strands) ?? nextKind++;
  kinds.set(strands, known);
  return known;
}
