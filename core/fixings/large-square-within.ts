import { largeDeflection, largestLoad } from '../solve/large-deflection.ts';
import { requirePlate, type UniformPlate } from '../solve/uniform-plate.ts';

/** Lower bound of the deflection (m) of any plate that has this one's shorter side and does not hang on more than its
 *  edges: the square of that side, held, on edges that cannot move, by the curve of large deflections. Where that curve
 *  is not tabled (load, ν) the bound is zero: it says nothing. Error and source: see `largeDeflection`; three percent are
 *  taken off for its error at the ends of the range of ν, so that the bound stays one. */
export function largeSquareWithin(plate: UniformPlate): number {
  requirePlate(plate);
  const { t, E, nu, q } = plate;
  const side = Math.min(plate.a, plate.b);
  const load = (Math.abs(q) * side ** 4) / (E * t ** 4);
  if (load > largestLoad('held') || nu < 0.25 || nu > 0.35) return 0;
  return 0.97 * Math.abs(largeDeflection({ ...plate, a: side, b: side }, 'held').deflectionCentre);
}
