import type { Finding } from '../finding.ts';
import { significant } from '../quantity/format-quantity.ts';
import { extremes } from './cycles.ts';

/** Readings that the fit leaves out: one flag a reading for each channel, and what was found. */
export interface RecordFaults {
  readonly travelOut: Uint8Array;
  readonly forceOut: Uint8Array;
  readonly findings: readonly Finding[];
}

/** A run of like readings longer than this part of a cycle is no turning point. */
const stuckPart = 1 / 8;
/** Readings within this part of the range of the extreme stand at it. */
const atExtreme = 0.002;
/** A line that pulls less than this part of what it carries at rest is slack. */
const slackPart = 0.02;
/** A force that goes under zero by more than this part is no line's. */
const pushPart = 0.05;

/**
 * Looks for what spoils a record: a channel that stands still while the other moves (stuck), one that stands at its extreme
 * (clipped, or a travel that meets its stop), a line that no longer pulls (slack). Those readings are kept out, aloud.
 * `atRest`: force of the line when nothing moves, N. `period`: s; `step`: s.
 */
export function recordFaults(
  time: Float64Array,
  travel: Float64Array,
  force: Float64Array,
  atRest: number,
  period: number,
  step: number,
): RecordFaults {
  const n = time.length;
  const travelOut = new Uint8Array(n);
  const forceOut = new Uint8Array(n);
  const findings: Finding[] = [];
  const longest = Math.max(4, Math.round((stuckPart * period) / step));
  const say = (id: string, place: string, text: string, mend: string): void =>
    void findings.push({ id, place, text, mend });

  for (const [name, values, out] of [
    ['travel', travel, travelOut],
    ['force', force, forceOut],
  ] as const) {
    const [low, high] = extremes(values, 0, n);
    const near = atExtreme * (high - low);
    const stuck = runsWhere(n, longest, (i) => i > 0 && values[i] === values[i - 1]);
    const clipped = stuck.filter(([from]) => values[from]! >= high - near || values[from]! <= low + near);
    const still = stuck.filter((run) => !clipped.includes(run));
    for (const [from, to] of stuck) out.fill(1, Math.max(0, from - 1), to);
    if (still.length > 0)
      say('channel-stuck', name, `The ${name} stands still ${still.length === 1 ? 'once' : `${still.length} times`}, first from ${s(time[still[0]![0] - 1]!)} to ${s(time[still[0]![1] - 1]!)}, while the test goes on: ${count(still)} readings are kept out.`, 'Look at sensor and cable; repeat the run if much is missing.'); // prettier-ignore
    if (clipped.length > 0)
      say(name === 'travel' ? 'travel-at-its-end' : 'channel-clipped', name, `The ${name} stands at its extreme ${clipped.length === 1 ? 'once' : `${clipped.length} times`}, first at ${s(time[clipped[0]![0]]!)}: ${name === 'travel' ? 'an end stop, or a sensor at the end of its range' : 'a load cell at the end of its range'}. ${count(clipped)} readings are kept out.`, 'Use a smaller amplitude or a larger range.'); // prettier-ignore
  }
  const [lowest] = extremes(force, 0, n);
  if (atRest > 0 && lowest < -pushPart * atRest)
    say('force-pushes', 'force', `The force goes down to ${significant(lowest, 4)} N: it pushes, which a line cannot. It is taken for that of a rod, or of a load cell with another zero; slack is not looked for.`, 'Look at sign and zero of the load cell.'); // prettier-ignore
  else if (atRest > 0) {
    const slack = runsWhere(n, 2, (i) => force[i]! < slackPart * atRest);
    for (const [from, to] of slack) {
      // the line snaps tight after it was slack: half a step of the motion on either side tells of neither
      const beside = Math.round((0.05 * period) / step);
      forceOut.fill(1, Math.max(0, from - beside), Math.min(n, to + beside));
    }
    if (slack.length > 0)
      say('line-slack', 'force', `The line goes slack ${slack.length === 1 ? 'once' : `${slack.length} times`}, first at ${s(time[slack[0]![0]]!)}: ${count(slack)} readings and those beside them are kept out. While it is slack, the travel of the ram is not that of the plate.`, 'Use a smaller amplitude or a longer period, or hang more weight.'); // prettier-ignore
  }
  return { travelOut, forceOut, findings };
}

const s = (seconds: number): string => `${significant(seconds, 4)} s`;
const count = (runs: readonly (readonly [number, number])[]): number =>
  runs.reduce((sum, [from, to]) => sum + to - from, 0);

/** Runs of at least `fewest` readings for which something holds: from inclusive, to exclusive. */
function runsWhere(n: number, fewest: number, holds: (i: number) => boolean): (readonly [number, number])[] {
  const runs: (readonly [number, number])[] = [];
  let from = -1;
  for (let i = 0; i <= n; i++) {
    const inside = i < n && holds(i);
    if (inside && from < 0) from = i;
    if (!inside && from >= 0) {
      if (i - from >= fewest) runs.push([from, i]);
      from = -1;
    }
  }
  return runs;
}
