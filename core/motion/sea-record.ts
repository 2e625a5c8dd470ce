import type { Finding } from '../finding.ts';
import { significant } from '../quantity/format-quantity.ts';
import { refusal } from '../refusal.ts';
import { deviation } from './deviation.ts';
import { filtered, highPass } from './filtered.ts';
import { floatMotion } from './float-motion.ts';
import { leftOpen, plateByAccelerometer, plateByDifference, plateByPressure, rateOf, type Cause, type PlateMotion } from './plate-motion.ts'; // prettier-ignore
import { seaFindings } from './sea-findings.ts';
import type { PlateWay, SeaChannels, SeaSetup } from './sea-setup.ts';
import { swings } from './swings.ts';
import { takeOffForces, type TakeOff } from './take-off.ts';
import { whiteNoise } from './white-noise.ts';

/** A number of the record with the band that noise, clocks and scales leave. */
export interface Banded {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** How still the plate was. SI. Arrays are without their ends: one period of the high pass at either. */
export interface SeaResult {
  readonly dt: number;
  /** Of the record, where the arrays begin, s. */
  readonly begins: number;
  /** Height of the plate about its mean, m, found in the way `by`; of the float where the line is fastened; and the stroke. */
  readonly plate: Float64Array;
  readonly float: Float64Array;
  readonly stroke: Float64Array | null;
  readonly by: PlateWay;
  /** Four standard deviations. */
  readonly significant: Banded;
  readonly causes: readonly Cause[];
  /** Each way that the sensors allow, this one among them; `apart`: significant double amplitude of the difference to this one. */
  readonly ways: readonly { readonly by: PlateWay; readonly significant: Banded; readonly apart: number }[];
  readonly floatSignificant: number;
  readonly strokeSignificant: number | null;
  /** What the high pass leaves out of the stroke: four standard deviations of its slower part. */
  readonly strokeSlow: number | null;
  /** Largest rise or fall from one side of the mean to the other, m. */
  readonly largest: number;
  /** s, between rises through the mean. */
  readonly meanPeriod: number | null;
  readonly floatPeriod: number | null;
  /** Of the time, within the limit; null without a limit. */
  readonly within: number | null;
  /** Double amplitudes within which the plate is 50, 90, 95 and 99 % of the time, m. */
  readonly held: readonly { readonly part: number; readonly doubleAmplitude: number }[];
  /** Forces of the line, and power into the power take-off; null without force and stroke. */
  readonly takeOff: TakeOff | null;
  /** Mean power, W. */
  readonly power: number | null;
  readonly findings: readonly Finding[];
}

/**
 * Motion of a plate under its float from records. Float and plate pass the same high pass, so that what is left out is left
 * out of both. Each way that the sensors allow is worked out with what it leaves open, and the surest is taken unless one is
 * asked for. Refuses a record shorter than twelve periods of the high pass, and one that tells nothing of the plate.
 */
export function seaMotion(channels: SeaChannels, setup: SeaSetup): SeaResult {
  const { dt, acceleration, stroke, force } = channels;
  const n = acceleration.length;
  const ends = Math.ceil(setup.highPass / dt);
  if (n < 12 * ends)
    throw refusal({
      what: `The record is ${significant(n * dt, 3)} s long without a gap, under twelve periods of the high pass`,
      where: { field: 'record' },
      mend: 'Give a longer record, or a high pass of a shorter period.',
    });
  const cut = (values: Float64Array): Float64Array => values.slice(ends, n - ends);
  const whole = floatMotion(channels, setup);
  const noise = setup.accelerationNoise ?? whiteNoise(acceleration, dt);
  const ways = [
    plateByDifference(channels, setup, whole),
    plateByAccelerometer(channels, setup),
    plateByPressure(channels, setup, whole, noise),
  ].flatMap((way): PlateMotion[] => (way === null ? [] : [{ ...way, plate: cut(way.plate) }]));
  const chosen = chosenWay(ways, setup);
  const { plate, by, causes } = chosen;
  const float = cut(whole);
  const keep = highPass(setup.highPass);
  const strokeKept = stroke ? cut(filtered(stroke, dt, keep)) : null;
  const strokeSlow = stroke ? 4 * deviation(cut(filtered(stroke, dt, (omega) => 1 - keep(omega)))) : null;
  const rate = stroke ? cut(rateOf(stroke, dt)) : null;
  const takeOff = force ? takeOffForces(cut(force), rate) : null;
  const half = Float64Array.from(plate, Math.abs).sort();
  const found = {
    ...{ dt, begins: ends * dt, plate, float, stroke: strokeKept, by, causes, takeOff, strokeSlow },
    significant: banded(chosen),
    ways: ways.map((way) => ({ by: way.by, significant: banded(way), apart: 4 * deviation(way.plate.map((z, i) => z - plate[i]!)) })), // prettier-ignore
    floatSignificant: 4 * deviation(float),
    strokeSignificant: strokeKept && 4 * deviation(strokeKept),
    ...swings(plate, dt),
    floatPeriod: swings(float, dt).meanPeriod,
    within: setup.limit === null ? null : plate.filter((z) => Math.abs(z) <= setup.limit! / 2).length / plate.length,
    held: [0.5, 0.9, 0.95, 0.99].map((part) => ({ part, doubleAmplitude: 2 * half[Math.ceil(part * half.length) - 1]! })), // prettier-ignore
    power: takeOff?.power ?? null,
  };
  return { ...found, findings: seaFindings(found, channels, setup, noise) };
}

function chosenWay(ways: readonly PlateMotion[], { by }: SeaSetup): PlateMotion {
  const open = ({ causes }: PlateMotion): number => leftOpen(causes).random + leftOpen(causes).bound;
  const asked = by === null ? [...ways].sort((a, b) => open(a) - open(b))[0] : ways.find((way) => way.by === by);
  if (asked) return asked;
  throw refusal({
    what: by === null ? 'The record tells nothing of the plate' : `The record does not allow the way “${by}”`,
    where: { field: 'record' },
    mend: 'Give the stroke, an accelerometer on the plate, or a pressure logger on it with the plate’s depth.',
  });
}

/** Four standard deviations. Noise adds to what is seen and is taken off at the low end; bounds go either way. */
function banded({ plate, causes }: PlateMotion): Banded {
  const s = deviation(plate);
  const { random, bound } = leftOpen(causes);
  const least = Math.sqrt(Math.max(0, s ** 2 - random ** 2)) - bound;
  return { value: 4 * s, low: Math.max(0, 4 * least), high: 4 * (s + bound) };
}
