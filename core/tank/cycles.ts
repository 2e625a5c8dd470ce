import { median } from '../record/median.ts';

/** One swing of the travel, from a rise through its middle to the next. Indices into the record: from inclusive, to exclusive. */
export interface Cycle {
  readonly from: number;
  readonly to: number;
  /** s, from crossing to crossing. */
  readonly period: number;
  /** Half of the range of travel, m. */
  readonly amplitude: number;
}

/**
 * Cycles of a travel z (m) over time (s): from each rise through the running middle to the next. A rise counts only after
 * the travel was under the middle by a tenth of the largest half-range, so that noise makes no cycles.
 */
export function cyclesOf(time: Float64Array, z: Float64Array): readonly Cycle[] {
  const middle = median(Float64Array.from(z));
  const [low, high] = extremes(z, 0, z.length);
  const band = 0.1 * ((high - low) / 2);
  const rises: { index: number; at: number }[] = [];
  let armed = false;
  for (let i = 1; i < z.length; i++) {
    if (z[i - 1]! - middle < -band) armed = true;
    if (!armed || z[i]! < middle || z[i - 1]! >= middle) continue;
    const part = (middle - z[i - 1]!) / (z[i]! - z[i - 1]!);
    rises.push({ index: i, at: time[i - 1]! + part * (time[i]! - time[i - 1]!) });
    armed = false;
  }
  return rises.slice(1).map(({ index, at }, i): Cycle => {
    const before = rises[i]!;
    const [least, most] = extremes(z, before.index, index);
    return { from: before.index, to: index, period: at - before.at, amplitude: (most - least) / 2 };
  });
}

/** Cycles in a row of like period and amplitude: a run of the rig at one setting. */
export interface Run {
  readonly cycles: readonly Cycle[];
  readonly from: number;
  readonly to: number;
}

/** Part by which period and amplitude may differ from their mean in one run. */
export const steady = 0.08;
const fewest = 3;

/** Runs of at least three like cycles in a row; cycles between them (starts, changes of setting) belong to none. */
export function runsOf(cycles: readonly Cycle[]): readonly Run[] {
  const runs: Run[] = [];
  let own: Cycle[] = [];
  const close = (): void => {
    if (own.length >= fewest) runs.push({ cycles: own, from: own[0]!.from, to: own.at(-1)!.to });
    own = [];
  };
  for (const cycle of cycles) {
    const follows = own.length === 0 || own.at(-1)!.to === cycle.from;
    if (!follows || !isLike(cycle, own)) close();
    own.push(cycle);
  }
  close();
  return runs;
}

function isLike(cycle: Cycle, own: readonly Cycle[]): boolean {
  if (own.length === 0) return true;
  const near = (of: 'period' | 'amplitude'): boolean => {
    const mean = own.reduce((sum, one) => sum + one[of], 0) / own.length;
    return Math.abs(cycle[of] - mean) <= steady * mean;
  };
  return near('period') && near('amplitude');
}

export function extremes(values: Float64Array, from: number, to: number): readonly [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (let i = from; i < to; i++) {
    if (values[i]! < low) low = values[i]!;
    if (values[i]! > high) high = values[i]!;
  }
  return [low, high];
}
