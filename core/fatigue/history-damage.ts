import { cycleDamage } from './cycle-damage.ts';
import { isProportional, rangesOf, type CycleResponse } from './cycle-response.ts';
import { blocksOf, weibullParts, type LoadHistory } from './load-history.ts';
import type { SnCurve } from './sn-curve.ts';
import { weibullDamage } from './weibull-damage.ts';

/**
 * Damage that a history of the force does at a detail, by Miner: in closed form where the stress is in proportion to the
 * force, else block by block with contact followed (0.1 %). `factor` multiplies every range (thickness).
 */
export function historyDamage(curve: SnCurve, history: LoadHistory, response: CycleResponse, factor = 1): number {
  if (history.kind !== 'constant' && isProportional(response)) {
    const ranges = rangesOf(response, 1).filter((range) => range > 0);
    const parts = weibullParts(history);
    return ranges.reduce(
      (sum, range) =>
        sum + parts.reduce((all, part) => all + weibullDamage(curve, { ...part, q: part.q * factor * range }), 0),
      0,
    );
  }
  const { ratio, n } = blocksOf(history);
  let D = 0;
  for (let i = 0; i < ratio.length; i++) {
    const [first, second] = rangesOf(response, ratio[i]!);
    D += n[i]! * (cycleDamage(curve, factor * first) + cycleDamage(curve, factor * second));
  }
  return D;
}
