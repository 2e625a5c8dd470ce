import { rainflow } from './rainflow.ts';

/** Cycles of one size: range and mean in the series' unit, and their number (halves count). */
export interface Cycles {
  readonly range: number;
  readonly mean: number;
  readonly count: number;
}

/** Rainflow cycles of a series, those of one range and mean put together, by growing range, then mean. */
export function countedCycles(series: Float64Array): readonly Cycles[] {
  const counts = new Map<number, Map<number, number>>();
  rainflow(series, (range, mean, count) => {
    let ofRange = counts.get(range);
    if (!ofRange) counts.set(range, (ofRange = new Map()));
    ofRange.set(mean, (ofRange.get(mean) ?? 0) + count);
  });
  return [...counts]
    .flatMap(([range, ofRange]) => [...ofRange].map(([mean, count]): Cycles => ({ range, mean, count })))
    .sort((a, b) => a.range - b.range || a.mean - b.mean);
}
