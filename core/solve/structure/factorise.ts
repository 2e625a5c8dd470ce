import type { StiffnessSystem } from '../sparse/stiffness-system.ts';

/** A factored system: displacements (6N, zero where held) for loads (6N), and the scaled residual of an answer. */
export interface Factored {
  solve(f: Float64Array): Float64Array;
  residual(u: Float64Array, f: Float64Array): number;
}

/** Factors systems of one pattern one after the other: what is found out about the order of elimination is kept. parts: for
 *  each element the part of the structure that it belongs to, or -1; parts that are equal, or as before, need not be done again. */
export type Factorise = (system: StiffnessSystem, parts?: Int32Array) => Factored;
