import { requirePositive } from '../refusal.ts';
import { plateRigidity } from './uniform-plate.ts';

/** Force (N) at which a wide wall collapses under a point push or pull: a fan of yield lines round the point,
 *    held (the rim stays flat): P = π f_y t²      hinged (the rim turns): P = π f_y t² / 2
 *  t in m, fy in Pa. Error: an upper bound of the plastic theory, without punching (check that apart) and without
 *  membrane action. Source: K. W. Johansen, Yield-line Theory (1962), from memory; derived anew by the work method:
 *  4 π m with m = f_y t² / 4. */
export function wallCollapseUnderPoint(
  { t, fy }: { readonly t: number; readonly fy: number },
  rim: 'held' | 'hinged',
): number {
  requirePositive({ t, fy });
  return (rim === 'held' ? 1 : 0.5) * Math.PI * fy * t ** 2;
}

/** Deflection (m) under a point force P (N) at the middle of a tube wall of flat width b, long along the tube:
 *    held: w = 0.00725 P b² / D      hinged: w = 0.016961 P b² / D
 *  b and t in m. The true wall lies between the two. Error: 0.3 % (held), six digits (hinged) for the strip.
 *  Source: T&WK, Theory of Plates and Shells, 2nd ed., Tables 23 and 37 (a long plate under a central load). */
export function wallDeflectionUnderPoint(
  wall: { readonly b: number; readonly t: number; readonly E: number; readonly nu: number },
  P: number,
  corners: 'held' | 'hinged',
): number {
  const { b, t, E } = wall;
  requirePositive({ b, t, E });
  return ((corners === 'held' ? 0.00725 : 0.016961) * P * b ** 2) / plateRigidity(wall);
}
