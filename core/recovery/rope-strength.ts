import { requirePositive } from '../refusal.ts';

/**
 * Part of a rope's strength that is left over a bend of diameter D: 1 − 0.5 / √(D/d), d of the rope; a straight rope has D
 * Infinity. Refuses D below d: a rope bent as sharply as that is no rope any more.
 * Source: 0027/ND Rev 11, 7.8 (after IMCA M 179): factor 1 / (1 − 0.5 / √(D/d)).
 */
export function bendPart(D: number, d: number): number {
  requirePositive({ d });
  if (D === Infinity) return 1;
  requirePositive({ 'bend over rope diameter, less 0.999': D / d - 0.999 });
  return 1 - 0.5 / Math.sqrt(D / d);
}

/** What takes strength from a rope, each as the part that it leaves. */
export interface RopeParts {
  readonly splice: number;
  readonly bend: number;
  readonly wear: number;
  readonly wet: number;
  readonly age: number;
}

/**
 * Strength that is left, N: the certified one times wear, wet and age, and the worse of splice and bend, which do not act at
 * one place (0027/ND Rev 11, 7.7.2).
 */
export const ropeStrength = (certified: number, { splice, bend, wear, wet, age }: RopeParts): number =>
  certified * Math.min(splice, bend) * wear * wet * age;
