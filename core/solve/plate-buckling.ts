import { requirePositive } from '../refusal.ts';

/** Buckling stress (Pa) of a flat plate a × b, σ = k π² E / (12 (1 - ν²)) (t/b)², all edges hinged unless said:
 *    compression along a, b the width across:  k = least over whole m of (m b/a + a/(m b))²
 *    the same with the edges along the load held:  k = 6.971, the least over all lengths, so a lower bound
 *    shear:  k = 5.34 + 4 (s/l)²,  held 8.98 + 5.60 (s/l)², with s ≤ l the sides and s in place of b
 *  a, b, t in m, E in Pa. Refuses what is not positive. Error: exact for hinged compression; below 0.1 % for 6.971; the
 *  shear fits are within about 1 %. Elastic only: no yielding, no first bow.
 *  Source: Timoshenko & Gere, Theory of Elastic Stability, 2nd ed., ch. 9; the shear fits from memory. */
export function plateBuckling(
  {
    a,
    b,
    t,
    E,
    nu,
  }: { readonly a: number; readonly b: number; readonly t: number; readonly E: number; readonly nu: number },
  load: 'compression' | 'shear',
  edges: 'hinged' | 'held',
): number {
  requirePositive({ a, b, t, E });
  const stress = (k: number, width: number): number =>
    ((k * Math.PI ** 2 * E) / (12 * (1 - nu ** 2))) * (t / width) ** 2;
  if (load === 'shear') {
    const [s, l] = [Math.min(a, b), Math.max(a, b)];
    return stress(edges === 'held' ? 8.98 + 5.6 * (s / l) ** 2 : 5.34 + 4 * (s / l) ** 2, s);
  }
  if (edges === 'held') return stress(6.971, b);
  const k = (m: number): number => ((m * b) / a + a / (m * b)) ** 2;
  const m = Math.max(1, Math.floor(a / b));
  return stress(Math.min(k(m), k(m + 1)), b);
}
