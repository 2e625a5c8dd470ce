import { harmonicMotion, type HarmonicMotion } from './harmonic-motion.ts';
import type { Run } from './cycles.ts';
import type { RecordFaults } from './record-faults.ts';

/** A run with its fitted motion. */
export interface FittedRun {
  readonly run: Run;
  /** Over the readings of the run whose travel is good. */
  readonly motion: HarmonicMotion;
  /** Their times, s. */
  readonly tz: Float64Array;
  /** Of those, the readings whose force is good too: places in the motion. */
  readonly at: Int32Array;
  /** Time and force at them, and their places in the record. */
  readonly t: Float64Array;
  readonly F: Float64Array;
  readonly places: Int32Array;
}

/** Mean period of a run's cycles, s. */
export const periodOf = ({ cycles }: Run): number =>
  cycles.reduce((sum, { period }) => sum + period, 0) / cycles.length;

/** Fits the motion of a run to its good readings. Arrays of the whole record, SI. */
export function fittedRun(
  run: Run,
  time: Float64Array,
  z: Float64Array,
  force: Float64Array,
  { travelOut, forceOut }: RecordFaults,
  harmonics: number,
): FittedRun {
  const good = placesWhere(run.from, run.to, (i) => !travelOut[i]);
  const tz = picked(time, good);
  const motion = harmonicMotion(tz, picked(z, good), periodOf(run), harmonics);
  const at = placesWhere(0, good.length, (p) => !forceOut[good[p]!]);
  const places = at.map((p) => good[p]!);
  return { run, motion, tz, at, t: picked(time, places), F: picked(force, places), places };
}

function placesWhere(from: number, to: number, holds: (i: number) => boolean): Int32Array {
  const places = new Int32Array(to - from);
  let n = 0;
  for (let i = from; i < to; i++) if (holds(i)) places[n++] = i;
  return places.subarray(0, n);
}

function picked(values: Float64Array, places: Int32Array): Float64Array {
  const own = new Float64Array(places.length);
  for (let i = 0; i < own.length; i++) own[i] = values[places[i]!]!;
  return own;
}
