import { beamStiffness, type BeamStiffness } from './grillage-member.ts';
import type { GrillageModel } from './grillage-model.ts';

/** A member in its place in the grid. */
export interface Beam extends BeamStiffness {
  /** Freedoms 3 × node + (0 w, 1 rx, 2 ry) of both ends, and direction cosines. */
  readonly freedoms: readonly number[];
  readonly cos: number;
  readonly sin: number;
  readonly mass: number;
  readonly k: Float64Array;
}

export function beamOf(
  { nodes }: GrillageModel,
  { from, to, EI, GJ, GA = Infinity, mass = 0 }: GrillageModel['members'][number],
): Beam {
  const [start, end] = [nodes[from]!, nodes[to]!];
  const length = Math.hypot(end.x - start.x, end.y - start.y);
  const beam = { length, EI, GJ, GA };
  const freedoms = [3 * from, 3 * from + 1, 3 * from + 2, 3 * to, 3 * to + 1, 3 * to + 2];
  return {
    ...beam,
    freedoms,
    cos: (end.x - start.x) / length,
    sin: (end.y - start.y) / length,
    mass,
    k: beamStiffness(beam),
  };
}

/** τ = cos rx + sin ry, ψ = sin rx - cos ry, at both ends. */
function toLocal({ freedoms, cos, sin }: Beam, u: Float64Array): Float64Array {
  const local = new Float64Array(6);
  for (const end of [0, 3]) {
    const [rx, ry] = [u[freedoms[end + 1]!]!, u[freedoms[end + 2]!]!];
    local[end] = u[freedoms[end]!]!;
    local[end + 1] = cos * rx + sin * ry;
    local[end + 2] = sin * rx - cos * ry;
  }
  return local;
}

/** The transpose: adds forces on [w, τ, ψ] of both ends to a vector in the grid's axes. */
export function addGlobal({ freedoms, cos, sin }: Beam, f: Float64Array, sum: Float64Array): void {
  for (const end of [0, 3]) {
    sum[freedoms[end]!]! += f[end]!;
    sum[freedoms[end + 1]!]! += cos * f[end + 1]! + sin * f[end + 2]!;
    sum[freedoms[end + 2]!]! += sin * f[end + 1]! - cos * f[end + 2]!;
  }
}

/** Forces on both ends, [w, τ, ψ] each, that displacements u of the nodes call up. */
export function endForces(beam: Beam, u: Float64Array): Float64Array {
  const local = toLocal(beam, u);
  const f = new Float64Array(6);
  for (let i = 0; i < 6; i++) for (let j = 0; j < 6; j++) f[i]! += beam.k[i * 6 + j]! * local[j]!;
  return f;
}
