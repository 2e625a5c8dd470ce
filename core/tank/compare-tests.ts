import { erf } from 'mathjs/number';
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

/** Φ(x). */
const normal = (x: number): number => (1 + erf(x / Math.SQRT2)) / 2;
