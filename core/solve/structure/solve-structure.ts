import type { ElementStiffness } from './element-stiffness.ts';
import type { Factorise } from './factorise.ts';
import { contactElement, openElement, contactFaults, contactForce, contactLoads } from './contact.ts';
import { heldStructure, type HeldAnswer } from './held-structure.ts';
import { holdFreedoms } from './hold-freedoms.ts';
import type { PointMass } from './lumped-mass.ts';
import type { Structure, SupportPart } from './structure.ts';

/** A structure with its elements and masses, ready for any loads. */
export interface ReadyStructure {
  readonly structure: Structure;
  /** Without contact: see `partElements`. */
  readonly elements: readonly ElementStiffness[];
  readonly masses: readonly PointMass[];
  readonly factorise: Factorise;
}

export interface Holding {
  readonly supports: readonly SupportPart[];
  readonly present: readonly number[];
  readonly oneWay: boolean;
}

export interface StructureAnswer extends HeldAnswer {
  /** Points of contact that are closed, and the force that presses each, N. */
  readonly closed: Uint8Array;
  readonly pressing: Float64Array;
  /** Sets of closed points that were solved; the last is the answer. */
  readonly steps: number;
  /** True where no closed point pulls and no open one overlaps; false with the count of those that do. */
  readonly settled: boolean;
  readonly faults: number;
  /** Scaled residual of the equations, and what the six freedoms that only say where zero is carry, over the largest load. */
  readonly residual: number;
  readonly held: number;
}

/** Most sets of closed points that are tried. */
export const mostSteps = 30;

/**
 * Solves a structure under loads f (6N): linear in the set of closed points that it starts with (`contact: 'as begun'`), or
 * until contact settles: points that pull open, points that overlap close, and the structure is solved anew. The set it
 * ends with is tested, not assumed: `settled` says so, and what is left wrong is counted.
 */
export function* solveStructure(
  ready: ReadyStructure,
  f: Float64Array,
  holding: Holding,
  start: Uint8Array,
  contact: 'as begun' | 'settled',
): Generator<number, StructureAnswer> {
  const { structure } = ready;
  let closed = Uint8Array.from(start);
  const seen = new Set<string>();
  for (let steps = 1; ; steps++) {
    const answer = solveOnce(ready, f, holding, closed);
    const { pulling, overlapping } = contactFaults(structure, closed, answer.u);
    const faults = pulling.length + overlapping.length;
    seen.add(closed.join(''));
    const next = Uint8Array.from(closed);
    for (const i of pulling) next[i] = 0;
    for (const i of overlapping) next[i] = 1;
    const again = seen.has(next.join(''));
    if (again && faults > 0) {
      // the set comes round: change only the point that is most wrong
      next.set(closed);
      const worst = worstOf(structure, [...pulling, ...overlapping], answer.u);
      next[worst] = closed[worst] ? 0 : 1;
    }
    if (contact === 'as begun' || faults === 0 || steps === mostSteps)
      return {
        ...answer,
        closed,
        pressing: Float64Array.from(structure.contacts, (part, i) => (closed[i] ? contactForce(part, answer.u) : 0)),
        steps,
        settled: faults === 0,
        faults,
      };
    yield steps;
    closed = next;
  }
}

const worstOf = ({ contacts }: Structure, of: readonly number[], u: Float64Array): number => {
  const wrong = of.map((i) => Math.abs(contactForce(contacts[i]!, u)));
  return of[wrong.indexOf(Math.max(...wrong))]!;
};

function solveOnce(
  { structure, elements, masses, factorise }: ReadyStructure,
  f: Float64Array,
  { supports, present, oneWay }: Holding,
  closed: Uint8Array,
): HeldAnswer & { residual: number; held: number } {
  const held = holdFreedoms(structure);
  const system = {
    coordinates: structure.coordinates,
    elements: [
      ...elements,
      ...structure.contacts.map((part, i) => (closed[i] ? contactElement(part) : openElement(part))),
    ],
    held,
  };
  const factor = factorise(system);
  const applied = contactLoads(structure, closed).map((value, i) => value + f[i]!);
  const answer = heldStructure(
    { coordinates: structure.coordinates, masses, solve: (loads) => factor.solve(loads) },
    applied,
    supports,
    present,
    oneWay,
  );
  const most = answer.loads.reduce((m, value) => Math.max(m, Math.abs(value)), 0);
  const left = leftAtHeld(system.elements, answer.u, answer.loads, held);
  return { ...answer, residual: factor.residual(answer.u, answer.loads), held: most > 0 ? left / most : 0 };
}

/** Largest force that the held freedoms would carry, N. */
function leftAtHeld(elements: readonly ElementStiffness[], u: Float64Array, f: Float64Array, held: Uint8Array): number {
  const carried = f.map((value) => -value);
  for (const { nodes, stiffness } of elements) {
    if (!nodes.some((n) => held.subarray(6 * n, 6 * n + 6).includes(1))) continue;
    const size = 6 * nodes.length;
    nodes.forEach((n, a) => {
      for (let i = 0; i < 6; i++) {
        if (!held[6 * n + i]) continue;
        let sum = 0;
        nodes.forEach((m, b) => {
          for (let j = 0; j < 6; j++) sum += stiffness[(6 * a + i) * size + 6 * b + j]! * u[6 * m + j]!;
        });
        carried[6 * n + i]! += sum;
      }
    });
  }
  return carried.reduce((m, value, i) => (held[i] ? Math.max(m, Math.abs(value)) : m), 0);
}
