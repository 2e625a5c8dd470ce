import { gaussLegendre } from '../gauss-legendre.ts';
import { beamShape } from './beam-shape.ts';
import { congruent, product } from './beam.ts';
import type { Beam } from './beam.ts';

/** Mass along a beam in its own axes. mass: kg/m for motion along x, y, z (added mass of water differs by direction).
 *  inertia: kg·m for turning about x, y, z. */
export interface BeamMass {
  readonly mass: readonly [number, number, number];
  readonly inertia: readonly [number, number, number];
}

/** Consistent mass, 12 × 12 over the nodes' global freedoms: ∫ Nᵀ m N ds with the beam's exact shapes; through offsets
 *  and joints as the stiffness goes. Four points are exact for cubics squared. */
export function beamMass(beam: Beam, { mass, inertia }: BeamMass): Float64Array {
  const M = new Float64Array(144);
  const m = [...mass, ...inertia];
  integrate(beam, false, (c) => m[c]!, M);
  return congruent(M, nodes(beam));
}

/** Geometric stiffness under the axial force N (tension positive, N), 12 × 12 over the nodes' global freedoms:
 *    ∫ N (v'² + w'² + (Iy + Iz)/A θx'²) ds;  moments and torque along the beam are left out.
 *  Source: J. S. Przemieniecki, Theory of Matrix Structural Analysis (1968), ch. 15, from memory. */
export function beamGeometric(beam: Beam, N: number): Float64Array {
  const K = new Float64Array(144);
  const { Iy, Iz, A } = beam.input.section;
  const weights = [0, N, N, (N * (Iy + Iz)) / A, 0, 0];
  integrate(beam, true, (c) => weights[c]!, K);
  return congruent(K, nodes(beam));
}

const points = gaussLegendre(4);

/** Σ over the six displacements of weight ∫ shapeᵀ shape ds, added to M. */
function integrate(beam: Beam, slope: boolean, weight: (c: number) => number, M: Float64Array): void {
  for (let p = 0; p < 4; p++) {
    const N = beamShape(beam, ((1 + points.x[p]!) / 2) * beam.length, slope);
    const ds = (points.weight[p]! * beam.length) / 2;
    for (let c = 0; c < 6; c++) {
      const w = weight(c) * ds;
      if (w !== 0)
        for (let i = 0; i < 12; i++) for (let j = 0; j < 12; j++) M[12 * i + j]! += w * N[12 * c + i]! * N[12 * c + j]!;
    }
  }
}

/** Displacements of the beam's ends behind their joints, from the nodes' freedoms: (1 - give K) T. */
function nodes({ give, local, ends }: Beam): Float64Array {
  const behind = product(product(give, local), ends);
  return ends.map((value, k) => value - behind[k]!);
}
