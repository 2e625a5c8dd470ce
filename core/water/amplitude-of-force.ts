import { requirePositive } from '../refusal.ts';
import { forceOfMotion } from './motion-force.ts';

/**
 * Amplitude (m) of a sinusoidal motion in still water whose peak force is F (N): the inverse of `forceOfMotion`, which grows
 * with the amplitude, by halving to the last bit. mass: added mass, kg; CdS in m², density in kg/m³, period in s.
 */
export function amplitudeOfForce(F: number, mass: number, CdS: number, density: number, period: number): number {
  requirePositive({ F, mass, period });
  // inertia alone needs at least as much
  let [low, high] = [0, F / (mass * ((2 * Math.PI) / period) ** 2)];
  for (let k = 0; k < 200; k++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (forceOfMotion(mass, CdS, density, middle, period).peak < F) low = middle;
    else high = middle;
  }
  return high;
}
