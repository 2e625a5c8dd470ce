import { requirePositive } from '../refusal.ts';
import { plateRigidity } from './uniform-plate.ts';

/** A strip of tube wall across its flat width b (m) under a line load p (N/m along the tube) at the middle of the flat,
 *  per metre of tube: moment in N·m/m, deflection in m.
 *    held (stiff corners):  M = p b / 8, w = p b³ / (192 D)      hinged (corners that turn):  M = p b / 4, w = p b³ / (48 D)
 *  The true wall lies between the two. Refuses b, t or E that is not positive. Error: exact for the strip; the tube's
 *  corners decide between the cases. Source: beam tables for a central load, by the strip's D in place of E I. */
export function wallUnderLine(
  wall: { readonly b: number; readonly t: number; readonly E: number; readonly nu: number },
  p: number,
  corners: 'held' | 'hinged',
): { readonly moment: number; readonly deflection: number } {
  const { b, t, E } = wall;
  requirePositive({ b, t, E });
  const [m, w] = corners === 'held' ? [8, 192] : [4, 48];
  return { moment: (p * b) / m, deflection: (p * b ** 3) / (w * plateRigidity(wall)) };
}
