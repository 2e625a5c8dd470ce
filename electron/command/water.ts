import { readFile } from 'node:fs/promises';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { basename, resolve } from 'node:path';
import { appraise } from '../../core/appraise.ts';
import { bayOpenings, isClosed } from '../../core/geometry/bay-openings.ts';
import { planInWater } from '../../core/geometry/plan-in-water.ts';
import { recordedMotionField, type Hydrodynamics } from '../../core/document/hydrodynamics-field.ts';
import { grownPlan } from '../../core/water/grown-plan.ts';
import { recordedField, recordedMotion } from '../../core/hydrodynamics/recorded-motion.ts';
import { seaWater } from '../../core/hydrodynamics/sea-quantities.ts';
import { waterHere } from '../../core/hydrodynamics/water-here.ts';
import { printedUnit, quantityText } from '../../core/quantity/format-quantity.ts';
import { readTable } from '../../core/record/read-table.ts';
import { textOfRecord } from '../../core/record/text-of-record.ts';
import { refusal } from '../../core/refusal.ts';
import { programVersion } from '../../core/result.ts';
import { closingOrder } from '../../core/water/closing-order.ts';
import type { Plan, Rectangle } from '../../core/water/lattice/plan.ts';
import { readPlan } from '../../core/water/read-plan.ts';
import { growthOf } from '../../core/water/marine-growth.ts';
import { waterDensityOf } from '../../core/water/sea-water.ts';
import {
  waterReport,
  type WaterConditions,
  type WaterQuantity,
  type WaterReport,
} from '../../core/water/water-report.ts';
import { openDocument } from '../host/open-document.ts';
import { reading, reasonOf } from '../host/write-file.ts';
import { chosenOption } from './chosen-option.ts';
import { openBytes } from './open-bytes.ts';
import { optionsOf } from './options-of.ts';
import { positiveOption, quantityOption } from './quantity-option.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = [
  'water FILE [--option ID] | --plan PLAN.json',
  '  [--amplitude A] [--period T] [--wave-height H] [--bed DEPTH] [--growth YEARS] [--cells N] [--record CSV]\n  [--order] [--json]',
].join('\n');
const options = {
  plan: { type: 'string' },
  option: { type: 'string' },
  amplitude: { type: 'string' },
  period: { type: 'string' },
  'wave-height': { type: 'string' },
  bed: { type: 'string' },
  growth: { type: 'string' },
  cells: { type: 'string' },
  record: { type: 'string' },
  order: { type: 'boolean' },
  json: { type: 'boolean' },
} as const;

interface Asked {
  readonly title: string;
  readonly plan: Plan;
  readonly conditions: WaterConditions;
  readonly more: Record<string, WaterQuantity>;
  readonly missing: WaterReport['unjudged'];
  readonly units: 'metric' | 'inch';
  readonly bays: Readonly<Record<string, Rectangle>>;
  readonly open: Plan;
}

