import { basename, resolve } from 'node:path';
import type { Finding } from '../../core/finding.ts';
import type { PlateBody } from '../../core/hydrodynamics/plate-body.ts';
import { quantityText } from '../../core/quantity/format-quantity.ts';
import { refusal } from '../../core/refusal.ts';
import { programVersion } from '../../core/result.ts';
import { delayWayWords } from '../../core/note/delay-section.ts';
import { conditioned } from '../../core/tank/conditioned.ts';
import { delayInAir } from '../../core/tank/delay-in-air.ts';
import { delayOfEvent } from '../../core/tank/delay-of-event.ts';
import type { DelayWay } from '../../core/tank/delay-ways.ts';
import { tankEffects, tankEffectWords } from '../../core/tank/tank-effects.ts';
import { probabilityLarger } from '../../core/tank/compare-tests.ts';
import { identify, type TankResult } from '../../core/tank/identify.ts';
import { recordFindings } from '../../core/tank/tank-findings.ts';
import { tankQuantities } from '../../core/tank/tank-quantities.ts';
import { tankRecord } from '../../core/tank/tank-record.ts';
import type { Also, TankSetup } from '../../core/tank/tank-setup.ts';
import { openRecord } from '../host/open-record.ts';
import { optionsOf } from './options-of.ts';
import { plateBody, plateBodyOptions } from './plate-body.ts';
import { positiveOption, quantityOption } from './quantity-option.ts';
import { exit, type Terminal } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = [
  'tank RECORD.csv --mass M --volume V --area S --density D (or --document FILE [--option ID])',
  '  [--width W] [--rig-mass M] [--water-inside V] [--stiffness K] [--delay-bound T] [--harmonics N]',
  '  [--force-late T] [--event FROM,TO] [--air AIR.csv --air-mass M]',
  '  [--tank-width W] [--tank-length L] [--plate-depth D] [--above-floor H]',
  '  [--with linear,friction,drift,delay] [--columns A,B,C] [--against OTHER.csv] [--json]',
].join('\n');
const options = {
  ...plateBodyOptions,
  width: { type: 'string' },
  'rig-mass': { type: 'string' },
  'water-inside': { type: 'string' },
  stiffness: { type: 'string' },
  'delay-bound': { type: 'string' },
  'force-late': { type: 'string' },
  event: { type: 'string' },
  air: { type: 'string' },
  'air-mass': { type: 'string' },
  'tank-width': { type: 'string' },
  'tank-length': { type: 'string' },
  'plate-depth': { type: 'string' },
  'above-floor': { type: 'string' },
  harmonics: { type: 'string' },
  with: { type: 'string' },
  columns: { type: 'string' },
  against: { type: 'string' },
  json: { type: 'boolean' },
} as const;

type Given = Partial<Record<Exclude<keyof typeof options, 'json'>, string>>;

/** A forced-oscillation test reduced to added mass and drag coefficient. */
export const tankVerb: Verb = {
  usage,
  purpose: 'reduces a test in which the plate is driven up and down to added mass and drag coefficient',
  help: [
    '  RECORD.csv             time, travel (up is positive), force (pull of the line, weight in water included); the header',
    '                         names the columns and their units: time (s),travel (m),force (N). Comma, semicolon, tab or',
    '                         bar; decimal point or comma; time in seconds, as a clock or ISO date. Without header: in',
    '                         this order, in s, m and N',
    '  --columns 1,4,2        columns of time, travel and force, from 1, where their names are others',
    '  --mass 1300kg          of the body in air      --volume 0.165m3   of its material',
    '  --area 7m2             that the drag coefficient refers to        --density 1025kg/m3',
    '  --document FILE        takes mass, volume, area, density and water inside from a plate instead, of --option ID',
    '  --width 2.6m           that the Keulegan-Carpenter number refers to; by default the root of the area',
    '  --rig-mass 40kg        moves below the load cell and is no part of the plate',
    '  --water-inside 0.1m3   carried in the tubes: taken off, it is no added mass',
    '  --stiffness 2kN/mm     of line and crane between where travel is measured and the plate',
    '  --delay-bound 5ms      the force may be read this long before or after the travel: widens the intervals',
    '  --force-late 40ms      takes the force back by what it is read late',
    '  --event 12s,15s        tells how late it is read from a knock or sudden stop between the two times',
    '  --air AIR.csv --air-mass 1500kg   tells it from a run of a known mass in air',
    '  --tank-width 4m  --tank-length 30m  --plate-depth 2m  --above-floor 2m   estimate what walls, floor and surface do',
    '  --with linear,friction,drift,delay   unknowns beside added mass, drag and zero (drift: of the load cell’s zero);',
    '                         refused where the record cannot tell them apart',
    '  --harmonics 3          of the fitted motion',
    '  --against OTHER.csv    a second test (of the open grid, say): with what probability its numbers differ',
    '  --json                 one object with everything, SI (schema stillplate-result/1); low and high bound at 95 %',
    '',
    'Coefficients hold for the amplitudes and periods tested, and for this plate. From model to full scale drag may differ.',
    '',
    'Example: stillplate tank samples/tank-closed.csv --mass 1300kg --volume 0.165m3 --area 7m2 --density 1025kg/m3',
  ].join('\n'),
  run: async (args, on) => {
    const { values, file } = optionsOf(args, options, usage, 1);
    const setup = completed(values, await plateBody(values, usage, on));
    const test = await tested(file, values, setup, on);
    const other = values.against === undefined ? null : await tested(values.against, values, setup, on);
    const differs = other && {
      addedMassLarger: probabilityLarger(test.result.addedMass, other.result.addedMass),
      dragLarger: probabilityLarger(test.result.dragCoefficient, other.result.dragCoefficient),
    };
    if (values.json) on.out(JSON.stringify(printed(test, other, differs), null, 2));
    else printText(on, test, other, differs);
    return exit.passes;
  },
};

