import { basename, resolve } from 'node:path';
import { recordedQuantities } from '../../core/motion/sea-quantities.ts';
import { seaChannels } from '../../core/motion/sea-channels.ts';
import type { Alignment } from '../../core/motion/align-records.ts';
import { clockFindings, clockWords } from '../../core/motion/clock-findings.ts';
import { seaMotion, type SeaResult } from '../../core/motion/sea-record.ts';
import type { PlateWay, SeaSetup } from '../../core/motion/sea-setup.ts';
import { compareDeployments } from '../../core/motion/compare-deployments.ts';
import { seaWindows } from '../../core/motion/sea-windows.ts';
import { seaCautions as cautions } from '../../core/note/sea-section.ts';
import { quantityText } from '../../core/quantity/format-quantity.ts';
import type { Kind } from '../../core/quantity/kinds.ts';
import { readTable } from '../../core/record/read-table.ts';
import type { BadRow, Recording } from '../../core/record/record.ts';
import { refusal } from '../../core/refusal.ts';
import { programVersion } from '../../core/result.ts';
import { openRecord } from '../host/open-record.ts';
import { optionsOf } from './options-of.ts';
import { positiveOption, quantityOption } from './quantity-option.ts';
import { exit, type Terminal } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = [
  'sea RECORD.csv --high-pass T [--acceleration-noise A] [--stroke-noise S] [--force-noise F] [--clock T]',
  '  [--scale-error P] [--stiffness K] [--arm X] [--limit D] [--body] [--line-length L] [--by WAY] [--second FILE] [--late T] [--late-at-end T]',
  '  [--plate-noise A] [--pressure-noise P] [--density D] [--plate-depth D] [--water-depth H] [--wave-error P]',
  '  [--against OTHER.csv] [--against-second FILE] [--json]',
].join('\n');
const options = {
  'high-pass': { type: 'string' },
  'acceleration-noise': { type: 'string' },
  'stroke-noise': { type: 'string' },
  'force-noise': { type: 'string' },
  clock: { type: 'string' },
  'scale-error': { type: 'string' },
  stiffness: { type: 'string' },
  arm: { type: 'string' },
  limit: { type: 'string' },
  body: { type: 'boolean' },
  'line-length': { type: 'string' },
  by: { type: 'string' },
  second: { type: 'string' },
  late: { type: 'string' },
  'late-at-end': { type: 'string' },
  'plate-noise': { type: 'string' },
  'pressure-noise': { type: 'string' },
  density: { type: 'string' },
  'plate-depth': { type: 'string' },
  'water-depth': { type: 'string' },
  'wave-error': { type: 'string' },
  against: { type: 'string' },
  'against-second': { type: 'string' },
  json: { type: 'boolean' },
} as const;
type Given = Partial<Record<Exclude<keyof typeof options, 'json' | 'body'>, string>> & { readonly body?: boolean };

