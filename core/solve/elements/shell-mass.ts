import { cornerShares } from './corner-shares.ts';
import { shellShape } from './shell-shape.ts';

/** Mass of a shell element lumped at its nodes: the diagonal (6n), kg and kg·m². Each node has its share ∫N dA of the mass
 *  per area, with the rotary inertia t²/12 of the plate about every axis (about the normal it only keeps the matrix
 *  definite; it is of the same small size). Lumping makes frequencies converge as h², mostly from below. */
export function shellMass(
  xyz: Float64Array,
  { thickness, massPerArea }: { readonly thickness: number; readonly massPerArea: number },
): Float64Array {
  const shape = shellShape(xyz);
  const share = cornerShares(shape);
  return Float64Array.from(
    { length: 6 * shape.count },
    (_, k) => massPerArea * share[Math.floor(k / 6)]! * (k % 6 < 3 ? 1 : thickness ** 2 / 12),
  );
}
