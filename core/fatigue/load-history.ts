import { weibullScale } from './weibull-damage.ts';

/**
 * How often the force swings how far in the life: ranges as ratios of the stated swing, from trough to peak.
 * A sea state's ranges follow Rayleigh (narrow band): `deviation` is the standard deviation of the force over the swing.
 */
export type LoadHistory =
  | { readonly kind: 'constant'; readonly ratio: number; readonly cycles: number }
  | {
      readonly kind: 'weibull';
      readonly largest: number;
      readonly inCycles: number;
      readonly shape: number;
      readonly cycles: number;
    }
  | { readonly kind: 'scatter'; readonly states: readonly { readonly deviation: number; readonly cycles: number }[] };

/** All cycles of the life. */
export const cyclesOf = (history: LoadHistory): number =>
  history.kind === 'scatter' ? history.states.reduce((sum, { cycles }) => sum + cycles, 0) : history.cycles;

/** The parts of a history that follow Weibull's distribution each: scale as a ratio of the swing, shape, cycles. */
export function weibullParts(
  history: LoadHistory,
): readonly { readonly q: number; readonly h: number; readonly n: number }[] {
  if (history.kind === 'weibull') {
    const { largest, inCycles, shape, cycles } = history;
    return [{ q: weibullScale(largest, inCycles, shape), h: shape, n: cycles }];
  }
  if (history.kind === 'scatter')
    return history.states
      .filter(({ deviation, cycles }) => deviation > 0 && cycles > 0)
      .map(({ deviation, cycles }) => ({ q: 2 * Math.SQRT2 * deviation, h: 2, n: cycles }));
  return [];
}

/** Cycles of the life whose range is larger than this ratio of the swing. */
export function cyclesBeyond(history: LoadHistory, ratio: number): number {
  if (history.kind === 'constant') return ratio < history.ratio ? history.cycles : 0;
  return weibullParts(history).reduce((sum, { q, h, n }) => sum + n * Math.exp(-((ratio / q) ** h)), 0);
}

/** A history cut into blocks: cycles n[i] of the range ratio[i]. */
export interface Blocks {
  readonly ratio: Float64Array;
  readonly n: Float64Array;
}

/**
 * Blocks of equal width in the ratio, each at its middle, up to the range that a hundredth of a cycle exceeds. Damage by
 * a power of 3 to 5 over 300 blocks is within 0.1 % of the closed form (tests). Made once for a history.
 */
export function blocksOf(history: LoadHistory, count = 300): Blocks {
  if (history.kind === 'constant') return { ratio: Float64Array.of(history.ratio), n: Float64Array.of(history.cycles) };
  const kept = made.get(history)?.get(count);
  if (kept) return kept;
  let top = Math.max(0, ...weibullParts(history).map(({ q }) => q));
  while (cyclesBeyond(history, top) > 0.01) top *= 1.1;
  const ratio = new Float64Array(count);
  const n = new Float64Array(count);
  let beyond = cyclesOf(history);
  for (let i = 0; i < count; i++) {
    ratio[i] = ((i + 0.5) * top) / count;
    const next = cyclesBeyond(history, ((i + 1) * top) / count);
    n[i] = beyond - next;
    beyond = next;
  }
  const blocks = { ratio, n };
  made.set(history, (made.get(history) ?? new Map<number, Blocks>()).set(count, blocks));
  return blocks;
}
const made = new WeakMap<LoadHistory, Map<number, Blocks>>();
