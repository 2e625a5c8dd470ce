import type { Model } from '../model.ts';
import { equivalentDamping } from '../motion/equivalent-damping.ts';
import { linearAnswer } from '../motion/harmonic-response.ts';
import { waveForcing } from '../motion/wave-forcing.ts';
import type { Spectrum } from '../water/waves/spectrum.ts';
import { between, knownPoints, type CurvePoint, type KnownPoint } from './heave-curve.ts';
import { heaveSystemOf, type HeaveOf } from './heave-system-of.ts';
import type { Rise } from './sea-extremes.ts';

/** Amplitude of the sine that loses as much by quadratic drag as a Gaussian motion of deviation one: (3π/8) √(8/π). */
export const likeSine = ((3 * Math.PI) / 8) * Math.sqrt(8 / Math.PI);

/** A sea as its spectrum, m² s over rad/s, and the period of its peak, s. */
export interface SeaState {
  readonly S: Spectrum;
  readonly peakPeriod: number;
}

/** The plate under its float in a sea, with the added mass and drag of the motion that comes out. */
export interface ThroughSea {
  /** Of the motion through the water. */
  readonly rise: Rise;
  /** Added mass and drag, at the amplitude of the sine of like loss (or the nearest that is known below it). */
  readonly point: KnownPoint;
  readonly made: HeaveOf;
}

/**
 * The plate's motion through the water under its float in a sea, drag linearised for a Gaussian speed (Borgman 1967, from
 * memory); added mass and drag at the sine of like loss, halved into the curve until they agree.
 * curve: rising in amplitude; area: that its drag refers to, m². What is missing, where it cannot be had.
 */
export function throughSea(
  model: Pick<Model, 'document' | 'mass'>,
  { S, peakPeriod }: SeaState,
  curve: readonly CurvePoint[],
  area: number,
): ThroughSea | { readonly missing: string } {
  const stated = heaveSystemOf(model, 0, 0);
  if ('missing' in stated) return stated;
  const known = knownPoints(curve);
  if (known.length < 2) return { missing: 'added mass and drag are not known over a range of motions' };
  const peak = (2 * Math.PI) / peakPeriod;
  const omegas = Array.from({ length: 121 }, (_, i) => peak * (0.4 + (4.6 * i) / 120));
  const forcings = omegas.map((omega) => waveForcing(stated.field, omega));
  const waves = omegas.map((omega) => S(omega) * (omegas[1]! - omegas[0]!));
  const at = (point: KnownPoint): ThroughSea | null => {
    const made = heaveSystemOf(model, point.addedMass, point.drag * area);
    if ('missing' in made) return null;
    const deviations = (b: number): readonly [speed: number, way: number] => {
      let [speed, way] = [0, 0];
      omegas.forEach((omega, i) => {
        if (waves[i] === 0) return;
        const own = linearAnswer(made.system, omega, forcings[i]!, b).through;
        speed += waves[i]! * own ** 2;
        way += waves[i]! * (own / omega) ** 2;
      });
      return [Math.sqrt(speed), Math.sqrt(way)];
    };
    const factor = Math.sqrt(8 / Math.PI) * made.system.plate.drag;
    const b = equivalentDamping((own) => factor * deviations(own)[0], factor, 1e-6);
    if (b === undefined) return null;
    const [speed, sigma] = deviations(b);
    return { rise: { sigma, period: (2 * Math.PI * sigma) / speed }, point, made };
  };
  let [low, high] = [0, known.length - 1];
  const undamped = { missing: 'nothing damps the motion in this sea' };
  const isBeyond = (found: ThroughSea | null, { amplitude }: KnownPoint): boolean =>
    found !== null && likeSine * found.rise.sigma > amplitude;
  const least = at(known[low]!);
  if (!isBeyond(least, known[low]!)) return least ?? undamped;
  if (isBeyond(at(known[high]!), known[high]!)) return { missing: `the motion through the water is more than ${known[high]!.amplitude.toPrecision(2)} m, where added mass and drag are not known` }; // prettier-ignore
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (isBeyond(at(known[middle]!), known[middle]!)) low = middle;
    else high = middle;
  }
  let [from, to] = [0, 1];
  const point = (part: number): KnownPoint => between(known[low]!, known[high]!, part);
  for (let k = 0; k < 14; k++) {
    const middle = (from + to) / 2;
    if (isBeyond(at(point(middle)), point(middle))) from = middle;
    else to = middle;
  }
  return at(point((from + to) / 2)) ?? undamped;
}
