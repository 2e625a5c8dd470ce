import type { Json } from '../document/edit.ts';
import { deviation } from '../motion/deviation.ts';
import { evenly, longestStretch } from '../motion/evenly.ts';
import { filtered } from '../motion/filtered.ts';
import { swings } from '../motion/swings.ts';
import { readRecording, usualStep } from '../record/read-recording.ts';
import type { Table } from '../record/read-table.ts';
import { refusal } from '../refusal.ts';
import { movingPairs, outermost, type Moving } from '../water/motion-force.ts';

/** What a recorded motion of the plate against the water leaves in the document. SI. */
export interface RecordedMotion {
  /** Outermost pairs of acceleration and velocity squared, see `outermost`. */
  readonly outermost: readonly Moving[];
  /** Half of the largest rise or fall, and standard deviation, m; mean period, s. */
  readonly largest: number;
  readonly deviation: number;
  readonly period: number;
  readonly seconds: number;
  readonly samples: number;
}

/** Faster motion is noise that two derivatives would raise above all else, s: all is kept from 1.5 of it on, nothing under it. */
export const shortestPeriod = 1;
const names = ['heave', 'z', 'displacement', 'motion', 'position', 'plate', 'rise'];
/** Of a mean period, left out at either end, where the filter has nothing beyond. */
const endPeriods = 1;

/**
 * Reads a motion: columns of time and of displacement (heave, z, displacement, motion, position or plate; m without a unit). The
 * longest stretch without a gap is brought to even steps, its mean and all faster than `shortestPeriod` taken out.
 * Refuses a record with fewer than 5 cycles or fewer than 8 readings a cycle.
 */
export function recordedMotion(table: Table): RecordedMotion {
  const { time, channels } = readRecording(table, [{ name: names[0]!, alsoCalled: names.slice(1), kind: 'length' }]);
  const step = usualStep(time);
  const [from, to] = longestStretch(time, 5 * step);
  const n = Math.floor((time[to - 1]! - time[from]!) / step) + 1;
  const even = evenly(time.subarray(from, to), channels[0]!.values.subarray(from, to), time[from]!, step, n);
  const slowed = filtered(even, step, (omega) => {
    const part = (2 * Math.PI) / omega / shortestPeriod;
    return part >= 1.5 ? 1 : part <= 1 ? 0 : (1 - Math.cos(2 * Math.PI * (part - 1))) / 2;
  });
  const { meanPeriod } = swings(slowed, step);
  const mend = 'Give a longer record, or one with readings closer together.';
  if (meanPeriod === null || n * step < 5 * meanPeriod)
    throw refusal({ what: `The record “heave” of ${(n * step).toFixed(0)} s holds fewer than five cycles`, where: { field: 'record' }, mend }); // prettier-ignore
  if (meanPeriod < 8 * step)
    throw refusal({ what: `The record has ${(meanPeriod / step).toFixed(1)} readings in a mean cycle, fewer than eight`, where: { field: 'record' }, mend }); // prettier-ignore
  const ends = Math.round((endPeriods * meanPeriod) / step);
  const kept = slowed.slice(ends, slowed.length - ends);
  return {
    outermost: outermost(movingPairs(kept, step)),
    largest: swings(kept, step).largest / 2,
    deviation: deviation(kept),
    period: meanPeriod,
    seconds: kept.length * step,
    samples: kept.length,
  };
}

/** As the document keeps it: figures to seven digits. */
export function recordedField(motion: RecordedMotion, record: Json, source: string): { readonly [key: string]: Json } {
  const short = (value: number): number => Number(value.toPrecision(7));
  return {
    record,
    outermost: motion.outermost.map(([a, vv]) => [short(a), short(vv)]),
    largest: `${short(motion.largest)} m`,
    deviation: `${short(motion.deviation)} m`,
    period: `${short(motion.period)} s`,
    seconds: short(motion.seconds),
    source,
  };
}
