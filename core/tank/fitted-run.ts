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
  const good: number[] = [];
  for (let i = run.from; i < run.to; i++) if (!travelOut[i]) good.push(i);
  const pick = (values: Float64Array, places: ArrayLike<number>): Float64Array =>
    Float64Array.from(places, (i) => values[i]!);
  const tz = pick(time, good);
  const motion = harmonicMotion(tz, pick(z, good), periodOf(run), harmonics);
  const at = Int32Array.from([...good.keys()].filter((p) => !forceOut[good[p]!]));
  const places = Int32Array.from(at, (p) => good[p]!);
  return { run, motion, tz, at, t: pick(time, places), F: pick(force, places), places };
}