/** How still the plate was in the sea: float's acceleration less stroke. */
export const seaVerb: Verb = {
  usage,
  purpose:
    'finds from a float’s acceleration and stroke how still the plate really was in the sea, with its error band',
  help: [
    '  RECORD.csv             time, acceleration (of the float, up), stroke (larger when the plate is further away), and if carried',
    '                         force, pitch, line angle, plate acceleration, pressure; a header such as time (s),acceleration (m/s^2),stroke (m)',
    '  --high-pass 25s        the slowest motion that is kept',
    '  --acceleration-noise 0.02m/s^2  --stroke-noise 5mm  --force-noise 50N   one standard deviation of a reading',
    '  --clock 20ms           the two clocks may be this far apart     --scale-error 0.01   and their scales, as a part of the stroke',
    '  --stiffness 200kN/m    of the line, whose stretch is taken off where force is recorded',
    '  --arm 1.2m             attachment ahead of the accelerometer, raised by pitch',
    '  --limit 0.5m           double amplitude within which the plate counts as still',
    '  --body                 the accelerometer turns with the float: pitch (and a column “acceleration ahead”) brings it to the vertical',
    '  --line-length 40m      float to plate: with a column “line angle”, a line askew reaches less far down',
    '  --second PLATE.csv     the file of another logger (stroke, plate acceleration or pressure); --late 12s is when it began on the',
    '                         clock of the first; left out, that is found from the dates or from the motion that both know;',
    '                         --late-at-end 12.4s at its last reading; left out, how fast the clocks run apart is found from that motion',
    '  --plate-noise 0.01m/s^2   --pressure-noise 100Pa   of sensors on the plate',
    '  --density 1025kg/m3  --plate-depth 30m  --water-depth 60m  --wave-error 0.05   what takes the waves off a pressure logger',
    '  --by difference        how the plate is found: difference, accelerometer or pressure; by default what leaves least open',
    '  --against OTHER.csv    (with --against-second) another deployment: the plate at like seas, side by side',
    '  --json                 one object with everything, SI (schema stillplate-result/1); low and high bound the band',
    '',
    'Example: stillplate sea samples/sea-record.csv --high-pass 25s --stroke-noise 5mm --clock 20ms --limit 0.5m',
  ].join('\n'),
  run: async (args, on) => {
    const { values, file } = optionsOf(args, options, usage, 1);
    const setup = setupOf(values);
    const own = await recorded(file, values.second, values, setup, on);
    const other =
      values.against === undefined ? null : await recorded(values.against, values['against-second'], values, setup, on);
    if (values.json)
      on.out(JSON.stringify({ schema: 'stillplate-result/1', programVersion, ...told(own), ...(other ? { against: told(other), likeSeas: likeSeas(own, other) } : {}), cautions }, null, 2)); // prettier-ignore
    else {
      for (const one of other ? [own, other] : [own]) printText(on, one);
      if (other) printLikeSeas(on, own, other);
      for (const caution of cautions) on.out(caution);
    }
    return exit.passes;
  },
};

interface Recorded {
  readonly name: string;
  readonly bad: readonly BadRow[];
  readonly used: string;
  readonly clock: Alignment | null;
  readonly result: SeaResult;
}

async function recorded(
  file: string,
  second: string | undefined,
  given: Given,
  setup: SeaSetup,
  on: Terminal,
): Promise<Recorded> {
  const read = async (name: string) => ({ table: readTable(await openRecord(resolve(on.folder, name))), reading: {} });
  const clock = { late: timeOf('late', given), lateAtEnd: timeOf('late-at-end', given) };
  if (clock.late === null && clock.lateAtEnd !== null)
    throw refusal({ what: '--late-at-end stands without --late', where: { option: '--late-at-end' }, mend: 'State both, from two sync events.' }); // prettier-ignore
  const recording = seaChannels(await read(file), second === undefined ? null : await read(second), clock, setup);
  const { recordings, channels, from, to, alignment } = recording;
  const [{ readAs, gaps }] = recordings as [Recording];
  const result = seaMotion(channels, setup);
  return {
    name: basename(file),
    clock: alignment,
    bad: recordings.flatMap(({ bad }) => bad),
    used: `${readAs.join('; ')}; ${alignment ? `${clockWords(alignment).join(' ')} ` : ''}${from.toFixed(1)} s to ${to.toFixed(1)} s used at ${(1 / channels.dt).toPrecision(4)} readings a second, ${gaps.length} gaps in all`,
    result: { ...result, findings: [...clockFindings(recording, setup), ...result.findings] },
  };
}

const timeOf = (name: 'late' | 'late-at-end', given: Given): number | null =>
  given[name] === undefined ? null : quantityOption(`--${name}`, given[name], 'time');

const likeSeas = (own: Recorded, other: Recorded) =>
  compareDeployments(seaWindows(own.result), seaWindows(other.result));

