import { g } from '../water/sea-water.ts';
import { requirePositive } from '../refusal.ts';

/** A float as its maker states it. SI. */
export interface FloatBody {
  readonly volume: number;
  readonly mass: number;
  readonly ratedDepth: number;
  /** Part of the volume lost at the rated depth, and part filled with water in the end. */
  readonly compression: number;
  readonly uptake: number;
}

/**
 * Net buoyancy of a float at a depth, N: g (ρ V (1 − c z / z_r) (1 − u) − m). Volume is lost in proportion to the pressure (linear
 * elasticity), water taken up weighs nothing in water and takes its space. Source: Archimedes. Refuses a rated depth that is not positive.
 */
export function netBuoyancy(
  { volume, mass, ratedDepth, compression, uptake }: FloatBody,
  depth: number,
  rho: number,
): number {
  requirePositive({ ratedDepth, rho });
  return g * (rho * volume * (1 - (compression * depth) / ratedDepth) * (1 - uptake) - mass);
}

/** Weight in water, N, of a body of a mass and a volume of material. */
export const weightInWater = (mass: number, volume: number, rho: number): number => g * (mass - rho * volume);

/**
 * Weight in water of marine growth on a sphere of diameter D grown by t on every side, N. A float of another shape: its diameter
 * as the sphere of its volume. Source: Archimedes on the shell.
 */
export function growthOnSphere(D: number, t: number, growthDensity: number, rho: number): number {
  return g * (growthDensity - rho) * (Math.PI / 6) * ((D + 2 * t) ** 3 - D ** 3);
}