/** How late the force is read, and within what, s. */
interface Delay {
  readonly way: DelayWay;
  readonly late: number;
  readonly bound: number;
}

interface Test {
  readonly delays: readonly Delay[];
  readonly tank: readonly string[];
  readonly name: string;
  readonly readAs: readonly string[];
  readonly bad: readonly { readonly line: number; readonly why: string }[];
  readonly result: TankResult;
  readonly findings: readonly Finding[];
}

async function tested(file: string, given: Given, setup: TankSetup, on: Terminal): Promise<Test> {
  const text = await openRecord(resolve(on.folder, file));
  const recording = tankRecord(text, columnsOf(given.columns));
  const { channels, bad, readAs } = recording;
  const [rawTravel, rawForce] = channels.map(({ values }) => values) as [Float64Array, Float64Array];
  const late = given['force-late'];
  const { time, travel, force } =
    late === undefined
      ? { time: recording.time, travel: rawTravel, force: rawForce }
      : conditioned(recording, { reading: { travelUp: 'up', forcePositive: 'pulls' }, conditioning: { forceLate: { si: quantityOption('--force-late', late, 'time'), typed: late } } }); // prettier-ignore
  const result = identify(time, travel, force, setup);
  const around = (name: 'tank-width' | 'tank-length' | 'plate-depth' | 'above-floor'): number | null =>
    given[name] === undefined ? null : positiveOption(`--${name}`, given[name], 'length');
  const tank = tankEffectWords(
    tankEffects(
      {
        plateWidth: setup.width,
        tankWidth: around('tank-width'),
        tankLength: around('tank-length'),
        plateDepth: around('plate-depth'),
        aboveFloor: around('above-floor'),
      },
      setup,
      result.addedMass.value,
    ),
  );
  const delays: Delay[] = [];
  if (given.event !== undefined) {
    const [from, to] = given.event.split(',').map((one) => quantityOption('--event', one, 'time'));
    const { late: own, bound } = delayOfEvent(recording.time, rawTravel, rawForce, from!, to ?? Infinity);
    delays.push({ way: 'event', late: own, bound });
  }
  if (given.air !== undefined) {
    const air = tankRecord(await openRecord(resolve(on.folder, given.air)), columnsOf(given.columns));
    const [z, F] = air.channels.map(({ values }) => values) as [Float64Array, Float64Array];
    const { late: own } = delayInAir(air.time, z, F, positiveOption('--air-mass', given['air-mass'] ?? '', 'mass'));
    delays.push({ way: 'air', late: own.value, bound: own.high - own.value });
  }
  return {
    name: basename(file),
    readAs,
    bad,
    result,
    delays,
    tank: tank.steps,
    findings: [...recordFindings(recording), ...result.findings, ...tank.findings],
  };
}

function columnsOf(text: string | undefined): { time?: number; travel?: number; force?: number } {
  if (text === undefined) return {};
  const [time, travel, force, more] = text.split(',').map(Number);
  if (more !== undefined || ![time, travel, force].every((column) => Number.isInteger(column)))
    throw refusal({
      what: `“${text}” names no three columns`,
      where: { option: '--columns' },
      mend: 'Write three whole numbers: --columns 1,4,2.',
    });
  return { time: time!, travel: travel!, force: force! };
}