/** Added mass and drag of the actual plate, of a document or of a plan by itself. */
export const waterVerb: Verb = {
  usage,
  purpose: 'added mass, drag and force of the water, by the plate’s own gaps; also of a plan by itself',
  help: [
    '  FILE              a document; --option ID as in check',
    '  --plan PLAN.json  a plan without a document: { "rectangles": [[x0, y0, x1, y1], …], "density": 1025 } in metres and kg/m^3,',
    '                    thin; "holes": [[x, y, diameter]] and "thickness" (height of the edges) may be added',
    '  --amplitude 0.4m  of the heave; zero, where neither this nor the document says one: potential flow, no drag of a motion',
    '  --period 8s       of the motion and of the wave; gives the force',
    '  --wave-height 2m  the water’s motion at the plate (document)     --bed 62m  depth of the sea bed',
    '  --growth 5        years of marine growth (document)              --cells 120  along the longer side of the finest lattice',
    '  --record CSV      the plate’s motion through the water as recorded: time and heave (document); gives the largest force in it',
    '  --order           in which order closing bays gains most added mass (document)',
    '  --json            one object, SI (schema stillplate-water/1)',
    '',
    'Motion, bed and years of growth are those of the document (“hydrodynamics”) where the option is left out.',
    'Ends with 1 where the added mass cannot be judged.',
    '',
    'Example: stillplate water samples/small.stillplate.json --amplitude 0.3m --period 7s',
  ].join('\n'),
  run: async (args, on) => {
    const alone = args.some((word) => word === '--plan' || word.startsWith('--plan='));
    const { values, file } = optionsOf(args, options, usage, alone ? 0 : 1);
    const idle = alone ? ofDocuments.filter((name) => values[name] !== undefined) : [];
    if (idle.length > 0)
      throw refusal({ what: `A plan by itself has no use for ${idle.map((name) => `--${name}`).join(', ')}`, where: { option: `--${idle[0]}` }, mend: 'Leave it out, or name a document in place of the plan.' }); // prettier-ignore
    const typed: Typed = {
      amplitude: values.amplitude === undefined ? undefined : quantityOption('--amplitude', values.amplitude, 'length'),
      period: values.period === undefined ? undefined : positiveOption('--period', values.period, 'time'),
      bed: values.bed === undefined ? undefined : positiveOption('--bed', values.bed, 'length'),
      years: values.growth === undefined ? undefined : wholeNumber('--growth', values.growth, 0, 100),
      height:
        values['wave-height'] === undefined
          ? undefined
          : positiveOption('--wave-height', values['wave-height'], 'length'),
      finest: values.cells === undefined ? {} : { cells: wholeNumber('--cells', values.cells, 16, 400) },
    };
    const asked = alone
      ? await planAlone(resolve(on.folder, values.plan!), typed)
      : await ofDocument(on.folder, resolve(on.folder, file), values, typed);
    const report = waterReport(asked.plan, asked.conditions);
    const quantities = { ...asked.more, ...report.quantities };
    const unjudged = [
      ...report.unjudged.filter(({ id }) => !quantities[id] || id.startsWith('addedMass')),
      ...asked.missing,
      ...(values.order && Object.keys(asked.bays).length === 0 ? [{ id: 'order', reason: 'no bay of this option is left open to be closed' }] : []), // prettier-ignore
    ];
    const order =
      values.order && Object.keys(asked.bays).length > 0
        ? closingOrder(asked.open, asked.bays, asked.conditions.density, { exact: Object.keys(asked.bays).length <= 6 }) // prettier-ignore
        : null;
    const { cells: lattices, residual } = report.potential;
    if (values.json)
      on.out(JSON.stringify({ schema: 'stillplate-water/1', programVersion, option: asked.title, lattices, residual, quantities, unjudged, order, cautions: report.cautions }, null, 2)); // prettier-ignore
    else {
      on.out(asked.title);
      const text = (value: number, unit: string): string => quantityText(value, printedUnit(unit, asked.units), 4);
      for (const [id, { value, unit, title, low, high, error }] of Object.entries(quantities)) {
        const range = low === undefined || high === undefined ? '' : ` (${text(low, unit)} to ${text(high, unit)})`;
        const off = error === undefined ? '' : `, lattice within ${(100 * error).toFixed(1)} %`;
        on.out(`${id.padEnd(26)} ${text(value, unit).padStart(16)}   ${title}${range}${off}`);
      }
      for (const { id, reason } of unjudged) on.out(`${id.padEnd(26)} cannot be judged: ${reason}`);
      for (const { closed, addedMass } of order ?? [])
        on.out(`closed ${String(closed.length).padStart(2)}: ${text(addedMass, 'kg').padStart(12)}   ${closed.join(' ')}`); // prettier-ignore
      for (const caution of report.cautions) on.out(caution);
    }
    return report.unjudged.some(({ id }) => id.startsWith('addedMass.heave')) ? exit.failsOrUnjudged : exit.passes;
  },
};

/** What asks for more than a plan by itself says. */
const ofDocuments = ['option', 'wave-height', 'bed', 'growth', 'record', 'order'] as const;

/** What the options say, each as far as it was given. */
interface Typed {
  readonly amplitude: number | undefined;
  readonly period: number | undefined;
  readonly bed: number | undefined;
  readonly years: number | undefined;
  readonly height: number | undefined;
  readonly finest: Pick<WaterConditions, 'cells'>;
}

async function planAlone(path: string, { amplitude = 0, period, finest }: Typed): Promise<Asked> {
  let text: string;
  try {
    text = await readFile(path, 'utf8');
  } catch (error) {
    throw refusal({
      what: `The plan cannot be read: ${reasonOf(error, reading)}`,
      where: { file: path },
      mend: 'Name a JSON file.',
    });
  }
  const { plan, density } = readPlan(text);
  return {
    title: 'A plan by itself',
    plan,
    conditions: { density, amplitude, period: period ?? null, ...finest, depth: null, aboveBed: null },
    more: {},
    missing: [],
    units: 'metric',
    bays: {},
    open: plan,
  };
}

