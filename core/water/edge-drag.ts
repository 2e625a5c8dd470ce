import type { Spread } from './spread.ts';

/** Drag that eddies of the outer edges make, on the outline's area. */
export interface EdgeDrag extends Spread {
  /** Said where the motion lies outside the tests behind it. */
  readonly outside: string | null;
}

/**
 * Drag coefficient of a solid sharp-edged plate in a motion of Keulegan–Carpenter number KC = 2π A / b, b its shorter side:
 *   best: 8 KC^(−1/3) (Graham, J. Fluid Mech. 97, 1980, a plate without ends), by the part that a plate of this aspect
 *         keeps of it in steady flow (`steadyPlate`)
 *   high: 10 KC^(−1/3), by the same part (fit to Keulegan and Carpenter 1958 and Sarpkaya and O’Keefe 1996 in Luhar and Nepf 2016)
 *   low:  4, the least of the discs and heave plates tested at KC 0.1 to 1 (from memory), or six tenths of the best below that
 * and not under the plate's steady drag. The laws from memory. Range: KC 0.1 to 20; outside it, it says so.
 */
export function edgeDrag(KC: number, aspect: number): EdgeDrag {
  const steady = steadyPlate(aspect);
  const part = steady / steadyPlate(Infinity);
  const at = (factor: number): number => Math.max(steady, factor * part * KC ** (-1 / 3));
  const best = at(8);
  return {
    low: Math.max(steady * 0.9, KC <= 1 ? Math.min(4, 0.6 * best) : 0.6 * best),
    best,
    high: at(10),
    outside:
      KC >= 0.1 && KC <= 20 ? null : `KC ${KC.toPrecision(2)} lies outside the tests behind the edge drag (0.1 to 20)`,
  };
}

/**
 * Steady drag coefficient of a solid plate square to the flow, by long over short side.
 * Source: DNV-RP-C205, drag appendix: 1.16, 1.20, 1.50, 1.90 at 1, 5, 10 and without end (from memory; a data book has 1.17 and 1.98).
 * Between them linear in the inverse of the aspect.
 */
export function steadyPlate(aspect: number): number {
  const rows = [[1, 1.16], [0.2, 1.2], [0.1, 1.5], [0, 1.9]] as const; // prettier-ignore
  const u = 1 / aspect;
  const k = Math.min(2, Math.max(0, rows.findIndex(([v]) => v <= u) - 1));
  const [[u0, c0], [u1, c1]] = [rows[k]!, rows[k + 1]!];
  return c0 + ((u - u0) / (u1 - u0)) * (c1 - c0);
}

/**
 * Steady drag of a plate with openings, on the outline's area, for current, lowering and raising. K: loss of the plate taken
 * as a screen, on the approaching flow; open: open part of the outline.
 *   best: K / (1 + K/4)² up to K = 4 (Taylor, resistance of a screen that lets the stream pass; from memory), from there to the
 *         solid plate's as 4/K falls to zero
 *   low: three quarters of it, high: the solid plate's
 */
export function steadyDrag(K: number, aspect: number): Spread {
  const solid = steadyPlate(aspect);
  const screen = K <= 4 ? K / (1 + K / 4) ** 2 : 1 + (solid - 1) * (1 - 4 / K); // 4 / Infinity is 0
  const best = Math.min(solid, screen);
  return { low: 0.75 * best, best, high: Math.max(solid, best) };
}
