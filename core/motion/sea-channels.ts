import { readRecording, usualStep, type Wanted } from '../record/read-recording.ts';
import type { Table } from '../record/read-table.ts';
import type { Recording } from '../record/record.ts';
import { refusal } from '../refusal.ts';
import { alignedLate, type Alignment, type StatedClock } from './align-records.ts';
import { evenly, longestStretch } from './evenly.ts';
import type { SeaChannels, SeaSetup } from './sea-setup.ts';

type ChannelName = Exclude<keyof SeaChannels, 'dt'>;

/** Names that a header may use, and what each channel measures. */
const known: Readonly<Record<ChannelName, Wanted>> = {
  acceleration: { name: 'acceleration', alsoCalled: ['heave acceleration', 'accel', 'az', 'a'], kind: 'acceleration' },
  ahead: { name: 'acceleration ahead', alsoCalled: ['ahead', 'surge acceleration', 'ax'], kind: 'acceleration' },
  stroke: { name: 'stroke', alsoCalled: ['extension', 'piston', 's'], kind: 'length' },
  force: { name: 'force', alsoCalled: ['tension', 'load', 'line force', 'f'], kind: 'force' },
  pitch: { name: 'pitch', alsoCalled: ['tilt'], kind: 'angle' },
  lineAngle: { name: 'line angle', alsoCalled: ['angle of line', 'angle'], kind: 'angle' },
  plateAcceleration: { name: 'plate acceleration', alsoCalled: ['plate accel', 'plate az'], kind: 'acceleration' },
  pressure: { name: 'pressure', alsoCalled: ['plate pressure', 'p'], kind: 'stress' },
};
export const channelNames = Object.keys(known) as readonly ChannelName[];

/** Columns and units of a file where its header does not say them, and which way it counts. */
export type SeaReading = { readonly [name in ChannelName | 'time']?: { readonly column?: number | undefined; readonly unit?: string | undefined } | undefined } & {
  readonly accelerationUp?: 'up' | 'down';
  readonly strokeGrows?: 'away' | 'towards';
}; // prettier-ignore

export interface SeaFile {
  readonly table: Table;
  readonly reading: SeaReading;
}

export interface SeaRecording {
  /** Of each file, in their order. */
  readonly recordings: readonly Recording[];
  readonly channels: SeaChannels;
  /** Where the longest stretch without a wide gap begins and ends, s from the first reading of the first file. */
  readonly from: number;
  readonly to: number;
  /** Of the second file; null where there is none. */
  readonly alignment: Alignment | null;
}

/** Gaps up to so many steps are bridged straight. */
const bridged = 5;

/**
 * Reads a float's record: time and acceleration, and what else its header or `reading` names; a second file, of another
 * logger, gives the channels that the first does not. Its clock is brought to the first's, offset and rate (`clock`: what is
 * stated of it; the rest is found). The longest stretch that both have without a gap wider than five steps is brought to
 * even steps, straight between readings.
 */
export function seaChannels(
  first: SeaFile,
  second: SeaFile | null = null,
  clock: StatedClock = { late: null, lateAtEnd: null },
  depths: Pick<SeaSetup, 'plateDepth' | 'waterDepth'> = { plateDepth: null, waterDepth: null },
): SeaRecording {
  const own = channelsOf(first, true);
  const dt = usualStep(own.recording.time);
  const asCame = second && channelsOf(second, false);
  const alignment = asCame && alignedLate(own, asCame, dt, clock, depths);
  const other = asCame && onFirstClock(asCame, alignment!);
  const spans = [own, ...(other ? [other] : [])].map(({ recording: { time } }) => {
    const [from, past] = longestStretch(time, bridged * Math.max(dt, usualStep(time)));
    return [time[from]!, time[past - 1]!] as const;
  });
  const from = Math.max(...spans.map(([a]) => a));
  const to = Math.min(...spans.map(([, b]) => b));
  const n = Math.floor((to - from) / dt) + 1;
  if (n < 3)
    throw refusal({
      what: 'The two files have no time in common',
      where: { field: 'record' },
      mend: 'Say how much later the second file begins, or choose the file of the same day.',
    });
  const of = ({ recording: { time }, values }: Carried) =>
    Object.fromEntries([...values].map(([name, x]) => [name, evenly(time, x, from, dt, n)]));
  return {
    recordings: [own.recording, ...(asCame ? [asCame.recording] : [])],
    channels: { dt, ...(other ? of(other) : {}), ...of(own) } as unknown as SeaChannels,
    ...{ from, to, alignment },
  };
}

/** A second file with its times on the first's clock. */
function onFirstClock({ recording, values }: Carried, { late, rate }: Alignment): Carried {
  return { recording: { ...recording, time: recording.time.map((t) => late + (1 + rate) * t) }, values };
}

export interface Carried {
  readonly recording: Recording;
  readonly values: ReadonlyMap<ChannelName, Float64Array>;
}

function channelsOf({ table, reading }: SeaFile, isFirst: boolean): Carried {
  const heads = table.columns.map(({ name }) => name.toLowerCase());
  const carries = (key: ChannelName): boolean => {
    if (reading[key]?.column !== undefined) return true;
    if (!table.hasHeader) return isFirst && (key === 'acceleration' || key === 'stroke');
    const { name, alsoCalled } = known[key];
    return heads.some((own) => [name, ...alsoCalled].includes(own) || (own.startsWith(name) && !taken.has(own)));
  };
  const taken = new Set(Object.values(known).flatMap(({ name, alsoCalled }) => [name, ...alsoCalled]));
  const keys = channelNames.filter((key) => (isFirst && key === 'acceleration') || carries(key));
  if (keys.length === 0)
    throw refusal({
      what: `The second file names no channel: its header has ${table.columns.map(({ name }) => `“${name}”`).join(', ')}`,
      where: { field: 'record' },
      mend: `Name its columns in the first line, for example stroke, plate acceleration or pressure, or say which column is which.`,
    });
  const wanted = keys.map((key) => ({ ...known[key], ...(reading[key]?.column === undefined ? {} : { column: reading[key].column }), ...(reading[key]?.unit ? { unit: reading[key].unit } : {}) })); // prettier-ignore
  const recording = readRecording(table, wanted, reading.time?.column, reading.time?.unit);
  return {
    recording,
    values: new Map(keys.map((key, i) => [key, signed(key, recording.channels[i]!.values, reading)])),
  };
}

/** Up is positive, and a stroke that grows takes the plate away. */
function signed(key: ChannelName, values: Float64Array, { accelerationUp, strokeGrows }: SeaReading): Float64Array {
  const turned = key === 'acceleration' ? accelerationUp === 'down' : key === 'stroke' && strokeGrows === 'towards';
  return turned ? values.map((value) => -value) : values;
}
