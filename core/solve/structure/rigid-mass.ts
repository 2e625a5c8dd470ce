import { eliminate } from '../eliminate.ts';
import { inertiaForces, type PointMass } from './lumped-mass.ts';
import { resultantOf } from './point-force.ts';

/** Mass as the six rigid motions about the origin feel it: 6 × 6, by columns; kg, kg·m and kg·m². */
export type RigidMass = readonly Float64Array[];

export const rigidMass = (coordinates: Float64Array, masses: readonly PointMass[]): RigidMass =>
  [0, 1, 2, 3, 4, 5].map((k) => {
    const unit = new Float64Array(6);
    unit[k] = -1;
    return resultantOf(coordinates, inertiaForces({ coordinates }, masses, unit));
  });

/** M⁻¹ b: the acceleration (six) that a resultant b (three forces, three moments) gives. */
export const overMass = (M: RigidMass, b: ArrayLike<number>): Float64Array =>
  eliminate([0, 1, 2, 3, 4, 5].map((i) => Float64Array.from([...M.map((column) => column[i]!), b[i]!])));

/** M x. */
export function timesMass(M: RigidMass, x: Float64Array): Float64Array {
  const out = new Float64Array(6);
  M.forEach((column, k) => addScaled(out, column, x[k]!));
  return out;
}

/** A support that resists less than this of a new motion resists none: rounding. */
export const leastResisted = 1e-7;

export const dot = (a: Float64Array, b: Float64Array): number => a.reduce((sum, value, i) => sum + value * b[i]!, 0);

export const addScaled = (into: Float64Array, of: Float64Array, scale: number): void =>
  of.forEach((value, i) => (into[i]! += scale * value));
