import { boundedMemo } from '../bounded-memo.ts';
import type { ElementStiffness } from '../structure/element-stiffness.ts';
import { arenaRoom } from './arena-room.ts';
import { elimination, type Elimination } from './elimination.ts';
import { factorFronts, type FactoredFronts } from './factor-fronts.ts';
import { factorise, factorisationOf, solveOnce, type Factorisation } from './factorise.ts';
import type { MakeKernels } from './front-kernels.ts';
import { matrixIds } from './matrix-ids.ts';
import { Mechanism } from './mechanism.ts';
import { alone, bytesOf, edgeOf, partWorkshop, type PartFactor } from './part-factor.ts';
import { partSplit, type Part, type Split } from './part-split.ts';
import { splitServes, type Joined } from './split-serves.ts';
import { requireSystem, type StiffnessSystem } from './stiffness-system.ts';
import { strandsOf, type Strands } from './strands.ts';
import { frontKernels } from './wasm-kernels.ts';

/** Solves one system after another and does again only what differs from what it has. A system comes in parts (a panel with
 *  its fasteners and its contact): each is eliminated down to its edge by itself, and what is known of equal parts, in this
 *  system or an earlier one, serves again; the rest, with the parts as elements, is factored by fronts, and only those on the
 *  way from a change to the root are done again. What is kept is known by its bits and numbers in each part are its own, so a
 *  session gives the same bits as one that begins with the system at hand. */
export interface SolverSession {
  /** parts: for each element the number of its part, or -1. The factorisation of the system before can then solve no more. */
  factorise(system: StiffnessSystem, parts: Int32Array): Factorisation;
  /** What has been done since it began, and what it holds. */
  readonly done: SessionCount;
}

export interface SessionCount {
  readonly factorisations: number;
  /** Parts that were needed and those that had to be eliminated; parts whose order had to be found. */
  readonly parts: number;
  readonly eliminated: number;
  readonly ordered: number;
  /** Multiplications and additions that whole factorisations of the same systems would have taken, and those done. */
  readonly flops: number;
  readonly flopsDone: number;
  /** Bytes of the parts kept. */
  readonly bytes: number;
}

/** Parts beyond these bytes are forgotten, those longest unused first; never those of the system at hand. */
const mostBytes = 256e6;
const mostOrders = 64;

interface Frame {
  readonly order: Elimination;
  readonly factored: FactoredFronts;
  readonly ids: readonly (number | PartFactor)[];
}

export function solverSession(make: MakeKernels = frontKernels): SolverSession {
  const idOf = matrixIds();
  const workshop = partWorkshop(make);
  const orders = new Map<string, Elimination>();
  const factors = new Map<string, PartFactor>();
  const frameOrders = boundedMemo<Elimination>(4);
  let lastSplit: { readonly joined: Joined; readonly held: Uint8Array; readonly of: Int32Array; readonly strands: readonly Strands[]; readonly split: Split } | null = null; // prettier-ignore
  const count = { factorisations: 0, parts: 0, eliminated: 0, ordered: 0, flops: 0, flopsDone: 0, bytes: 0 };
  let frame: Frame | null = null;
  let current = 0;

  const room = arenaRoom(make);

  /** Found once for a structure while its contact changes, and for the next one where only heights differ. */
  function splitOf(system: StiffnessSystem, of: Int32Array): Split {
    const known = lastSplit;
    const joined = { coordinates: system.coordinates, nodes: system.elements.map(({ nodes }) => nodes) };
    const strands = system.elements.map((element) => strandsOf(element));
    const serves = known && known.strands.length === strands.length && strands.every((own, e) => own === known.strands[e]) && sameNumbers(of, known.of) && sameNumbers(system.held, known.held) && splitServes(known.joined, joined); // prettier-ignore
    const split = serves ? known.split : partSplit(system, of);
    lastSplit = { joined, held: system.held, of, strands, split };
    return split;
  }

  function factorOf(part: Part, system: StiffnessSystem): PartFactor {
    const key = `${part.pattern}|${Array.from(part.elements, (e) => idOf(system.elements[e]!.stiffness)).join()}`;
    count.parts++;
    let factor = factors.get(key);
    if (!factor) {
      const local = alone(part, system);
      let order = orders.get(part.pattern);
      if (!order) {
        order = elimination(local, edgeOf(part));
        count.ordered++;
        orders.set(part.pattern, order);
        if (orders.size > mostOrders) orders.delete(orders.keys().next().value!);
      }
      factor = workshop.factor(order, local);
      count.eliminated++;
      count.flopsDone += factor.flops;
      count.bytes += bytesOf(factor);
    }
    count.flops += factor.flops;
    factors.delete(key);
    factors.set(key, factor);
    return factor;
  }

  function forget(kept: number): void {
    for (const [key, factor] of factors) {
      if (count.bytes <= mostBytes || factors.size <= kept) return;
      factors.delete(key);
      count.bytes -= bytesOf(factor);
    }
  }

  function frameOf(system: StiffnessSystem, { parts, inside, rest }: Split, own: readonly PartFactor[]): Frame {
    const condensed = parts.map(({ nodes, edge }, p): ElementStiffness => ({ nodes: Array.from(nodes.subarray(0, edge)), stiffness: own[p]!.stiffness, pattern: whole(edge) })); // prettier-ignore
    const elements = [...Array.from(rest, (e) => system.elements[e]!), ...condensed];
    const held = system.held.map((isHeld, i) => (inside[(i / 6) | 0] === 1 ? 1 : isHeld));
    const local = { coordinates: system.coordinates, elements, held };
    const order = frameOrders(frameKey(local, inside), () => elimination(local));
    const ids = [...Array.from(rest, (e) => idOf(system.elements[e]!.stiffness)), ...own];
    count.flops += order.flops;
    const before = frame;
    frame = null;
    if (before?.order === order) {
      const changed = ids.map((id, e) => id !== before.ids[e]);
      const factored = factorFronts(order, local, room, { again: { factored: before.factored, changed } });
      count.flopsDone += factored.flopsDone;
      return { order, factored, ids };
    }
    const factored = factorFronts(order, local, room, { keepsUpdates: true });
    count.flopsDone += factored.flopsDone;
    return { order, factored, ids };
  }

  function solver(
    { parts }: Split,
    own: readonly PartFactor[],
    { factored }: Frame,
  ): (f: Float64Array) => Float64Array {
    const mine = ++current;
    // Equal parts one after the other: each is brought into the arena once.
    const turn = [...parts.keys()].sort((a, b) => own.indexOf(own[a]!) - own.indexOf(own[b]!) || a - b);
    return (f) => {
      if (mine !== current) throw new Error('A later system of the same session has been factored since');
      const onFrame = Float64Array.from(f);
      const kept = parts.map((part, p) => xOf(part, own[p]!, f));
      for (const p of turn) workshop.forwards(own[p]!, kept[p]!);
      parts.forEach((part, p) => handOn(part, own[p]!, kept[p]!, onFrame));
      const u = solveOnce(factored, onFrame);
      parts.forEach((part, p) => edgeMotion(part, own[p]!, u, kept[p]!));
      for (const p of turn) workshop.backwards(own[p]!, kept[p]!);
      parts.forEach((part, p) => takeIn(part, own[p]!, kept[p]!, u));
      return u;
    };
  }

  return {
    done: count,
    factorise(system, of) {
      requireSystem(system);
      count.factorisations++;
      try {
        const split = splitOf(system, of);
        const own = split.parts.map((part) => factorOf(part, system));
        forget(new Set(own).size);
        frame = frameOf(system, split, own);
        const lower = own.reduce((sum, factor) => sum + factor.lower.length, 0);
        return factorisationOf(system, {
          solveOnce: solver(split, own, frame),
          freedoms: Int32Array.from(system.held.keys()).filter((i) => system.held[i] === 0),
          elimination: frame.order,
          flops: frame.order.flops + own.reduce((sum, { flops }) => sum + flops, 0),
          bytes: frame.factored.kernels.doubles.byteLength + [...new Set(own)].reduce((sum, factor) => sum + bytesOf(factor), 0), // prettier-ignore
          factorBytes: frame.factored.factorBytes + 8 * lower,
        });
      } catch (error) {
        if (!(error instanceof Mechanism)) throw error;
        // A free motion is told of the whole, as it is found there.
        frame = null;
        return factorise(system, { kernels: make });
      }
    },
  };
}

