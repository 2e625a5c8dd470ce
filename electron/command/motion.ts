import { resolve } from 'node:path';
import { appraise } from '../../core/appraise.ts';
import type { Finding } from '../../core/finding.ts';
import type { HeaveSystem } from '../../core/motion/heave-system.ts';
import { motionQuantitiesOf } from '../../core/hydrodynamics/motion-quantities-of.ts';
import { inRegularWave } from '../../core/motion/in-regular-wave.ts';
import { inSeaState } from '../../core/motion/in-sea-state.ts';
import type { MotionQuantity } from '../../core/motion/motion-quantities.ts';
import { naturalPeriods } from '../../core/motion/natural-periods.ts';
import type { WaveField } from '../../core/motion/wave-forcing.ts';
import type { Kind } from '../../core/quantity/kinds.ts';
import { quantityText } from '../../core/quantity/format-quantity.ts';
import { refusal } from '../../core/refusal.ts';
import { programVersion } from '../../core/result.ts';
import { g } from '../../core/water/sea-water.ts';
import { jonswap } from '../../core/water/waves/spectrum.ts';
import { openDocument } from '../host/open-document.ts';
import { chosenOption } from './chosen-option.ts';
import { optionsOf } from './options-of.ts';
import { plateBody, plateBodyOptions } from './plate-body.ts';
import { positiveOption } from './quantity-option.ts';
import { exit, type Terminal } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = [
  'motion [--added-mass A] [--drag-coefficient C] --depth Z --stiffness K',
  '  (--mass M --volume V --area S --density D | --document FILE [--option ID]) (--height H --period T | --hs HS --tp TP)',
  '  [--damping B] [--strut] [--float-mass M --float-damping B --waterline A --draught D] [--sea-depth Z] [--gamma G]',
  '  [--seed N] [--json]',
  'motion --document FILE [--option ID] [--json]',
].join('\n');
const options = {
  ...plateBodyOptions,
  'added-mass': { type: 'string' },
  'drag-coefficient': { type: 'string' },
  depth: { type: 'string' },
  'sea-depth': { type: 'string' },
  stiffness: { type: 'string' },
  damping: { type: 'string' },
  strut: { type: 'boolean' },
  'float-mass': { type: 'string' },
  'float-damping': { type: 'string' },
  waterline: { type: 'string' },
  draught: { type: 'string' },
  height: { type: 'string' },
  period: { type: 'string' },
  hs: { type: 'string' },
  tp: { type: 'string' },
  gamma: { type: 'string' },
  seed: { type: 'string' },
  json: { type: 'boolean' },
} as const;

type Given = Partial<Record<Exclude<keyof typeof options, 'json' | 'strut'>, string>> & { strut?: boolean };

/** Float, power take-off and plate in waves: the motion that is left over. */
export const motionVerb: Verb = {
  usage,
  purpose: 'predicts how far the plate still moves under its float in a wave or a sea state, and what the line pulls',
  help: [
    '  --added-mass 17500kg  --drag-coefficient 6.8   from a tank test (stillplate tank) or from theory; where the document uses an',
    '                         accepted test, its own where they are left out',
    '  --mass 1460kg  --volume 0.186m3  --area 8.4m2  --density 1025kg/m3, or --document FILE, which has them (--option ID)',
    '  --depth 30m            of the plate below the surface         --sea-depth 80m   deep water by default',
    '  --stiffness 20kN/m     --damping 40kN*s/m   of power take-off and line between float and plate',
    '  --strut                the link pushes too; by default a line, which hangs slack',
    '  --float-mass 90t (added mass included)  --float-damping 15kN*s/m  --waterline 18m2  --draught 2m',
    '                         without them the plate hangs from a point that does not move',
    '  --height 1.5m --period 7s     a regular wave',
    '  --hs 1.5m --tp 7s [--gamma 3.3] [--seed 1]     a sea state (JONSWAP), an hour of it by time steps of 0.02 s',
    '  --json                 one object with everything, SI (schema stillplate-result/1)',
    '  --document FILE by itself: float, power take-off, sea, wave and scatter table as the document states them, added mass and',
    '                         drag of its accepted test, else by theory at the motion that comes out',
    '',
    'Heave only. The float is moved by the pressure of the undisturbed wave (long waves; the waves that it makes are part of',
    'its damping, as you state it). By time steps and, beside it, with the drag linearised: where the two part, trust neither',
    'without a test.',
    '',
    'Example: stillplate motion --document samples/small.stillplate.json --added-mass 900kg --drag-coefficient 6 --stiffness 5kN/m --height 1m --period 6s',
  ].join('\n'),
  run: async (args, on) => {
    const { values } = optionsOf(args, options, usage, 0);
    const { quantities, missing, findings } = values.document !== undefined && values.stiffness === undefined ? await asStated(values, on) : await asAsked(values, on); // prettier-ignore
    if (values.json)
      on.out(
        JSON.stringify(
          { schema: 'stillplate-result/1', programVersion, quantities, unjudged: missing, findings, cautions },
          null,
          2,
        ),
      );
    else {
      for (const [id, { value, unit, title }] of Object.entries(quantities))
        on.out(`${id.padEnd(32)} ${quantityText(value, unit).padStart(14)}   ${title}`);
      for (const { id, reason } of missing) on.out(`${id.padEnd(32)} cannot be judged: ${reason}`);
      on.out('');
      for (const text of [...findings.map(({ text, mend }) => `${text} ${mend}`), ...cautions]) on.out(text);
    }
    return Object.keys(quantities).length > 0 ? exit.passes : exit.failsOrUnjudged;
  },
};

