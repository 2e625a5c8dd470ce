import { cycleDamage } from './cycle-damage.ts';
import type { SnCurve } from './sn-curve.ts';

/**
 * Damage of counted cycles by the rule of Palmgren and Miner: the sum of n / N. Ranges in Pa, each multiplied by
 * `factor` (thickness). Means play no part: an as-welded detail holds tension of its own as high as yield.
 * Source: DNV-RP-C203, 2.2; EN 1993-1-9, A.5.
 */
export function minerSum(
  curve: SnCurve,
  cycles: Iterable<{ readonly range: number; readonly count: number }>,
  factor = 1,
): number {
  let D = 0;
  for (const { range, count } of cycles) D += count * cycleDamage(curve, factor * range);
  return D;
}
