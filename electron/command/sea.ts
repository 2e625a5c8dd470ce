import { basename, resolve } from 'node:path';
import { recordedQuantities } from '../../core/motion/sea-quantities.ts';
import { seaChannels } from '../../core/motion/sea-channels.ts';
import { seaMotion, type SeaResult, type SeaSetup } from '../../core/motion/sea-record.ts';
import { quantityText } from '../../core/quantity/format-quantity.ts';
import type { Kind } from '../../core/quantity/kinds.ts';
import { readTable } from '../../core/record/read-table.ts';
import type { BadRow } from '../../core/record/record.ts';
import { refusal } from '../../core/refusal.ts';
import { programVersion } from '../../core/result.ts';
import { openRecord } from '../host/open-record.ts';
import { optionsOf } from './options-of.ts';
import { positiveOption } from './quantity-option.ts';
import { exit, type Terminal } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = [
  'sea RECORD.csv --high-pass T [--acceleration-noise A] [--stroke-noise S] [--force-noise F] [--clock T]',
  '  [--scale-error P] [--stiffness K] [--arm X] [--limit D] [--against OTHER.csv] [--json]',
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
  against: { type: 'string' },
  json: { type: 'boolean' },
} as const;
type Given = Partial<Record<Exclude<keyof typeof options, 'json'>, string>>;

const cautions = [
  'A small difference of large numbers: read the band, not the value alone.',
  'What is slower than the high pass is in no number; drift of the accelerometer cannot be told from it.',
  'The line is taken as hanging straight down; its angle and the float’s roll are left out.',
];

/** How still the plate was in the sea: float's acceleration less stroke. */
export const seaVerb: Verb = {
  usage,
  purpose:
    'finds from a float’s acceleration and stroke how still the plate really was in the sea, with its error band',
  help: [
    '  RECORD.csv             time, acceleration (of the float, up), stroke (larger when the plate is further away), and if carried',
    '                         force (pull of the line) and pitch; the header names columns and units: time (s),acceleration (m/s^2),stroke (m)',
    '  --high-pass 25s        the slowest motion that is kept',
    '  --acceleration-noise 0.02m/s^2  --stroke-noise 5mm  --force-noise 50N   one standard deviation of a reading',
    '  --clock 20ms           the two clocks may be this far apart     --scale-error 0.01   and their scales, as a part of the stroke',
    '  --stiffness 200kN/m    of the line, whose stretch is taken off where force is recorded',
    '  --arm 1.2m             attachment ahead of the accelerometer, raised by pitch',
    '  --limit 0.5m           double amplitude within which the plate counts as still',
    '  --against OTHER.csv    another deployment: motion over that of the float side by side',
    '  --json                 one object with everything, SI (schema stillplate-result/1); low and high bound the band',
    '',
    'Example: stillplate sea samples/sea-record.csv --high-pass 25s --stroke-noise 5mm --clock 20ms --limit 0.5m',
  ].join('\n'),
  run: async (args, on) => {
    const { values, file } = optionsOf(args, options, usage, 1);
    const setup = setupOf(values);
    const own = await recorded(file, setup, on);
    const other = values.against === undefined ? null : await recorded(values.against, setup, on);
    if (values.json)
      on.out(JSON.stringify({ schema: 'stillplate-result/1', programVersion, ...told(own), ...(other ? { against: told(other) } : {}), cautions }, null, 2)); // prettier-ignore
    else {
      for (const one of other ? [own, other] : [own]) printText(on, one);
      if (other)
        on.out(`The plate moves ${(100 * ratio(own)).toFixed(1)} % of the float in ${own.name}, ${(100 * ratio(other)).toFixed(1)} % in ${other.name}: compare at like sea states (float ${quantityText(own.result.floatSignificant, 'm', 3)} and ${quantityText(other.result.floatSignificant, 'm', 3)}).\n`); // prettier-ignore
      for (const caution of cautions) on.out(caution);
    }
    return exit.passes;
  },
};

interface Recorded {
  readonly name: string;
  readonly bad: readonly BadRow[];
  readonly used: string;
  readonly result: SeaResult;
}

async function recorded(file: string, setup: SeaSetup, on: Terminal): Promise<Recorded> {
  const { recording, channels, from, to } = seaChannels(readTable(await openRecord(resolve(on.folder, file))));
  const { readAs, gaps, bad } = recording;
  return {
    name: basename(file),
    bad,
    used: `${readAs.join('; ')}; ${from.toFixed(1)} s to ${to.toFixed(1)} s used at ${(1 / channels.dt).toPrecision(4)} readings a second, ${gaps.length} gaps in all`,
    result: seaMotion(channels, setup),
  };
}

const ratio = ({ result }: Recorded): number => result.significant.value / result.floatSignificant;
const told = ({ name, bad, used, result }: Recorded) => ({ record: name, readAs: used, badRows: bad, quantities: recordedQuantities(result), findings: result.findings }); // prettier-ignore

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
  const read = (name: keyof Given, kind: Kind): number | null =>
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
    scaleError: partOf(given['scale-error']),
    stiffness: read('stiffness', 'stiffness'),
    arm: read('arm', 'length') ?? 0,
    limit: read('limit', 'length'),
  };
}

function partOf(text: string | undefined): number {
  if (text === undefined) return 0;
  const value = Number(text.replace(',', '.'));
  if (text.trim() !== '' && value >= 0 && value < 1) return value;
  throw refusal({ what: `“${text}” is no part between 0 and 1`, where: { option: '--scale-error' }, mend: 'Write a plain number such as 0.01.' }); // prettier-ignore
}
