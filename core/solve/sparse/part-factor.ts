import { arenaRoom } from './arena-room.ts';
import { symmetricBlock } from './condense.ts';
import type { Elimination } from './elimination.ts';
import { arenaPlan, factorFronts, inArena, type FactoredFronts } from './factor-fronts.ts';
import { round6, type MakeKernels } from './front-kernels.ts';
import type { Part } from './part-split.ts';
import type { StiffnessSystem } from './stiffness-system.ts';
import { solveLower, solveUpper } from './triangular-solve.ts';

/** A part eliminated down to its edge. Equal parts have one. */
export interface PartFactor {
  readonly order: Elimination;
  /** The columns of L of its own freedoms, as they stand in an arena. */
  readonly lower: Float64Array;
  /** What the edge feels, 6 freedoms a node in its order, by rows. */
  readonly stiffness: Float64Array;
  readonly flops: number;
}

export const bytesOf = ({ lower, stiffness }: PartFactor): number => lower.byteLength + stiffness.byteLength;

/** Eliminates parts and solves with them one after the other in one arena. */
export interface PartWorkshop {
  /** order: of the part with its edge kept. Throws a Mechanism in the part's own numbers. */
  factor(order: Elimination, local: StiffnessSystem): PartFactor;
  /** x ← L⁻¹ x for a part's freedoms in its order; from the edge's freedoms what they hand on is taken off. */
  forwards(factor: PartFactor, x: Float64Array): void;
  /** x ← L⁻ᵀ x with the edge's motion given in x. */
  backwards(factor: PartFactor, x: Float64Array): void;
}

export function partWorkshop(make: MakeKernels): PartWorkshop {
  const arena = arenaRoom(make);
  let loaded: { readonly factor: PartFactor; readonly factored: FactoredFronts } | null = null;
  const room: MakeKernels = (doubles) => {
    loaded = null;
    return arena(doubles);
  };
  const load = (factor: PartFactor): FactoredFronts => {
    if (loaded?.factor === factor) return loaded.factored;
    const { order, lower } = factor;
    const plan = arenaPlan(order, false);
    const at = room(plan.length);
    const factored = { ...inArena(order, plan), kernels: at, flopsDone: 0 };
    at.doubles.set(lower, plan.fronts[0]!.panel);
    at.integers.set(order.rows, 2 * plan.rows);
    loaded = { factor, factored };
    return factored;
  };
  return {
    factor(order, local) {
      const factored = factorFronts(order, local, room, { lastStays: true });
      const last = factored.fronts[order.count - 1]!;
      const edge = (order.size - order.first[order.count - 1]!) / 6;
      const row = Int32Array.from({ length: 6 * edge }, (_, i) => order.place[i]! - order.first[order.count - 1]!);
      const { doubles } = factored.kernels;
      const made = {
        order,
        flops: factored.flopsDone,
        lower: doubles.slice(factored.fronts[0]!.panel, last.panel),
        stiffness: symmetricBlock(doubles, last.panel, round6(last.w), row),
      };
      loaded = { factor: made, factored };
      return made;
    },
    forwards(factor, x) {
      const factored = load(factor);
      const { doubles } = factored.kernels;
      doubles.set(x, factored.x);
      solveLower(factored, factor.order.count - 1);
      x.set(doubles.subarray(factored.x, factored.x + x.length));
    },
    backwards(factor, x) {
      const factored = load(factor);
      const { doubles } = factored.kernels;
      doubles.set(x, factored.x);
      solveUpper(factored, factor.order.count - 1);
      x.set(doubles.subarray(factored.x, factored.x + x.length));
    },
  };
}

/** A part as a system by itself. */
export const alone = (
  { coordinates, held, joins, elements: own }: Part,
  { elements }: StiffnessSystem,
): StiffnessSystem => ({
  coordinates,
  held,
  elements: joins.map((nodes, k) => ({ ...elements[own[k]!]!, nodes })),
});

/** 1 for the edge's nodes. */
export const edgeOf = ({ edge, nodes }: Part): Uint8Array => Uint8Array.from(nodes, (_, i) => (i < edge ? 1 : 0));
