import { readRecording, usualStep, type Wanted } from '../record/read-recording.ts';
import type { Table } from '../record/read-table.ts';
import type { Recording } from '../record/record.ts';
import type { SeaChannels } from './sea-record.ts';

const needed: readonly Wanted[] = [
  { name: 'acceleration', alsoCalled: ['heave acceleration', 'accel', 'az', 'a'], kind: 'acceleration' },
  { name: 'stroke', alsoCalled: ['extension', 'piston', 's'], kind: 'length' },
];
const carried: readonly Wanted[] = [
  { name: 'force', alsoCalled: ['tension', 'load', 'line force', 'f'], kind: 'force' },
  { name: 'pitch', alsoCalled: ['tilt'], kind: 'angle' },
];
/** Gaps up to so many steps are bridged straight. */
const bridged = 5;

export interface SeaRecording {
  readonly recording: Recording;
  readonly channels: SeaChannels;
  /** Where the longest stretch without a wide gap begins and ends, s from the first reading. */
  readonly from: number;
  readonly to: number;
}

/**
 * Reads a float's record: time, acceleration and stroke, and force and pitch where its header names them. Its longest stretch
 * without a gap wider than five steps is brought to even steps, straight between readings.
 */
export function seaChannels(table: Table): SeaRecording {
  const names = table.columns.map(({ name }) => name.toLowerCase());
  const has = ({ name, alsoCalled }: Wanted): boolean =>
    table.hasHeader && names.some((own) => [name, ...alsoCalled].includes(own) || own.startsWith(name));
  const wanted = [...needed, ...carried.filter(has)];
  const recording = readRecording(table, wanted);
  const { time } = recording;
  const dt = usualStep(time);
  const [first, past] = longestStretch(time, bridged * dt);
  const n = Math.floor((time[past - 1]! - time[first]!) / dt) + 1;
  const even = (values: Float64Array): Float64Array => {
    let next = first;
    return Float64Array.from({ length: n }, (_, i) => {
      const t = time[first]! + i * dt;
      while (next < past - 1 && time[next]! < t) next++;
      if (next === first) return values[first]!;
      const [a, b] = [time[next - 1]!, time[next]!];
      return values[next - 1]! + Math.min(1, (t - a) / (b - a)) * (values[next]! - values[next - 1]!);
    });
  };
  const of = (name: string): Float64Array | undefined => {
    const found = recording.channels.find((channel) => channel.name === name);
    return found && even(found.values);
  };
  const [force, pitch] = [of('force'), of('pitch')];
  return {
    recording,
    channels: {
      dt,
      acceleration: of('acceleration')!,
      stroke: of('stroke')!,
      ...(force ? { force } : {}),
      ...(pitch ? { pitch } : {}),
    },
    from: time[first]!,
    to: time[past - 1]!,
  };
}

/** Places from … to (exclusive) of the longest run of readings with no step wider than `widest`. */
function longestStretch(time: Float64Array, widest: number): readonly [number, number] {
  let [best, from]: [readonly [number, number], number] = [[0, 0], 0];
  for (let i = 1; i <= time.length; i++) {
    if (i < time.length && time[i]! - time[i - 1]! <= widest) continue;
    if (i - from > best[1] - best[0]) best = [from, i];
    from = i;
  }
  return best;
}