interface Answer {
  readonly quantities: Readonly<Record<string, MotionQuantity>>;
  readonly missing: readonly { readonly id: string; readonly reason: string }[];
  readonly findings: readonly Finding[];
}

/** Float, power take-off, sea, wave and scatter table as the document states them, added mass and drag of its test or by theory. */
async function asStated(given: Given, on: Terminal): Promise<Answer> {
  const beside = Object.keys(given).find((name) => !['document', 'option', 'json'].includes(name));
  if (beside !== undefined)
    throw refusal({ what: `--${beside} stands on the line, --stiffness does not`, where: { option: `--${beside}` }, mend: 'Give float and power take-off on the line too, or leave all but --document, --option and --json out: then they are as the document states them.' }); // prettier-ignore
  const { raw, document } = await openDocument(resolve(on.folder, given.document!));
  const { model } = appraise(raw, document, chosenOption(document, given.option));
  const { system, sea, wave } = model.document.hydrodynamics ?? {};
  if (!system) refuseMissing('stiffness');
  const { quantities, missing } = motionQuantitiesOf(model);
  const waves = sea?.peakPeriod.si ?? wave?.period.si;
  const periods = Object.entries(quantities).flatMap(([id, { value }]) => (/^motion\.naturalPeriod\.\d+$/.test(id) ? [value] : [])); // prettier-ignore
  return { quantities, missing, findings: [...(waves === undefined ? [] : resonance(periods, waves)), ...(quantities['motion.significant'] ? findingsOf(quantities, true) : [])] }; // prettier-ignore
}

async function asAsked(values: Given, on: Terminal): Promise<Answer> {
  const { system, field } = await read(values, on);
  const periods = naturalPeriods(system);
  const quantities: Record<string, MotionQuantity> = Object.fromEntries(
    periods.map((value, i) => [
      `motion.naturalPeriod.${i + 1}`,
      { value, unit: 's', title: `Natural period ${i + 1} in heave, undamped`, source: 'two bodies in heave' },
    ]),
  );
  const sea = values.hs !== undefined || values.tp !== undefined;
  Object.assign(
    quantities,
    sea
      ? seaState(values, system, field)
      : inRegularWave(system, field, needed(values, 'height', 'length'), needed(values, 'period', 'time')),
  );
  const waves = sea ? needed(values, 'tp', 'time') : needed(values, 'period', 'time');
  return { quantities, missing: [], findings: [...resonance(periods, waves), ...findingsOf(quantities, sea)] };
}

const cautions = [
  'Heave of two bodies only: drift, pitch, the line’s angle and its own mass are left out.',
  'Drag and added mass of a plate change with its amplitude: use those of a test at like motion.',
];

/** An hour, s, after what the start stirs up has died away. */
const history = { dyingAway: 300, duration: 3600, components: 300 };

function seaState(given: Given, system: HeaveSystem, field: WaveField): Readonly<Record<string, MotionQuantity>> {
  const [Hs, peakPeriod] = [needed(given, 'hs', 'length'), needed(given, 'tp', 'time')];
  const S = jonswap(Hs, peakPeriod, given.gamma === undefined ? undefined : plain('--gamma', given.gamma));
  const seed = given.seed === undefined ? 1 : plain('--seed', given.seed);
  return inSeaState(system, field, { S, peakPeriod }, { ...history, seed }).quantities;
}

