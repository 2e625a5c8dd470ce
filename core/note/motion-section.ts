import { hydrodynamicsOf } from '../hydrodynamics/hydrodynamics-of.ts';
import { motionInRegularWave } from '../hydrodynamics/motion-in-regular-wave.ts';
import { motionInSea, seaDuration, seaSeed, type MotionInSea } from '../hydrodynamics/motion-in-sea.ts';
import { motionOverScatter, scatterHistory, type MotionOverScatter } from '../hydrodynamics/motion-over-scatter.ts';
import { openGridPeriods } from '../hydrodynamics/open-grid-motion.ts';
import { serviceAgainstRope } from '../hydrodynamics/service-against-rope.ts';
import type { Model } from '../model.ts';
import { seaStep } from '../motion/in-sea-state.ts';
import type { MotionQuantity } from '../motion/motion-quantities.ts';
import type { Print } from '../print-in.ts';
import { thinned } from '../record/thinned.ts';
import { hoistAgainstRope, type HoistAgainstRope } from '../recovery/hoist-against-rope.ts';
import { significant } from '../quantity/format-quantity.ts';
import { linePlot } from './line-plot.ts';
import type { Block, Section } from './note.ts';

/** A natural period within this part of the waves' is told. */
const nearPeriod = 0.2;
/** Of a history in its picture, s. */
const shown = 120;
/** States of a scatter table that are printed; of a longer one those that move the plate most. */
const mostStates = 40;

const cautions = [
  'Heave of two bodies only: drift, pitch, the line’s angle and its own mass are left out.',
  'The float is moved by the pressure of the undisturbed wave (long waves); the waves that it makes are part of its damping, as stated.',
  'One history of one seed: its largest values scatter from history to history.',
];

/** The motion left over in the stated sea, regular wave and scatter table, and natural periods; or what would have to be stated for it. */
export function motionSection(model: Model, print: Print): Section {
  const title = 'Motion left over';
  const found = motionInSea(model);
  const wave = regularWave(model, print);
  const scatter = overScatter(model, print);
  const rope = hoistAgainstRope(model);
  const service = inService(model, 'missing' in found ? null : found.addedMass, print);
  const sea = 'missing' in found ? [loud(`Cannot be judged in a sea: ${found.missing}.`)] : inSea(found, model, print);
  const isAny = !('missing' in found) || wave.length > 0 || scatter.length > 0;
  return {
    title,
    blocks: [
      ...sea,
      ...wave,
      ...scatter,
      ...service,
      ...(rope ? ropeOut(rope, print) : []),
      ...(isAny ? [{ kind: 'list', tone: 'caution', items: cautions } as const] : []),
    ],
  };
}

const loud = (text: string): Block => ({ kind: 'paragraph', tone: 'loud', text });

function inSea(found: MotionInSea, model: Model, print: Print): Block[] {
  const peak = model.document.hydrodynamics!.sea!.peakPeriod.si;
  const open = openGridPeriods(model);
  const from = found.from === 'theory' ? `theory, at the sine of ${print.quantity(found.amplitude, 'm', 3)} that loses as much as this motion through the water (found by turns until both agree)` : found.from; // prettier-ignore
  return [
    { kind: 'paragraph', text: `Float, power take-off, line and plate in heave, in the stated sea: ${significant(seaDuration / 60, 2)} minutes of it by time steps of ${seaStep} s (seed ${seaSeed}), and by spectra with the drag linearised. Added mass ${print.quantity(found.addedMass, 'kg')} and drag of ${print.quantity(found.dragArea, 'm^2')} (coefficient times area) from ${from}.` }, // prettier-ignore
    ...warnings(found, peak, print),
    {
      kind: 'table',
      caption: 'What is left over, what the line pulls and where the power goes',
      columns: [
        { title: 'Number', width: 0.66 },
        { title: 'Value', width: 0.34, align: 'right' },
      ],
      rows: [
        ...found.periods.map((period, i) => [`Natural period ${i + 1} in heave, undamped`, print.quantity(period, 's', 3)]), // prettier-ignore
        ...(open ?? []).map((period, i) => [`The same of the grid without panels, at the stated motion: ${i + 1}`, print.quantity(period, 's', 3)]), // prettier-ignore
        ...rowsOf(found.quantities, print),
      ],
    },
    balance(found, print),
    ...pictures(found),
  ];
}

const rowsOf = (quantities: Readonly<Record<string, MotionQuantity>>, print: Print): string[][] =>
  Object.values(quantities)
    .filter(({ value }) => Number.isFinite(value))
    .map(({ value, unit, title }) => [title, print.quantity(value, inThousands[unit] ?? unit, 3)]);

/** Units of a line's pull and of power that are easier to read. */
const inThousands: Readonly<Record<string, string>> = { N: 'kN', W: 'kW' };

