import { requirePositive } from '../refusal.ts';

const { PI: π, max, sqrt } = Math;

/**
 * Depth of the waves that a panel of span b and thickness t takes when its edges shorten by a strain ε, m: what is left
 * beyond the strain at which a hinged plate buckles, ε_cr = k π² t² / (12 (1 − ν²) b²), goes into half-waves as long as b,
 *    ε − ε_cr = π² w² / (4 b²)
 * k = 4 shortened one way, 2 both ways. Source: Timoshenko & Gere, Theory of Elastic Stability, 2nd ed., arts. 9.2 and 9.3;
 * the wave's shortening by hand. Error: as of the strain; a panel that is not flat before gives way sooner.
 */
export function wavesOfShrinkage({
  strain,
  b,
  t,
  nu,
  ways,
}: {
  readonly strain: number;
  readonly b: number;
  readonly t: number;
  readonly nu: number;
  readonly ways: 1 | 2;
}): number {
  requirePositive({ b, t });
  const critical = ((ways === 1 ? 4 : 2) * π ** 2 * t ** 2) / (12 * (1 - nu ** 2) * b ** 2);
  return ((2 * b) / π) * sqrt(max(0, strain - critical));
}
