import type { ElementStiffness } from './element-stiffness.ts';
import type { JointPart, TiePart } from './structure.ts';
import type { Vector } from '../vector.ts';

/** What a tie carries between panel and tube, as the force of the tube on the panel, N and N·m: pull along z (positive
 *  draws the panel onto the tube's level from wherever it went), shears along x and y, moments about x, y and z. */
export interface TieForce {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly mx: number;
  readonly my: number;
  readonly mz: number;
}

/** Tie as an element: Bᵀ k B with B (6 × 12) how far the two points part, u_t + θ_t × r_t - u_p - θ_p × r_p, and turn. */
export const tieElement = (part: TiePart): ElementStiffness => springElement(part, stiffnessOf(part));

/** Joint of two tubes as an element, in the same way. */
export const jointElement = (part: JointPart): ElementStiffness => springElement(part, part.stiffness);

function springElement(part: Pick<TiePart, 'nodes' | 'offsets'>, k: readonly number[]): ElementStiffness {
  const B = partingOf(part);
  const K = new Float64Array(144);
  for (let i = 0; i < 12; i++)
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      for (let r = 0; r < 6; r++) sum += B[12 * r + i]! * k[r]! * B[12 * r + j]!;
      K[12 * i + j] = K[12 * j + i] = sum;
    }
  return { nodes: part.nodes, stiffness: K };
}

export function tieForce(part: TiePart, u: Float64Array): TieForce {
  const force = springForce(part, stiffnessOf(part), u);
  return { ...force, z: force.z + (part.preload ?? 0) };
}

/** What a joint carries, as the force of the cross tube on the main tube, N and N·m. */
export const jointForce = (part: JointPart, u: Float64Array): TieForce => springForce(part, part.stiffness, u);

function springForce(part: Pick<TiePart, 'nodes' | 'offsets'>, k: readonly number[], u: Float64Array): TieForce {
  const B = partingOf(part);
  const force = k.map((stiffness, r) => {
    let parting = 0;
    part.nodes.forEach((node, end) => {
      for (let c = 0; c < 6; c++) parting += B[12 * r + 6 * end + c]! * u[6 * node + c]!;
    });
    return stiffness * parting;
  });
  const [x, y, z, mx, my, mz] = force as [number, number, number, number, number, number];
  return { x, y, z, mx, my, mz };
}

const stiffnessOf = ({ stiffness: { axial, shear, bending, torsion } }: TiePart): number[] => [
  shear,
  shear,
  axial,
  bending,
  bending,
  torsion,
];

function partingOf({ offsets }: Pick<TiePart, 'offsets'>): Float64Array {
  const B = new Float64Array(72);
  ([[-1, 0, offsets[0]], [1, 6, offsets[1]]] as const).forEach(([sign, first, [rx, ry, rz]]: readonly [number, number, Vector]) => {
    for (let r = 0; r < 6; r++) B[12 * r + first + r] = sign;
    // (θ × r)_x = θy rz - θz ry, and on in turn
    B[first + 4] = sign * rz;
    B[first + 5] = -sign * ry;
    B[12 + first + 5] = sign * rx;
    B[12 + first + 3] = -sign * rz;
    B[24 + first + 3] = sign * ry;
    B[24 + first + 4] = -sign * rx;
  }); // prettier-ignore
  return B;
}