/** The freedoms of a part's elimination as freedoms of the system, in turn with its own numbers. */
function each(
  { nodes, edge }: Part,
  { order: { freedoms } }: PartFactor,
  visit: (place: number, freedom: number, isEdge: boolean) => void,
): void {
  for (let i = 0; i < freedoms.length; i++) {
    const local = freedoms[i]!;
    const node = (local / 6) | 0;
    visit(i, 6 * nodes[node]! + (local - 6 * node), node < edge);
  }
}

/** Loads inside a part; nothing on its edge, whose loads are the frame's. */
function xOf(part: Part, factor: PartFactor, f: Float64Array): Float64Array {
  const x = new Float64Array(factor.order.size);
  each(part, factor, (i, freedom, isEdge) => {
    if (!isEdge) x[i] = f[freedom]!;
  });
  return x;
}

const handOn = (part: Part, factor: PartFactor, x: Float64Array, onFrame: Float64Array): void =>
  each(part, factor, (i, freedom, isEdge) => {
    if (isEdge) onFrame[freedom]! += x[i]!;
  });

const edgeMotion = (part: Part, factor: PartFactor, u: Float64Array, x: Float64Array): void =>
  each(part, factor, (i, freedom, isEdge) => {
    if (isEdge) x[i] = u[freedom]!;
  });

const takeIn = (part: Part, factor: PartFactor, x: Float64Array, u: Float64Array): void =>
  each(part, factor, (i, freedom, isEdge) => {
    if (!isEdge) u[freedom] = x[i]!;
  });

const sameNumbers = (a: ArrayLike<number>, b: ArrayLike<number>): boolean => {
  if (a === b) return true;
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
};

/** All that the frame's elimination depends on. */
function frameKey({ coordinates, elements, held }: StiffnessSystem, inside: Uint8Array): string {
  const words: string[] = [];
  inside.forEach((isInside, node) => {
    if (isInside === 0) words.push(`${node} ${coordinates.subarray(3 * node, 3 * node + 3).join(' ')} ${held.subarray(6 * node, 6 * node + 6).join('')}`); // prettier-ignore
  });
  for (const element of elements) words.push(`${element.nodes.join(' ')}:${strandsOf(element).strand.join('')}`);
  return words.join();
}

/** A pattern without a zero. */
const wholes = new Map<number, Float64Array>();
function whole(nodes: number): Float64Array {
  const known = wholes.get(nodes) ?? new Float64Array(36 * nodes ** 2).fill(1);
  wholes.set(nodes, known);
  return known;
}
