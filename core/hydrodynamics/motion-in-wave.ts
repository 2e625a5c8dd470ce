import type { Model } from '../model.ts';
import { magnitude, minus, rate } from '../motion/complex.ts';
import { harmonicResponse } from '../motion/harmonic-response.ts';
import type { HeaveSystem } from '../motion/heave-system.ts';
import { waveForcing } from '../motion/wave-forcing.ts';
import { Refusal } from '../refusal.ts';
import { between, knownPoints, type CurvePoint, type KnownPoint } from './heave-curve.ts';
import { heaveSystemOf } from './heave-system-of.ts';

/** The plate under its float in one regular wave. Amplitudes, SI. */
export interface MotionInWave {
  /** Of the plate, and of the plate against the water about it, m. */
  readonly plate: number;
  readonly through: number;
  /** Of the pull of line or strut about the weight, N: the reaction that the float works against. */
  readonly pull: number;
  /** A line would go slack: the answer holds for a strut only. */
  readonly slack: boolean;
  readonly addedMass: number;
  readonly drag: number;
}

/** Height from trough to crest, m, and period, s. */
export interface RegularWave {
  readonly height: number;
  readonly period: number;
}

/**
 * Motion in a regular wave, without one in that of the stated sea's significant height and peak period, with added mass and drag
 * at the motion that comes out: the motion through the water is halved into a bracket of the curve until A, C_d and motion agree
 * (one root where the drag force grows with the motion). `deeper`: m below the stated depth. curve: rising in amplitude; area:
 * that C_d refers to.
 */
export function motionInWave(
  model: Pick<Model, 'document' | 'mass'>,
  curve: readonly CurvePoint[],
  area: number,
  { wave, deeper = 0 }: { readonly wave?: RegularWave; readonly deeper?: number } = {},
): MotionInWave | { readonly missing: string } {
  const { sea } = model.document.hydrodynamics ?? {};
  const asked = wave ?? (sea && { height: sea.significantHeight.si, period: sea.peakPeriod.si });
  if (!asked) return { missing: 'the sea is not stated' };
  const stated = heaveSystemOf(model, 0, 0, deeper);
  if ('missing' in stated) return stated;
  const judged = knownPoints(curve);
  if (judged.length < 2) return { missing: 'added mass and drag are not known over a range of motions' };
  const { field, system: bare } = stated;
  const omega = (2 * Math.PI) / asked.period;
  const at = (amplitude: number): MotionInWave => {
    const { addedMass, drag } = onCurve(judged, amplitude);
    const { mass, carried } = bare.plate;
    const system: HeaveSystem = {
      ...bare,
      plate: {
        ...bare.plate,
        mass: mass + addedMass,
        carried: carried + addedMass,
        drag: 0.5 * field.density * drag * area,
      },
    };
    const unit = waveForcing(field, omega);
    const H = asked.height / 2;
    const forcing = { float: scaled(unit.float, H), plate: scaled(unit.plate, H), water: scaled(unit.water, H) };
    const { plate: z, pull, slack } = harmonicResponse(system, omega, forcing);
    const through = magnitude(minus(rate(z, omega), forcing.water)) / omega;
    return { plate: magnitude(z), through, pull, slack, addedMass, drag };
  };
  try {
    let [low, high] = [judged[0]!.amplitude, judged.at(-1)!.amplitude];
    if (at(low).through < low) return { missing: `the motion through the water is less than ${low.toPrecision(2)} m, where drag is not known` }; // prettier-ignore
    if (at(high).through > high) return { missing: `the motion through the water is more than ${high.toPrecision(2)} m, where added mass and drag are not known` }; // prettier-ignore
    for (let k = 0; k < 50; k++) {
      const middle = (low + high) / 2;
      if (at(middle).through > middle) low = middle;
      else high = middle;
    }
    return at((low + high) / 2);
  } catch (error) {
    if (error instanceof Refusal) return { missing: error.what };
    throw error;
  }
}

const scaled = ([re, im]: readonly [number, number], by: number) => [by * re, by * im] as const;

function onCurve(curve: readonly KnownPoint[], amplitude: number): KnownPoint {
  const k = Math.max(1, curve.findIndex((point) => point.amplitude >= amplitude)); // prettier-ignore
  const [a, b] = [curve[k - 1]!, curve[k]!];
  return between(a, b, (amplitude - a.amplitude) / (b.amplitude - a.amplitude));
}
