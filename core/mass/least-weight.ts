import { g } from '../water/sea-water.ts';
import type { Body } from './body.ts';
import type { Centred } from './centre-of.ts';

/** A weight that can be counted on, N down, with its first moments in plan, N·m: Σ W x, Σ W y. */
export interface LeastWeight {
  readonly weight: number;
  readonly momentX: number;
  readonly momentY: number;
}

/**
 * Weight where it helps (a line must stay taut, slam is held down): the plate's weight less all that may be missing. An
 * allowance (weld metal by a part of the steel, coating, a rolling tolerance upwards) may not be used up, and metal
 * corrodes. Each is taken off with its own buoyancy, and only where it weighs: a coating lighter than water stays, as
 * does a tolerance downwards. Extras stay, because the document states them piece by piece.
 * Masses in kg, volumes in m³; rho of the medium in kg/m³, 0 for air.
 * Source: a weight that helps is taken at its lower value, EN 1990:2002, 4.1.2 (from memory).
 */
export function leastWeight(
  { mass, displaced }: { readonly mass: Centred; readonly displaced: Centred },
  mayBeMissing: readonly Pick<Body, 'mass' | 'volume' | 'centre'>[],
  rho: number,
): LeastWeight {
  const moment = (k: 0 | 1): number => g * (mass.sum * mass.centre[k] - rho * displaced.sum * displaced.centre[k]);
  let [weight, momentX, momentY] = [g * (mass.sum - rho * displaced.sum), moment(0), moment(1)];
  for (const { mass: m, volume, centre } of mayBeMissing) {
    const own = g * (m - rho * volume);
    if (own <= 0) continue;
    weight -= own;
    momentX -= own * centre[0];
    momentY -= own * centre[1];
  }
  return { weight, momentX, momentY };
}