async function ofDocument(
  folder: string,
  path: string,
  values: { option?: string; record?: string },
  typed: Typed,
): Promise<Asked> {
  const { raw, document } = await openDocument(path);
  const found = appraise(raw, document, chosenOption(document, values.option));
  const { geometry } = found.model;
  const { water, units } = found.model.document;
  const hydrodynamics = await overruled(
    found.model.document.hydrodynamics ?? {},
    typed,
    values.record && resolve(folder, values.record),
  );
  const model = { ...found.model, document: { ...found.model.document, hydrodynamics } };
  const { motion, bed, growth: stated } = hydrodynamics;
  const amplitude = motion?.amplitude.si ?? typed.amplitude ?? 0;
  const period = motion?.period.si ?? typed.period ?? null;
  if (bed && bed.si <= water.depth.si)
    throw refusal({ what: 'The sea bed lies above the plate', where: { option: '--bed' }, mend: 'Give the depth of the bed below the surface.' }); // prettier-ignore
  const growth = growthOf(model.document)?.thickness ?? 0;
  const clean = planInWater(geometry);
  const more: Record<string, WaterQuantity> = {};
  if (stated && stated.years > 0)
    more['growth.thickness'] = { value: growth, unit: 'm', title: `Marine growth on each face after ${stated.years} years`, source: stated.rows ? 'the document’s rows' : 'NORSOK N-003 guidance' }; // prettier-ignore
  const here = waterHere(model);
  const sea = seaWater(model);
  return {
    title: `${model.document.project.name}. ${found.optionTitle}.`,
    plan: growth > 0 ? grownPlan(clean, growth) : clean,
    conditions: {
      density: waterDensityOf(model.document),
      amplitude,
      period,
      ...typed.finest,
      depth: water.depth.si,
      aboveBed: bed ? bed.si - water.depth.si : null,
      parts: bayOpenings(geometry),
    },
    more: { ...more, ...here.quantities, ...sea.quantities },
    missing: [...here.unjudged, ...sea.missing],
    units,
    bays: bayOpenings({ bays: geometry.bays.filter((bay) => !isClosed(bay)) }),
    open: clean,
  };
}

/** What the document says of the water, with what the command line says in its place. */
async function overruled(
  stated: Hydrodynamics,
  { amplitude, period, bed, years, height }: Typed,
  record: string | undefined,
): Promise<Hydrodynamics> {
  const source = 'command line';
  const of = (si: number, unit: string) => ({ si, typed: `${si} ${unit}` });
  const [a, T] = [amplitude === undefined ? stated.motion?.amplitude : of(amplitude, 'm'), period === undefined ? stated.motion?.period : of(period, 's')]; // prettier-ignore
  const own = amplitude === undefined && period === undefined;
  const waveT = period === undefined ? (stated.wave?.period ?? T) : of(period, 's');
  const waveH = height === undefined ? stated.wave?.height : of(height, 'm');
  const table = record === undefined ? null : await recordedIn(record);
  return {
    ...stated,
    motion: own ? stated.motion : a && a.si > 0 && T ? { amplitude: a, period: T, source } : undefined,
    wave: height === undefined && period === undefined ? stated.wave : waveH && waveT ? { height: waveH, period: waveT, source } : undefined, // prettier-ignore
    bed: bed === undefined ? stated.bed : of(bed, 'm'),
    growth: years === undefined ? stated.growth : { ...stated.growth, years, source },
    ...(table ? { recorded: table } : {}),
  };
}

/** An hour of readings a hundred times a second is some 10 MB. */
const mostBytes = 200_000_000;

/** A motion in a file, as a document would keep it. */
async function recordedIn(path: string): Promise<NonNullable<Hydrodynamics['recorded']>> {
  const bytes = await openBytes(path, mostBytes);
  const record = { name: basename(path), hash: bytesToHex(sha256(bytes)), bytes: bytes.length };
  return recordedMotionField.parse(
    recordedField(recordedMotion(readTable(textOfRecord(bytes))), record, 'command line'),
  );
}

function wholeNumber(option: string, text: string, least: number, most: number): number {
  const value = Number(text);
  if (Number.isInteger(value) && value >= least && value <= most) return value;
  throw refusal({ what: `“${text}” is no whole number from ${least} to ${most}`, where: { option }, mend: `Write ${option} ${least + 4}.` }); // prettier-ignore
}
