import type { Estimate } from './estimate.ts';

/**
 * Probability that one test's number is truly larger than another's, for independent tests with normal errors:
 *   P = Φ((a − b) / √(s_a² + s_b²)),  s = half of the interval over 1.96, so that a stated bound counts as noise.
 * Gives 0 to 1; one half says that nothing is told. Source: textbook statistics of two means.
 */
export function probabilityLarger(a: Estimate, b: Estimate): number {
  const spread = ({ low, high }: Estimate): number => (high - low) / (2 * 1.96);
  const s = Math.hypot(spread(a), spread(b));
  if (s === 0) return a.value === b.value ? 0.5 : Number(a.value > b.value);
  return normal((a.value - b.value) / s);
}

/** Φ(x) by Abramowitz & Stegun 7.1.26 (from memory); error under 1.5e-7. */
function normal(x: number): number {
  const t = 1 / (1 + (0.3275911 * Math.abs(x)) / Math.SQRT2);
  const poly = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const tail = (poly * Math.exp(-(x * x) / 2)) / 2;
  return x >= 0 ? 1 - tail : tail;
}
