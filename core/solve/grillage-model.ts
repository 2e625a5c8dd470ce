import type { BeamActions } from './grillage-member.ts';

/** A grid of straight beams in one plane, loaded across it: x, y in m, EI and GJ in N·m², GA (shear stiffness G A_s) in
 *  N and left out for beams stiff in shear; masses in kg and kg/m, needed for a free body only. A support's entries are
 *  stiffnesses, N/m up and N·m/rad about x and y: Infinity is rigid, left out is free. Members meet at nodes only. */
export interface GrillageModel {
  readonly nodes: readonly { readonly x: number; readonly y: number; readonly mass?: number; readonly name?: string }[];
  readonly members: readonly {
    readonly from: number;
    readonly to: number;
    readonly EI: number;
    readonly GJ: number;
    readonly GA?: number;
    readonly mass?: number;
    readonly name?: string;
  }[];
  readonly supports: readonly {
    readonly node: number;
    readonly w?: number;
    readonly rx?: number;
    readonly ry?: number;
  }[];
  /** The motions that no support holds are accelerations, and the grid's own inertia balances the loads. */
  readonly freeBody?: boolean;
}

/** Forces up (N, N/m) and moments about x and y by the right hand (N·m); line torque about the member's axis from its
 *  start to its end (N·m/m). Two line forces are those at start and end, straight between. */
export interface GrillageLoads {
  readonly nodes?: readonly {
    readonly node: number;
    readonly w?: number;
    readonly mx?: number;
    readonly my?: number;
  }[];
  readonly members?: readonly {
    readonly member: number;
    readonly force?: number | readonly [number, number];
    readonly torque?: number;
  }[];
}

/** SI. Turns: rx = ∂w/∂y, ry = -∂w/∂x. */
export interface GrillageAnswer {
  /** One value a node. For a free body the deflection is relative: its mean and its tilts, weighted with mass, are 0. */
  readonly w: Float64Array;
  readonly rx: Float64Array;
  readonly ry: Float64Array;
  /** Forces of the supports on the grid, in the order of the model's supports (each node once). */
  readonly reactions: readonly {
    readonly node: number;
    readonly w: number;
    readonly mx: number;
    readonly my: number;
  }[];
  readonly members: readonly BeamActions[];
  /** Accelerations of a free body: w in m/s² at its first node, turns about x and y in rad/s²; null if it is held. */
  readonly acceleration: { readonly w: number; readonly rx: number; readonly ry: number } | null;
  /** Largest force (or moment over the grid's size) that is left unbalanced at a node, over the sum of all loads. */
  readonly residual: number;
}

export interface Grillage {
  readonly solve: (loads: GrillageLoads) => GrillageAnswer;
  /** Displacements alone under forces on the nodes, both three numbers a node (w, x, y) in the axes of `GrillageLoads`: as
   *  `solve` gives them, for callers that ask for thousands. Trusts that the forces are finite. */
  readonly displacements: (forces: Float64Array) => Float64Array;
  /** Number of unknowns. */
  readonly unknowns: number;
}