function regularWave(model: Model, print: Print): Block[] {
  const found = motionInRegularWave(model);
  if (found === null) return [];
  const { height, period, source } = model.document.hydrodynamics!.wave!;
  if ('missing' in found) return [loud(`Cannot be judged in the regular wave: ${found.missing}.`)];
  return [
    {
      kind: 'table',
      caption: `In the regular wave of ${height.typed} and ${period.typed} (${source}), by time steps after 40 waves, and linearised: added mass ${print.quantity(found.addedMass, 'kg', 3)}, drag area ${print.quantity(found.dragArea, 'm^2', 3)} from ${found.from === 'theory' ? 'theory, at the motion that comes out' : found.from}`, // prettier-ignore
      columns: [
        { title: 'Number', width: 0.66 },
        { title: 'Value', width: 0.34, align: 'right' },
      ],
      rows: rowsOf(found.quantities, print),
    },
  ];
}

function overScatter(model: Model, print: Print): Block[] {
  const found = motionOverScatter(model);
  if (found === null) return [];
  if ('missing' in found) return [loud(`Cannot be judged over the scatter table: ${found.missing}.`)];
  const { states, mean, within, slack, stepped, unjudged } = found;
  const percent = (part: number): string => `${significant(100 * part, 3)} %`;
  const printed = [...states].sort((a, b) => b.significant - a.significant).slice(0, mostStates);
  const lost = unjudged.reduce((sum, { part }) => sum + part, 0);
  return [
    {
      kind: 'table',
      caption: `Over the scatter table (${model.document.hydrodynamics!.scatter!.source}), significant double amplitudes by spectra with the drag linearised and by time steps, added mass and drag of each state’s own motion${fromWords(found)}; ${printed.length < states.length ? `the ${printed.length} of ${states.length} states` : 'states'} that move the plate most first`, // prettier-ignore
      columns: [
        { title: 'Significant height', width: 0.13, align: 'right' },
        { title: 'Peak period', width: 0.1, align: 'right' },
        { title: 'Of the time', width: 0.11, align: 'right' },
        { title: 'Plate, double amplitude', width: 0.13, align: 'right' },
        { title: 'By time steps', width: 0.12, align: 'right' },
        { title: 'Slack, times an hour', width: 0.12, align: 'right' },
        { title: 'Pull swings at most', width: 0.17, align: 'right' },
        { title: 'Taken off', width: 0.12, align: 'right' },
      ],
      rows: printed.map((state) => [
        print.quantity(state.height, 'm', 3),
        print.quantity(state.peakPeriod, 's', 3),
        percent(state.part),
        print.quantity(state.significant, 'm', 3),
        state.stepped ? print.quantity(state.stepped.significant, 'm', 3) : '',
        state.stepped ? significant(state.stepped.slackAnHour, 2) : '',
        `${print.quantity(state.pull, 'kN', 3)}${state.slack ? ', slack' : ''}`,
        print.quantity(state.power, 'kW', 3),
      ]),
    },
    {
      kind: 'list',
      tone: 'plain',
      items: [
        `In the mean over the time the plate’s significant double amplitude is ${print.quantity(mean.significant, 'm', 3)} and the power take-off takes ${print.quantity(mean.power, 'kW', 3)}.`,
        `The significant double amplitude is at most ${within.map(({ limit, part }) => `${print.quantity(limit, 'm', 3)} in ${percent(part)}`).join(', ')} of the time.`,
        ...(stepped ? [`By time steps, drag and slack as they are, ${scatterHistory.duration / 60} minutes of each state (seed ${scatterHistory.seed}): over the states stepped, ${percent(stepped.part)} of the time, ${print.quantity(stepped.significant, 'm', 3)} in the mean, with the drag linearised ${print.quantity(stepped.linearised, 'm', 3)}; the line goes slack in states that make up ${percent(stepped.slack)} of the time. One history scatters by some percent, and slack is rare: the largest pull is told over the whole state, by spectra.`] : []), // prettier-ignore
        '“Pull swings at most”: the most probable largest departure from the weight while the state lasts.',
        ...(slack > 0 ? [`By that pull the line goes slack in states that make up ${percent(slack)} of the time; slack is not in these spectra.`] : []), // prettier-ignore
        ...(lost > 0 ? [`Not judged: ${percent(lost)} of the time, ${[...new Set(unjudged.map(({ why }) => why))].join('; ')}.`] : []), // prettier-ignore
      ],
    },
  ];
}

const fromWords = ({ from }: MotionOverScatter): string => (from === 'theory' ? ' by theory' : `: ${from}`);

