import type { Finding } from '../finding.ts';
import { significant } from '../quantity/format-quantity.ts';
import { refusal } from '../refusal.ts';
import { filtered, highPass, integrateTwice, noiseThrough } from './filtered.ts';

/** Channels of a float in the sea, even in time. SI; arrays of like length. */
export interface SeaChannels {
  readonly dt: number;
  /** Of the float at the accelerometer, up, m/s²; gravity may be in it. */
  readonly acceleration: Float64Array;
  /** Between float and line, m: larger when the plate is further from the float. */
  readonly stroke: Float64Array;
  /** Pull of the line, N. */
  readonly force?: Float64Array;
  /** Of the float, rad: raises a point ahead of the accelerometer. */
  readonly pitch?: Float64Array;
}

/** What is known of the sensors. Null: not stated. SI. */
export interface SeaSetup {
  /** Slowest motion kept, s. */
  readonly highPass: number;
  /** Standard deviation of a reading's noise: of acceleration (m/s²; null: taken from the record), stroke (m), force (N). */
  readonly accelerationNoise: number | null;
  readonly strokeNoise: number;
  readonly forceNoise: number;
  /** Part by which the stroke's scale against the accelerometer's may be wrong. */
  readonly scaleError: number;
  /** The two clocks may be this far apart, s. */
  readonly clock: number;
  /** Of the line, N/m; null: it does not stretch. */
  readonly stiffness: number | null;
  /** Attachment ahead of the accelerometer, m. */
  readonly arm: number;
  /** Double amplitude within which the plate counts as still, m; null: none. */
  readonly limit: number | null;
}

/** How still the plate was. SI. */
export interface SeaResult {
  /** Motion of the plate, up, m, and of the float at its attachment; both without their ends and what is slower than the high pass. */
  readonly plate: Float64Array;
  readonly float: Float64Array;
  readonly stroke: Float64Array;
  readonly dt: number;
  /** Four standard deviations, with the band that noise, clocks and scale leave. */
  readonly significant: { readonly value: number; readonly low: number; readonly high: number };
  readonly floatSignificant: number;
  readonly strokeSignificant: number;
  /** Largest rise or fall from one side of the mean to the other, m. */
  readonly largest: number;
  /** s, between rises through the mean. */
  readonly meanPeriod: number | null;
  /** One standard deviation of a reading of the plate's motion, by cause, m. */
  readonly errors: { readonly acceleration: number; readonly stroke: number; readonly force: number; readonly clock: number; readonly scale: number }; // prettier-ignore
  /** Of the record, by time, within the limit; null without a limit. */
  readonly within: number | null;
  /** Mean power into the power take-off, W; null without force. */
  readonly power: number | null;
  readonly findings: readonly Finding[];
}

/**
 * Motion of a plate under its float from records:  z_plate = z_float + arm · pitch − stroke − ΔF / k,
 * z_float the float's acceleration integrated twice in the frequency domain with a high pass, and the same high pass on all
 * else. A small difference of large numbers: the band of the result carries the noise of each sensor through its filter,
 * and what clocks and scales that disagree leave of the stroke. Of each end one period of the high pass is left out.
 * Refuses a record shorter than twelve of those periods.
 */
