import type { ElementStiffness } from './element-stiffness.ts';

/** What is factored: elements over nodes with six freedoms each, some of them held (1, 6N). Coordinates (3N, m) only help
 *  to order. */
export interface StiffnessSystem {
  readonly coordinates: Float64Array;
  readonly elements: readonly ElementStiffness[];
  readonly held: Uint8Array;
}

/** A factored system: displacements (6N, zero where held) for loads (6N), and the scaled residual of an answer. */
export interface Factored {
  solve(f: Float64Array): Float64Array;
  residual(u: Float64Array, f: Float64Array): number;
}

export type Factorise = (system: StiffnessSystem) => Factored;