/** Natural periods in service against the line that is out; with the take-off at its stop, and against the waves. */
function inService(model: Model, addedMass: number | null, print: Print): Block[] {
  const { system } = model.document.hydrodynamics ?? {};
  const own = addedMass ?? hydrodynamicsOf(model).open?.closed.addedMass;
  if (!system || own === undefined) return [];
  const found = serviceAgainstRope(model, own);
  if (found === null) return system.line ? [] : [{ kind: 'paragraph', text: 'How the natural periods go with the line that is out is not told: the line’s axial stiffness and length are not stated.' }]; // prettier-ignore
  const { out, closed, open, stopped, locked, length, waves } = found;
  const seconds = (value: number): string => print.quantity(value, 's', 3);
  const named = (of: readonly number[]): string => of.map(seconds).join(' and ');
  const ends = [out[0]!, out.at(-1)!];
  const level = waves ? [[waves.shortest, 'waves from'] as const, [waves.longest, 'to'] as const] : [];
  const within = (of: readonly number[]): boolean => waves !== null && of.some((period) => period >= waves.shortest && period <= waves.longest); // prettier-ignore
  const judged = (what: string, of: readonly (readonly number[])[]): string[] => {
    if (waves === null) return [];
    const told = of.flatMap((mode, i) => (within(mode) ? [`${of.length > 1 ? `period ${i + 1}` : 'its period'} (${seconds(mode[0]!)} to ${seconds(mode.at(-1)!)}) lies in the waves’ band ${stretchOf(out, mode, waves, print)}`] : [])); // prettier-ignore
    return [`${what}: ${told.length === 0 ? 'no natural period lies in the waves’ band at any of these lengths' : `${told.join(', ')}. Damping alone holds such a motion`}.`]; // prettier-ignore
  };
  return [
    linePlot({
      caption: `Natural periods in service under water, against the line between ${system.float ? 'float' : 'its hold'} and plate: with panels (strong), with panels and the power take-off at its stop (broken)${open ? ', and the open grid (thin)' : ''}${waves ? `. Between the level lines lie nine tenths of the waves’ energy, ${seconds(waves.shortest)} to ${seconds(waves.longest)}` : ''}`, // prettier-ignore
      alt: 'Natural periods in service against line out',
      axes: ['line out, m', 'natural period, s'],
      curves: [
        ...closed.map((y, i) => ({ x: out, y, pen: 'accent' as const, ...(i === 0 ? { name: 'panels' } : {}) })),
        ...(open ?? []).map((y, i) => ({ x: out, y, pen: 'thin' as const, ...(i === 0 ? { name: 'open' } : {}) })),
        { x: out, y: stopped, pen: 'hidden' as const, name: 'at its stop' },
        ...level.map(([y, name]) => ({ x: ends, y: [y, y], pen: 'outline' as const, name })),
      ],
      shape: 0.3,
      fromZero: true,
    }),
    {
      kind: 'list',
      tone: 'plain',
      items: [
        ...judged('With panels', closed),
        ...(open ? judged('The open grid', open) : []),
        'Power take-off and line are springs in a row, the line’s as its axial stiffness over its length; added mass as in the table of this section, the same at every depth.', // prettier-ignore
      ],
    },
    {
      kind: 'list',
      tone: within(locked.closed) ? 'loud' : 'plain',
      items: [
        `With the power take-off at its stop the line alone is the spring: at ${print.quantity(length, 'm', 3)} of it ${named(locked.closed)} with panels${locked.open ? `, ${named(locked.open)} for the open grid` : ''}${waves === null ? '' : within(locked.closed) ? '. With panels one of them lies in the waves’ band: at its stop the take-off takes nothing, and drag alone holds the motion' : ''}.`, // prettier-ignore
      ],
    },
  ];
}

/** Where of all that is out a mode lies in the band. */
function stretchOf(out: readonly number[], mode: readonly number[], { shortest, longest }: { readonly shortest: number; readonly longest: number }, print: Print): string {
  const near = out.filter((_, i) => mode[i]! >= shortest && mode[i]! <= longest);
  return near.length === out.length ? 'at any of these lengths' : `from ${print.quantity(near[0]!, 'm', 3)} to ${print.quantity(near.at(-1)!, 'm', 3)} of line`;
} // prettier-ignore

