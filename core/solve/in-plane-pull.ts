import { largeDeflection, largestLoad } from './large-deflection.ts';
import { stripPull } from './strip-pull.ts';
import { requirePlate, type UniformPlate } from './uniform-plate.ts';

/** Upper estimate of the in-plane pull (N/m) that a deflecting plate puts on edges that cannot move together: the larger
 *  of the strip across the shorter side and, where the table reaches, the square on that side. In all cases tried the
 *  strip was the larger.
 *  What it bounds, by von Kármán's equations solved for sides 1 : 1 to 1 : 4 (tests): the pull averaged along either
 *  edge, always; the pull at the very middle of the long edge but for up to 6 % (sides about 1 : 2, w above t).
 *  Error: on the high side of the average, by a factor of 2 to 5 on squares. Refuses sizes that are not positive.
 *  Source: T&WK, Theory of Plates and Shells, 2nd ed., arts. 2 and 3, and `largeDeflection`. */
export function inPlanePull(plate: UniformPlate, edges: 'held' | 'hinged'): number {
  requirePlate(plate);
  const { t, E, nu, q } = plate;
  const side = Math.min(plate.a, plate.b);
  const strip = stripPull({ a: side, t, E, nu, q }, edges).pull;
  const load = (Math.abs(q) * side ** 4) / (E * t ** 4);
  if (load > largestLoad(edges) || nu < 0.25 || nu > 0.35) return strip;
  return Math.max(strip, t * largeDeflection({ ...plate, a: side, b: side }, edges).membraneCentre);
}
