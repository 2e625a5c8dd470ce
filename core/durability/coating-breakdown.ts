import type { Durability } from '../document/durability-field.ts';

/** What of a coating's area counts as bare, as the mean over the life and at its end. */
export interface Breakdown {
  readonly mean: number;
  readonly final: number;
}

/** At once, and for each year, to 30 m and deeper. */
const table = {
  I: { a: 0.1, b: [0.1, 0.05] },
  II: { a: 0.05, b: [0.025, 0.015] },
  III: { a: 0.02, b: [0.012, 0.008] },
} as const;

/**
 * Breakdown f = a + b t of a coating: at the life's end at most 1, in the mean a + b t/2, and where the coating ends before
 * the life 1 − (1 − a)²/(2 b t). depth m, years of life. Category I: one thin coat; II: two of 250 µm or more; III: more, 350 µm.
 * Source: DNV-RP-B401 (2010), 6.4, constants from memory; the mean past the coating's end as quoted by users of it.
 */
export function coatingBreakdown(category: Durability['coating'], depth: number, years: number): Breakdown {
  if (category === 'none') return { mean: 1, final: 1 };
  const { a, b: both } = table[category];
  const b = both[depth <= 30 ? 0 : 1];
  const end = a + b * years;
  return end <= 1 ? { mean: a + (b * years) / 2, final: end } : { mean: 1 - (1 - a) ** 2 / (2 * b * years), final: 1 };
}
