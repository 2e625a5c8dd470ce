import { requirePositive } from '../refusal.ts';

/** Collapse pressure (Pa) of a rectangular plate by yield lines, in the roof mode with straight lines to the corners:
 *    hinged: q = 24 m / (s² (√(3 + (s/l)²) - s/l)²),  held: twice that,  m = f_y t² / 4, s ≤ l the sides
 *  a, b, t in m; fy in Pa. Refuses what is not positive. Error: an upper bound, so never a capacity alone: a fan at the
 *  corners lowers the held square by up to 11 %; membrane action, which helps, is left out.
 *  Source: K. W. Johansen, Yield-line Theory (1962), from memory; derived anew by the work method. */
export function yieldLine(
  { a, b, t, fy }: { a: number; b: number; t: number; fy: number },
  edges: 'hinged' | 'held',
): number {
  requirePositive({ a, b, t, fy });
  const [s, l] = [Math.min(a, b), Math.max(a, b)];
  const hinged = (24 * ((fy * t ** 2) / 4)) / (s * (Math.sqrt(3 + (s / l) ** 2) - s / l)) ** 2;
  return edges === 'held' ? 2 * hinged : hinged;
}
