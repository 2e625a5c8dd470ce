import { elementProduct } from '../sparse/element-product.ts';
import type { ElementStiffness } from './element-stiffness.ts';
import type { Factorise } from './factorise.ts';
import { contactFaults, contactForce, contactLoads, withContact } from './contact.ts';
import { heldStructure, type HeldAnswer } from './held-structure.ts';
import { holdFreedoms } from './hold-freedoms.ts';
import type { PointMass } from './lumped-mass.ts';
import { partNumbers } from './part-numbers.ts';
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
  const held = holdFreedoms(structure);
  let closed = Uint8Array.from(start);
  const seen = new Set<string>();
  for (let steps = 1; ; steps++) {
    const answer = solveOnce(ready, f, holding, closed, held);
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
  held: Uint8Array,
): HeldAnswer & { residual: number; held: number } {
  const { coordinates } = structure;
  const system = { coordinates, elements: withContact(elements, structure, closed), held };
  const factor = factorise(system, partNumbers(structure));
  const applied = contactLoads(structure, closed).map((value, i) => value + f[i]!);
  const solve = (loads: Float64Array): Float64Array => factor.solve(loads);
  const answer = heldStructure({ coordinates, masses, solve }, applied, supports, present, oneWay);
  const most = answer.loads.reduce((m, value) => Math.max(m, Math.abs(value)), 0);
  const carried = elementProduct(system, answer.u, new Float64Array(held.length));
  const left = carried.reduce((m, value, i) => (held[i] ? Math.max(m, Math.abs(value - answer.loads[i]!)) : m), 0);
  return { ...answer, residual: factor.residual(answer.u, answer.loads), held: most > 0 ? left / most : 0 };
}
