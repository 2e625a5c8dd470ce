import { requirePositive } from '../../refusal.ts';

/** A sea state's part in the long run: standard deviation (m) of the rise, mean period (s), part of the time. */
export interface StateInTime {
  readonly sigma: number;
  readonly period: number;
  readonly part: number;
}

/**
 * Height (m, trough to crest) that is exceeded once in `years`: the h at which all states' Rayleigh waves together make one,
 *   years Σ p_i / T_i exp(−h² / (8 σ_i²)) = 1,
 * by halving. Parts of the time may add to less than one (calms left out). The table is not drawn out beyond its largest state.
 * Source: Battjes, Long-term wave height distributions (1972) (from memory; held to the one-state closed form σ √(8 ln N)).
 */
export function longTermHeight(states: readonly StateInTime[], years: number): number {
  requirePositive({ years, 'number of sea states': states.length });
  const seconds = years * 365.25 * 86_400;
  const beyond = (h: number): number => states.reduce((sum, { sigma, period, part }) => sum + (sigma > 0 ? ((part * seconds) / period) * Math.exp(-(h ** 2) / (8 * sigma ** 2)) : 0), 0); // prettier-ignore
  let [low, high] = [0, Math.max(...states.map(({ sigma }) => sigma))];
  if (!(beyond(0) > 1)) return 0;
  while (beyond(high) > 1) high *= 2;
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2;
    if (beyond(middle) > 1) low = middle;
    else high = middle;
  }
  return high;
}
