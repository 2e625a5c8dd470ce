import { largeDeflection, largestLoad } from './large-deflection.ts';
import { stripPull } from './strip-pull.ts';
import { requirePlate, type UniformPlate } from './uniform-plate.ts';

/** Upper estimate of the in-plane pull (N/m) that a deflecting plate puts on edges that cannot move together: the larger
 *  of the strip across the shorter side and, where the table reaches, the square on that side. The strip has always
 *  been the larger: it deflects more than any rectangle of its span (held plates three times as long as wide excepted,
 *  by half a percent), and the pull grows with the square of the deflection; a test holds this against a
 *  solution of von Kármán's equations for rectangles. Refuses sizes that are not positive.
 *  Error: on the safe side for what is pulled, by a factor of about 2 on a square that is deflected by its thickness.
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