export function seaMotion(channels: SeaChannels, setup: SeaSetup): SeaResult {
  const { dt, acceleration, stroke, force, pitch } = channels;
  const n = acceleration.length;
  const ends = Math.ceil(setup.highPass / dt);
  if (n < 12 * ends)
    throw refusal({
      what: `The record is ${significant(n * dt, 3)} s long without a gap, under twelve periods of the high pass`,
      where: { field: 'record' },
      mend: 'Give a longer record, or a high pass of a shorter period.',
    });
  const keep = highPass(setup.highPass);
  const twice = integrateTwice(keep);
  const cut = (values: Float64Array): Float64Array => values.slice(ends, n - ends);
  const kept = (values: Float64Array): Float64Array => cut(filtered(values, dt, keep));
  const own = cut(filtered(acceleration, dt, twice));
  const turned = pitch && setup.arm !== 0 ? kept(pitch) : null;
  const float = turned ? own.map((z, i) => z + setup.arm * Math.sin(turned[i]!)) : own;
  const strokeKept = kept(stroke);
  const pull = force ? kept(force) : null;
  const stretch = pull && setup.stiffness !== null ? pull.map((F) => F / setup.stiffness!) : null;
  const plate = float.map((z, i) => z - strokeKept[i]! - (stretch ? stretch[i]! : 0));

  const noise = setup.accelerationNoise ?? noiseOf(acceleration, dt);
  const rate = rateOf(strokeKept, dt);
  const errors = {
    acceleration: noise * noiseThrough(twice, dt),
    stroke: setup.strokeNoise * noiseThrough(keep, dt),
    force: stretch ? (setup.forceNoise / setup.stiffness!) * noiseThrough(keep, dt) : 0,
    clock: setup.clock * deviation(rate),
    scale: setup.scaleError * deviation(strokeKept),
  };
  const s = deviation(plate);
  const random = Math.hypot(errors.acceleration, errors.stroke, errors.force);
  const bound = errors.clock + errors.scale;
  const least = Math.sqrt(Math.max(0, s ** 2 - random ** 2)) - bound;
  const findings: Finding[] = [];
  if (random + bound > s / 2)
    findings.push({ id: 'motion-drowned', place: 'plate', text: `What the sensors leave open (${significant(4 * (random + bound), 2)} m of a significant double amplitude) is more than half of the motion found, ${significant(4 * s, 3)} m: the record says how large it can be, not how large it was.`, mend: 'Carry an accelerometer or a pressure logger on the plate, or better clocks and scales.' }); // prettier-ignore
  if (setup.accelerationNoise === null)
    findings.push({ id: 'noise-from-record', place: 'acceleration', text: `The accelerometer’s noise is not stated; ${significant(noise, 2)} m/s² is taken, from the fastest quarter of its spectrum. Slow drift is not in it.`, mend: 'State it from the sensor’s sheet or from a record at rest.' }); // prettier-ignore
  return {
    ...{ plate, float, stroke: strokeKept, dt, errors, findings },
    significant: { value: 4 * s, low: Math.max(0, 4 * least), high: 4 * (s + bound) },
    floatSignificant: 4 * deviation(float),
    strokeSignificant: 4 * deviation(strokeKept),
    ...swings(plate, dt),
    within: setup.limit === null ? null : plate.filter((z) => Math.abs(z) <= setup.limit! / 2).length / plate.length,
    power: pull ? powerOf(cut(force!), rate) : null,
  };
}

/** Standard deviation of white noise that would fill the spectrum as its fastest quarter does. */
function noiseOf(acceleration: Float64Array, dt: number): number {
  const fast = filtered(acceleration, dt, (omega) => (omega >= 0.75 * (Math.PI / dt) ? 1 : 0));
  return 2 * deviation(fast);
}

/** Central differences, m/s; the ends as their neighbours. */
function rateOf(x: Float64Array, dt: number): Float64Array {
  const n = x.length;
  return x.map((_, i) => {
    const [a, b] = [Math.max(0, i - 1), Math.min(n - 1, i + 1)];
    return (x[b]! - x[a]!) / ((b - a) * dt);
  });
}

const powerOf = (force: Float64Array, rate: Float64Array): number =>
  force.reduce((sum, F, i) => sum + F * rate[i]!, 0) / force.length;

const deviation = (values: Float64Array): number => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
};

function swings(z: Float64Array, dt: number): Pick<SeaResult, 'largest' | 'meanPeriod'> {
  let [largest, before, extreme, side] = [0, 0, 0, 0];
  const rises: number[] = [];
  z.forEach((value, i) => {
    const now = value >= 0 ? 1 : -1;
    if (now === side) {
      if (Math.abs(value) > Math.abs(extreme)) extreme = value;
      return;
    }
    if (side !== 0 && before !== 0) largest = Math.max(largest, Math.abs(extreme - before));
    if (side < 0) rises.push(i);
    before = side === 0 ? 0 : extreme;
    [extreme, side] = [value, now];
  });
  return {
    largest,
    meanPeriod: rises.length > 1 ? ((rises.at(-1)! - rises[0]!) * dt) / (rises.length - 1) : null,
  };
}