function ropeOut({ out, closed, open, waves }: HoistAgainstRope, print: Print): Block[] {
  const { shortest, longest } = waves;
  const seconds = (value: number): string => print.quantity(value, 's', 3);
  const inBand = (periods: readonly number[]): string => {
    const near = out.filter((_, i) => periods[i]! >= shortest && periods[i]! <= longest);
    return near.length === 0 ? `${seconds(periods.at(-1)!)} with all of it out, ${periods.at(-1)! < shortest ? 'shorter than the waves’' : 'longer than the waves’ from the start'}` : `in the waves’ band from ${print.quantity(near[0]!, 'm', 3)} of line on: there the hoist answers to waves with more than the tip’s motion`; // prettier-ignore
  };
  const ends = [out[0]!, out.at(-1)!];
  return [
    linePlot({
      caption: `Natural period under water on the hoist line, against the line that is out: with panels (strong) and the open grid (thin). Between the level lines lie nine tenths of the waves’ energy, ${seconds(shortest)} to ${seconds(longest)}`, // prettier-ignore
      alt: 'Natural period on the hoist against line out',
      axes: ['line out, m', 'natural period, s'],
      curves: [
        { x: out, y: closed, pen: 'accent', name: 'panels' },
        { x: out, y: open, pen: 'thin', name: 'open' },
        { x: ends, y: [shortest, shortest], pen: 'outline', name: 'waves from' },
        { x: ends, y: [longest, longest], pen: 'outline', name: 'to' },
      ],
      shape: 0.3,
      fromZero: true,
    }),
    {
      kind: 'list',
      tone: 'plain',
      items: [
        `On the hoist line with panels: ${inBand(closed)}.`,
        `The open grid: ${inBand(open)}.`,
        'The line alone is the spring, as stated at the plate’s depth; a crane or frame that yields makes the periods longer. Added mass as in the lift, for large motions.', // prettier-ignore
      ],
    },
  ];
}

function warnings({ periods, quantities, stepped }: MotionInSea, peak: number, print: Print): Block[] {
  const items: string[] = periods
    .filter((period) => Math.abs(period / peak - 1) < nearPeriod)
    .map((period) => `A natural period of ${print.quantity(period, 's', 3)} lies near the waves’ ${print.quantity(peak, 's', 3)}: damping alone holds the motion, and an error in it counts in full.`); // prettier-ignore
  if (stepped.slackTimes > 0)
    items.push(`The line goes slack ${stepped.slackTimes === 1 ? 'once' : `${stepped.slackTimes} times`} and draws tight again at up to ${print.quantity(stepped.snapSpeed, 'm/s', 3)}: the snap loads line, attachments and plate beyond these figures.`); // prettier-ignore
  const [byTime, bySpectrum] = ['motion.significant', 'motion.linearised.significant'].map((id) => quantities[id]!.value); // prettier-ignore
  if (Math.abs(byTime! - bySpectrum!) > 0.1 * Math.max(byTime!, bySpectrum!))
    items.push(`By time steps the plate moves ${print.quantity(byTime!, 'm', 3)}, with the drag linearised ${print.quantity(bySpectrum!, 'm', 3)}: rely on the larger, and on a test.`); // prettier-ignore
  return items.length > 0 ? [{ kind: 'list', tone: 'loud', items }] : [];
}

/** Where the energy went, over the counted history. */
function balance({ stepped: { energy } }: MotionInSea, print: Print): Block {
  const out = energy.float + energy.link + energy.plate + energy.stored;
  const part = (value: number): string => `${significant((100 * value) / energy.in, 3)} %`;
  const row = (name: string, value: number): string[] => [name, print.quantity(value, 'kJ'), part(value)];
  return {
    kind: 'table',
    caption: 'Energy balance of the time steps',
    columns: [
      { title: 'Energy', width: 0.6 },
      { title: 'Over the history', width: 0.22, align: 'right' },
      { title: 'Of what came in', width: 0.18, align: 'right' },
    ],
    rows: [
      row('Came in by waves', energy.in),
      row('Lost by the float', energy.float),
      row('Taken by power take-off and line', energy.link),
      row('Lost by the plate’s motion', energy.plate),
      row('More stored at the end than at the beginning', energy.stored),
      row('Not accounted for', energy.in - out),
    ],
  };
}

function pictures({ stepped, countFrom, system }: MotionInSea): Block[] {
  const { dt, float, plate, pull } = stepped;
  const past = countFrom + Math.round(shown / dt);
  const time = plate.map((_, i) => (i - countFrom) * dt);
  const of = (values: Float64Array) => thinned(time, values, 300, countFrom, past);
  return [
    linePlot({
      caption: `The first ${shown} s: height of the plate (strong)${system.float ? ' and of the float (thin)' : ''}`,
      alt: 'Height of plate and float by time steps',
      axes: ['time, s', 'height, m'],
      curves: [...(system.float ? [{ ...of(float), pen: 'thin' as const }] : []), { ...of(plate), pen: 'accent' }],
      shape: 0.32,
    }),
    linePlot({
      caption: 'Pull of the line over the same time',
      alt: 'Pull of the line by time steps',
      axes: ['time, s', 'pull, kN'],
      curves: [{ x: of(pull).x, y: of(pull).y.map((N) => N / 1000), pen: 'accent' }],
      shape: 0.26,
      fromZero: true,
    }),
  ];
}
