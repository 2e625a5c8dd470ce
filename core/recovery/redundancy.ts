/** Probability that a chain fails of which every part must work, each by itself: 1 − Π (1 − p). */
export const chainFails = (parts: readonly number[]): number => 1 - parts.reduce((works, p) => works * (1 - p), 1);

/**
 * Probability that two things fail of which one is enough, on a demand: (1 − β)² p q + β √(p q). β: the part of the failures that takes both
 * at once (growth on both, one installer, one maker). Different p and q: their geometric mean carries the common part.
 * Source: beta-factor model, Norwegian Oil and Gas guideline 070, appendix D; geometric mean as in the PDS method (from memory).
 */
export const bothFail = (p: number, q: number, beta: number): number =>
  (1 - beta) ** 2 * p * q + beta * Math.sqrt(p * q);

/** Mean probability that a thing with a constant rate of hidden failures has failed, proved every τ: λ τ / 2, for λ τ well below 1. Source: as above. */
export const meanHidden = (rate: number, interval: number): number => (rate * interval) / 2;

/**
 * The same for two of which one is enough: (1 − β)² λ μ τ² / 3 + β √(λ μ) τ / 2. A third where the single one has a half, because both
 * are old together. Source: as above, 1oo2.
 */
export const bothHidden = (rate: number, other: number, interval: number, beta: number): number =>
  ((1 - beta) ** 2 * rate * other * interval ** 2) / 3 + (beta * Math.sqrt(rate * other) * interval) / 2;

/** Probability that any of several lets go by itself within a time: 1 − exp(−Σ λ t). Two releases on one float: either is enough. */
export const lettingGoFalsely = (rates: readonly number[], time: number): number =>
  -Math.expm1(-rates.reduce((sum, rate) => sum + rate, 0) * time);
