import { refusal } from '../refusal.ts';
import type { Spread } from './spread.ts';

/**
 * Loss of an opening on the velocity through it, Δp = ζ ρ w|w| / 2, by its shape: tau, the part of its surroundings that is
 * open, and depth, its length along the flow over its hydraulic diameter.
 *   high: sharp edges without depth, ζ = (0.707 √(1 − τ) + 1 − τ)²
 *   best: with depth, ζ = 0.5 (1 − τ) + (1 − τ)² + θ (1 − τ)^1.5, θ(l/d) from 1.35 at 0 to 0 where the jet lies on the walls again
 *   low: θ = 0, and rounded entries that lose half of what sharp ones do, ζ = 0.25 (1 − τ) + (1 − τ)²
 * Flow to and fro is taken as steady at each instant. tau from 0 to below 1.
 * Source: Idelchik, Handbook of Hydraulic Resistance, grids and orifices with thick edges, from memory; checked: at τ = 0.5 the
 * first gives 4.0 on the approaching flow, as 2 (1 − τ)/τ² of Molin (2001, μ = 0.5) does.
 */
export function gapLoss(tau: number, depth: number): Spread {
  if (!(tau >= 0 && tau < 1 && depth >= 0))
    throw refusal({ what: `A gap with an open part of ${tau} and a depth of ${depth} has no loss`, mend: 'Give an open part from 0 to below 1.' }); // prettier-ignore
  const s = 1 - tau;
  const phi = 0.25 + (0.535 * depth ** 8) / (0.05 + depth ** 7);
  const theta = depth >= 2.4 ? 0 : (2.4 - depth) * 10 ** -phi;
  const high = (0.707 * Math.sqrt(s) + s) ** 2;
  return { low: 0.25 * s + s * s, best: Math.min(high, 0.5 * s + s * s + theta * s ** 1.5), high };
}
