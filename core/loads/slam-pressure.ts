import type { Source } from '../source.ts';
import { requirePositive } from '../refusal.ts';

export const slamSource: Source = { document: 'DNV-RP-N103', clause: '4.3 (simplified method)', memory: true };

/** Slamming coefficient of a flat body by the simplified method: at least 5 (3 for a smooth circular cylinder). */
export const flatSlamCoefficient = 5;

/** Slamming pressure on a body that meets the water, Pa:  p = ρ C_s v² / 2
 *  rho in kg/m³, v the speed against the water's surface in m/s. Refuses values that are not positive.
 *  Source: DNV-RP-N103, simplified method, from memory. */
export function slamPressure({
  rho,
  C_s,
  v,
}: {
  readonly rho: number;
  readonly C_s: number;
  readonly v: number;
}): number {
  requirePositive({ rho, C_s, v });
  return 0.5 * rho * C_s * v ** 2;
}
