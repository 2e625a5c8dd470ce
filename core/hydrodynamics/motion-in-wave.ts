import type { Model } from '../model.ts';
import { magnitude, minus, rate } from '../motion/complex.ts';
import { harmonicResponse } from '../motion/harmonic-response.ts';
import type { HeaveSystem } from '../motion/heave-system.ts';
import { waveForcing } from '../motion/wave-forcing.ts';
import { Refusal } from '../refusal.ts';
import { localGravity } from '../water/sea-water.ts';
import type { CurvePoint } from './heave-curve.ts';

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

/**
 * Motion in a regular wave of the stated sea's significant height and peak period, with added mass and drag at the motion that
 * comes out: the motion through the water is halved into a bracket of the curve until A, C_d and motion agree (one root where
 * the drag force grows with the motion). `deeper`: m below the stated depth. curve: rising in amplitude; area: that C_d refers to.
 */
export function motionInWave(
  { document, mass }: Pick<Model, 'document' | 'mass'>,
  curve: readonly CurvePoint[],
  area: number,
  deeper = 0,
): MotionInWave | { readonly missing: string } {
  const { sea, system, bed } = document.hydrodynamics ?? {};
  if (!sea) return { missing: 'the sea is not stated' };
  if (!system) return { missing: 'float and power take-off are not stated' };
  const judged = curve.filter(({ drag }) => drag !== null);
  if (judged.length < 2) return { missing: 'added mass and drag are not known over a range of motions' };
  const gravity = localGravity(document);
  const { waterDensity: density } = mass;
  const { asBuilt: volume } = mass.displaced;
  const omega = (2 * Math.PI) / sea.peakPeriod.si;
  const weight = (mass.total - density * volume) * gravity;
  if (weight <= 0) return { missing: 'the plate floats' };
  const float = system.float ? { waterline: system.float.waterline.si, draught: system.float.draught.si } : null;
  const field = {
    density,
    gravity,
    seaDepth: bed?.si ?? Infinity,
    plateDepth: document.water.depth.si + deeper,
    float,
  };
  const at = (amplitude: number): MotionInWave => {
    const { addedMass, drag } = onCurve(judged, amplitude);
    const plate: HeaveSystem = {
      float: system.float
        ? {
            mass: system.float.mass.si,
            damping: system.float.damping.si,
            stiffness: density * gravity * float!.waterline,
          }
        : null,
      plate: {
        mass: mass.total + mass.entrainedWater + addedMass,
        damping: 0,
        drag: 0.5 * density * drag * area,
        carried: addedMass + density * volume + mass.entrainedWater,
        weight,
      },
      link: { stiffness: system.stiffness.si, damping: system.damping?.si ?? 0, pushes: system.link === 'strut' },
    };
    const unit = waveForcing(field, omega);
    const H = sea.significantHeight.si / 2;
    const forcing = { float: scaled(unit.float, H), plate: scaled(unit.plate, H), water: scaled(unit.water, H) };
    const { plate: z, pull, slack } = harmonicResponse(plate, omega, forcing);
    const through = magnitude(minus(rate(z, omega), forcing.water)) / omega;
    return { plate: magnitude(z), through, pull, slack, addedMass, drag };
  };
  try {
    let [low, high] = [judged[0]!.amplitude, judged.at(-1)!.amplitude];
    if (at(low).through < low) return { missing: `the motion through the water is less than ${low.toPrecision(2)} m, where drag is not known` }; // prettier-ignore
    if (at(high).through > high) return { missing: `the motion through the water is more than ${high.toPrecision(2)} m, twice the stated one` }; // prettier-ignore
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

/** Straight between the curve's points. */
function onCurve(curve: readonly CurvePoint[], amplitude: number): { addedMass: number; drag: number } {
  const k = Math.max(1, curve.findIndex((point) => point.amplitude >= amplitude)); // prettier-ignore
  const [a, b] = [curve[k - 1]!, curve[k]!];
  const part = (amplitude - a.amplitude) / (b.amplitude - a.amplitude);
  return { addedMass: a.addedMass + part * (b.addedMass - a.addedMass), drag: a.drag! + part * (b.drag! - a.drag!) };
}
