import { refusal } from '../refusal.ts';
import { magnitude, minus } from './complex.ts';
import { equivalentDamping } from './equivalent-damping.ts';
import { linearAnswer } from './harmonic-response.ts';
import type { HarmonicForcing, HeaveSystem } from './heave-system.ts';

/** What the sea does at one frequency, for a wave of 1 m amplitude. */
export type Transfer = (omega: number) => HarmonicForcing;

/** Answer to a sea state, from spectra. Standard deviations, SI. */
export interface StochasticResponse {
  readonly float: number;
  readonly plate: number;
  /** Of the pull about the weight, N, and its mean zero-crossing period, s. */
  readonly pull: number;
  readonly pullPeriod: number;
  /** Of the speed of the stroke between float and plate, m/s. */
  readonly stroke: number;
  /** Of the plate's speed through the water, m/s. */
  readonly through: number;
  /** Significant double amplitude of the plate, m: four standard deviations. */
  readonly significant: number;
  /** Mean zero-crossing period of the plate's motion, s. */
  readonly zeroCrossing: number;
  readonly equivalent: number;
}

/**
 * Answer to a sea with spectrum S (m² s) by linear answers at each frequency, drag replaced by the linear damping whose
 * error has the least mean square for a Gaussian speed:  b_e = √(8/π) D σ_u.
 * omegas: rising, rad/s, fine enough for the spectrum (trapezoids between them).
 * Source: Borgman, ASCE J. Waterways Harbors Div. 93 (1967) (from memory, derived anew).
 */
export function stochasticResponse(
  system: HeaveSystem,
  S: (omega: number) => number,
  omegas: Float64Array,
  transfer: Transfer,
): StochasticResponse {
  const factor = Math.sqrt(8 / Math.PI) * system.plate.drag;
  const forcings = Array.from(omegas, transfer);
  const answers = (b: number) => forcings.map((forcing, i) => linearAnswer(system, omegas[i]!, forcing, b));
  const spread = (of: (i: number) => number): number => {
    let sum = 0;
    for (let i = 1; i < omegas.length; i++)
      sum += ((omegas[i]! - omegas[i - 1]!) / 2) * (S(omegas[i]!) * of(i) ** 2 + S(omegas[i - 1]!) * of(i - 1) ** 2);
    return Math.sqrt(sum);
  };
  const throughAt = (b: number): number => {
    const own = answers(b);
    return spread((i) => own[i]!.through);
  };
  const equivalent = equivalentDamping((b) => factor * throughAt(b), factor, 1e-10);
  if (equivalent === undefined)
    throw refusal({
      what: 'Nothing damps the motion in this sea: it grows without bound',
      where: { field: 'motion' },
      mend: 'Give the float or the power take-off its damping, or the plate its drag.',
    });
  const own = answers(equivalent);
  const plate = spread((i) => magnitude(own[i]!.plate));
  const speed = spread((i) => omegas[i]! * magnitude(own[i]!.plate));
  const pull = spread((i) => magnitude(own[i]!.link));
  const pullRate = spread((i) => omegas[i]! * magnitude(own[i]!.link));
  return {
    float: spread((i) => magnitude(own[i]!.float)),
    plate,
    pull,
    pullPeriod: pullRate > 0 ? (2 * Math.PI * pull) / pullRate : Infinity,
    stroke: spread((i) => omegas[i]! * magnitude(minus(own[i]!.float, own[i]!.plate))),
    through: spread((i) => own[i]!.through),
    significant: 4 * plate,
    zeroCrossing: speed > 0 ? (2 * Math.PI * plate) / speed : Infinity,
    equivalent,
  };
}
