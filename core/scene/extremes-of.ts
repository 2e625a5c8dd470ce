import type { Reading } from './reading.ts';

export interface Extremes {
  readonly lowest: { readonly part: string; readonly value: number };
  readonly highest: { readonly part: string; readonly value: number };
}

/** Smallest and largest value of a reading with their first part; null when it has no value. */
export function extremesOf({ values }: Pick<Reading, 'values'>): Extremes | null {
  let extremes: Extremes | null = null;
  for (const [part, value] of values) {
    if (value === null) continue;
    extremes = {
      lowest: extremes && extremes.lowest.value <= value ? extremes.lowest : { part, value },
      highest: extremes && extremes.highest.value >= value ? extremes.highest : { part, value },
    };
  }
  return extremes;
}