async function read(given: Given, on: Terminal): Promise<{ system: HeaveSystem; field: WaveField }> {
  const body = await plateBody(given, usage, on);
  const { mass, volume, density, waterInside, tested } = body;
  // what is stated on the line goes before the test that the document uses; a coefficient stays with its own area
  const addedMass =
    given['added-mass'] === undefined && tested ? tested.addedMass.value : needed(given, 'added-mass', 'mass');
  const isTested = given['drag-coefficient'] === undefined && tested !== null;
  const area = isTested ? tested.area : body.area;
  const C_d = isTested
    ? tested.dragCoefficient.value
    : plain('--drag-coefficient', given['drag-coefficient'] ?? refuseMissing('drag-coefficient'));
  const named = ['float-mass', 'waterline', 'draught'] as const;
  const hasFloat = named.some((name) => given[name] !== undefined);
  const waterline = hasFloat ? needed(given, 'waterline', 'area') : 0;
  const weight = (mass - density * volume) * g;
  const hangs = given.strut === true || weight > 0;
  if (!hangs)
    throw refusal({
      what: `The plate floats: its weight in water is ${quantityText(weight, 'N')}`,
      where: { option: '--mass' },
      mend: 'Look at mass and volume; a line cannot hold a plate down.',
    });
  return {
    system: {
      float: hasFloat
        ? {
            mass: needed(given, 'float-mass', 'mass'),
            damping:
              given['float-damping'] === undefined
                ? 0
                : positiveOption('--float-damping', given['float-damping'], 'damping'),
            stiffness: density * g * waterline,
          }
        : null,
      plate: {
        mass: mass + density * waterInside + addedMass,
        damping: 0,
        drag: 0.5 * density * C_d * area,
        carried: addedMass + density * (volume + waterInside),
        weight,
      },
      link: {
        stiffness: needed(given, 'stiffness', 'stiffness'),
        damping: given.damping === undefined ? 0 : positiveOption('--damping', given.damping, 'damping'),
        pushes: given.strut === true,
      },
    },
    field: {
      density,
      gravity: g,
      seaDepth:
        given['sea-depth'] === undefined ? Infinity : positiveOption('--sea-depth', given['sea-depth'], 'length'),
      plateDepth: given.depth === undefined && body.depth !== null ? body.depth : needed(given, 'depth', 'length'),
      float: hasFloat ? { waterline, draught: needed(given, 'draught', 'length') } : null,
    },
  };
}

function needed(given: Given, name: Exclude<keyof Given, 'strut'>, kind: Kind): number {
  return positiveOption(`--${name}`, given[name] ?? refuseMissing(name), kind);
}

function refuseMissing(name: string): never {
  throw refusal({ what: `--${name} is missing`, where: { option: `--${name}` }, mend: `Usage: stillplate ${usage}` });
}

function plain(option: string, text: string): number {
  const value = Number(text.replace(',', '.'));
  if (text.trim() !== '' && value > 0 && Number.isFinite(value)) return value;
  throw refusal({
    what: `“${text}” is no number above zero`,
    where: { option },
    mend: 'Write a plain number such as 6.8.',
  });
}

/** A natural period this near the waves' is told. */
const nearPeriod = 0.2;

function resonance(periods: readonly number[], waves: number): Finding[] {
  return periods
    .filter((period) => Math.abs(period / waves - 1) < nearPeriod)
    .map((period) => ({
      id: 'resonance',
      place: 'motion',
      text: `A natural period of ${quantityText(period, 's', 3)} lies near the waves’ ${quantityText(waves, 's', 3)}: damping alone holds the motion, and an error in it counts in full.`,
      mend: 'Another stiffness, more added mass, or less float.',
    }));
}

function findingsOf(quantities: Readonly<Record<string, MotionQuantity>>, sea: boolean): Finding[] {
  const value = (id: string): number | undefined => quantities[id]?.value;
  const [stepped, linear] = sea
    ? [value('motion.significant')!, value('motion.linearised.significant')!]
    : [value('motion.peakToPeak')!, value('motion.linearised.peakToPeak')!];
  const slack = value('line.slackTimes')!;
  const lost = value('energy.unaccounted')!;
  return [
    ...(slack > 0 ? [{ id: 'line-slack', place: 'line', text: `The line goes slack ${slack === 1 ? 'once' : `${slack} times`} and draws tight again at up to ${quantityText(value('line.snapSpeed')!, 'm/s', 3)}: the snap loads line, attachments and plate beyond these figures.`, mend: 'More weight in water, a softer link, or a strut.' }] : []), // prettier-ignore
    ...(Math.abs(stepped - linear) > 0.1 * Math.max(stepped, linear) ? [{ id: 'linearised-differs', place: 'motion', text: `With the drag linearised the plate moves ${quantityText(linear, 'm', 3)}, by time steps ${quantityText(stepped, 'm', 3)}.`, mend: 'Rely on the larger, and on a test.' }] : []), // prettier-ignore
    ...(lost > 1e-3 ? [{ id: 'energy-lost', place: 'motion', text: `The time steps lose ${(100 * lost).toFixed(2)} % of the energy: the link is too stiff for them.`, mend: 'Take a softer line, or look at its damping.' }] : []), // prettier-ignore
  ];
}