function printLikeSeas(on: Terminal, own: Recorded, other: Recorded): void {
  const like = likeSeas(own, other);
  if (like.length === 0) on.out('The two were never in like seas: nothing is compared.\n');
  for (const { float, period, a, b, larger } of like)
    on.out(
      `Float ${quantityText(float, 'm', 3)} at ${quantityText(period, 's', 3)}: plate over float ${(100 * a.ratio).toFixed(1)} % in ${own.name} (${a.windows} windows), ${(100 * b.ratio).toFixed(1)} % in ${other.name} (${b.windows}); probability that it moves more in ${own.name} ${larger.toFixed(3)}\n`,
    );
}

const told = ({ name, bad, used, clock, result }: Recorded) => ({ record: name, readAs: used, badRows: bad, ...(clock ? { clock } : {}), quantities: recordedQuantities(result), findings: result.findings }); // prettier-ignore

function printText(on: Terminal, { name, bad, used, result }: Recorded): void {
  on.out(`${name}: ${used}; ${bad.length} rows kept out`);
  for (const [id, { value, low, high, unit, title }] of Object.entries(recordedQuantities(result))) {
    const range = low === undefined || high === undefined ? '' : `  (${quantityText(low, unit, 3)} to ${quantityText(high, unit, 3)})`; // prettier-ignore
    on.out(`${id.padEnd(28)} ${quantityText(value, unit, 3).padStart(12)}${range}   ${title}`);
  }
  for (const { line, why } of bad.slice(0, 20)) on.out(`Row kept out: line ${line} ${why}`);
  for (const { text, mend } of result.findings) on.out(`${text} ${mend}`);
  on.out('');
}

function setupOf(given: Given): SeaSetup {
  const read = (name: Exclude<keyof Given, 'body'>, kind: Kind): number | null =>
    given[name] === undefined ? null : positiveOption(`--${name}`, given[name], kind);
  const highPass = read('high-pass', 'time');
  if (highPass === null)
    throw refusal({ what: '--high-pass is missing', where: { option: '--high-pass' }, mend: 'State the slowest motion that is kept, twice the longest wave period or so: --high-pass 25s.' }); // prettier-ignore
  return {
    highPass,
    accelerationNoise: read('acceleration-noise', 'acceleration'),
    strokeNoise: read('stroke-noise', 'length') ?? 0,
    forceNoise: read('force-noise', 'force') ?? 0,
    clock: read('clock', 'time') ?? 0,
    scaleError: partOf('--scale-error', given['scale-error']),
    axes: given.body ? 'body' : 'vertical',
    plateNoise: read('plate-noise', 'acceleration'),
    pressureNoise: read('pressure-noise', 'stress') ?? 0,
    lineLength: read('line-length', 'length'),
    density: read('density', 'density'),
    plateDepth: read('plate-depth', 'length'),
    waterDepth: read('water-depth', 'length'),
    waveError: partOf('--wave-error', given['wave-error'] ?? '0.1'),
    by: wayOf(given.by),
    stiffness: read('stiffness', 'stiffness'),
    arm: read('arm', 'length') ?? 0,
    limit: read('limit', 'length'),
  };
}

function wayOf(text: string | undefined): PlateWay | null {
  if (text === undefined) return null;
  const way = (['difference', 'accelerometer', 'pressure'] as const).find((one) => one === text);
  if (way) return way;
  throw refusal({
    what: `“${text}” is no way to find the plate’s motion`,
    where: { option: '--by' },
    mend: 'Write difference, accelerometer or pressure.',
  });
}

function partOf(option: string, text: string | undefined): number {
  if (text === undefined) return 0;
  const value = Number(text.replace(',', '.'));
  if (text.trim() !== '' && value >= 0 && value < 1) return value;
  throw refusal({ what: `“${text}” is no part between 0 and 1`, where: { option }, mend: 'Write a plain number such as 0.01.' }); // prettier-ignore
}