/** What is stated on the line goes before what a document says. */
function completed(given: Given, base: PlateBody): TankSetup {
  const stated = <K extends keyof Given>(
    name: K,
    kind: Parameters<typeof positiveOption>[2],
    otherwise: number,
  ): number => (given[name] === undefined ? otherwise : positiveOption(`--${name}`, given[name] as string, kind));
  const area = stated('area', 'area', base.area);
  const optional = (name: 'stiffness' | 'delay-bound', kind: 'stiffness' | 'time'): number | null =>
    given[name] === undefined ? null : positiveOption(`--${name}`, given[name] as string, kind);
  return {
    mass: stated('mass', 'mass', base.mass),
    volume: stated('volume', 'volume', base.volume),
    area,
    density: stated('density', 'density', base.density),
    waterInside: stated('water-inside', 'volume', base.waterInside),
    width: stated('width', 'length', Math.sqrt(area)),
    rigMass: stated('rig-mass', 'mass', 0),
    stiffness: optional('stiffness', 'stiffness'),
    delayBound: optional('delay-bound', 'time'),
    also: alsoOf(given.with),
    harmonics: harmonicsOf(given.harmonics),
  };
}

const alsoNames: Readonly<Record<string, Also>> = {
  linear: 'linear damping',
  friction: 'dry friction',
  drift: 'force drift',
  delay: 'delay',
};

function alsoOf(text: string | undefined): ReadonlySet<Also> {
  return new Set(
    (text ?? '')
      .split(',')
      .map((word) => word.trim())
      .filter(Boolean)
      .map((word) => {
        const known = Object.hasOwn(alsoNames, word) ? alsoNames[word] : undefined;
        if (!known)
          throw refusal({
            what: `“${word}” is no unknown that can be asked for`,
            where: { option: '--with' },
            mend: 'Write linear, friction, drift or delay, parted by commas.',
          });
        return known;
      }),
  );
}

function harmonicsOf(text: string | undefined): number {
  if (text === undefined) return 3;
  const count = Number(text);
  if (Number.isInteger(count) && count >= 1 && count <= 10) return count;
  throw refusal({
    what: `“${text}” is no number of harmonics`,
    where: { option: '--harmonics' },
    mend: 'Write a whole number from 1 to 10.',
  });
}

const cautions = [
  'Added mass and drag hold for the amplitudes and periods of this test and for the plate as it was tested.',
  'From a model to full scale by Froude’s law inertia scales; drag may not, since the water’s viscosity does not scale.',
  'In a test at one frequency a delay between force and travel and a change of drag are the same: state a bound on it.',
];

type Differs = { readonly addedMassLarger: number; readonly dragLarger: number } | null;

function printed({ name, readAs, bad, result, findings, delays, tank }: Test, other: Test | null, differs: Differs) {
  return {
    schema: 'stillplate-result/1',
    programVersion,
    record: name,
    readAs,
    quantities: tankQuantities(result),
    runs: result.runs,
    cycles: result.cycles,
    badRows: bad,
    delays,
    tank,
    ...(other ? { against: { record: other.name, quantities: tankQuantities(other.result), findings: other.findings, probability: differs } } : {}), // prettier-ignore
    findings,
    cautions,
  };
}

function printText(
  on: Terminal,
  { name, readAs, bad, result, findings, delays, tank }: Test,
  other: Test | null,
  differs: Differs,
): void {
  on.out(`${name}: ${readAs.join('; ')}`);
  on.out('');
  for (const [id, { value, low, high, unit, title }] of Object.entries(tankQuantities(result))) {
    const range =
      low === undefined || high === undefined ? '' : `  (${quantityText(low, unit)} to ${quantityText(high, unit)})`;
    on.out(`${id.padEnd(32)} ${quantityText(value, unit).padStart(14)}${range}   ${title}`);
  }
  if (other && differs) {
    on.out('');
    on.out(`Against ${other.name}: added mass ${quantityText(other.result.addedMass.value, 'kg')}, drag coefficient ${quantityText(other.result.dragCoefficient.value, '1')}`); // prettier-ignore
    on.out(
      `  added mass is larger here with a probability of ${differs.addedMassLarger.toFixed(3)}, the drag coefficient with ${differs.dragLarger.toFixed(3)}`,
    );
  }
  if (bad.length > 0) on.out(`\nRows kept out: ${bad.slice(0, 20).map(({ line, why }) => `line ${line} ${why}`).join('; ')}${bad.length > 20 ? `; and ${bad.length - 20} more` : ''}`); // prettier-ignore
  for (const { way, late, bound } of delays)
    on.out(
      `\nThe force is read ${quantityText(late, 's', 3)} late, within ${quantityText(bound, 's', 2)}, by ${delayWayWords[way]}.`,
    );
  for (const step of tank) on.out(`\n${step}`);
  if (findings.length > 0) on.out('');
  for (const { text, mend } of findings) on.out(`${text} ${mend}`);
  on.out('');
  for (const caution of cautions) on.out(caution);
}
