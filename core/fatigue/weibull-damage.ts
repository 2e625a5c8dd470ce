import { requirePositive } from '../refusal.ts';
import { incompleteGamma } from './incomplete-gamma.ts';
import type { SnCurve } from './sn-curve.ts';

/** Ranges that exceed S in exp(-(S / q)^h) of all n cycles. q and S in Pa. */
export interface WeibullRanges {
  readonly q: number;
  readonly h: number;
  readonly n: number;
}

/** The scale q whose largest range in n0 cycles is `largest`: q = largest / (ln n0)^(1/h), in the unit of `largest`. */
export function weibullScale(largest: number, n0: number, h: number): number {
  requirePositive({ 'the largest range': largest, 'the shape': h, 'the logarithm of the cycles': Math.log(n0) });
  return largest / Math.log(n0) ** (1 / h);
}

/**
 * Damage of ranges that follow Weibull's distribution, in closed form, x = (S_k / q)^h:
 *    D = n / N_k [ (q / S_k)^m_1 Gamma(1 + m_1/h; x, ∞) + (q / S_k)^m_2 Gamma(1 + m_2/h; 0, x) ]
 * With one slope the two parts make one Gamma. A curve's cut-off takes the lower part off from there. Rayleigh's ranges of
 * a narrow-band stress of deviation σ are q = 2 √2 σ, h = 2. Refuses q, h or n that is not positive.
 * Source: DNV-RP-C203, appendix on the simplified method (from memory), derived by hand from Miner's sum.
 */
export function weibullDamage({ S_k, N_k, m_1, m_2, cutOff }: SnCurve, { q, h, n }: WeibullRanges): number {
  requirePositive({ 'the scale of the ranges': q, 'the shape': h, 'the number of cycles': n });
  const at = (stress: number): number => (stress / q) ** h;
  const above = (q / S_k) ** m_1 * incompleteGamma(1 + m_1 / h, at(S_k)).upper;
  const a = 1 + m_2 / h;
  const below =
    (q / S_k) ** m_2 * (incompleteGamma(a, at(S_k)).lower - (cutOff > 0 ? incompleteGamma(a, at(cutOff)).lower : 0));
  return (n / N_k) * (above + below);
}
