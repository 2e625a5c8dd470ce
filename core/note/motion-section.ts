import { motionInSea, seaDuration, seaSeed, seaStep, type MotionInSea } from '../hydrodynamics/motion-in-sea.ts';
import type { Model } from '../model.ts';
import type { Print } from '../print-in.ts';
import { thinned } from '../record/thinned.ts';
import { significant } from '../quantity/format-quantity.ts';
import { linePlot } from './line-plot.ts';
import type { Block, Section } from './note.ts';

/** A natural period within this part of the waves' is told. */
const nearPeriod = 0.2;
/** Of a history in its picture, s. */
const shown = 120;

const cautions = [
  'Heave of two bodies only: drift, pitch, the line’s angle and its own mass are left out.',
  'The float is moved by the pressure of the undisturbed wave (long waves); the waves that it makes are part of its damping, as stated.',
  'One history of one seed: its largest values scatter from history to history.',
];

/** The motion left over in the stated sea, or what would have to be stated for it. */
export function motionSection(model: Model, print: Print): Section {
  const title = 'Motion left over';
  const found = motionInSea(model);
  if ('missing' in found) return { title, blocks: [{ kind: 'paragraph', tone: 'loud', text: `Cannot be judged: ${found.missing}.` }] }; // prettier-ignore
  const peak = model.document.hydrodynamics!.sea!.peakPeriod.si;
  return {
    title,
    blocks: [
      { kind: 'paragraph', text: `Float, power take-off, line and plate in heave, in the stated sea: ${significant(seaDuration / 60, 2)} minutes of it by time steps of ${seaStep} s (seed ${seaSeed}), and by spectra with the drag linearised. Added mass ${print.quantity(found.addedMass, 'kg')} and drag of ${print.quantity(found.dragArea, 'm^2')} (coefficient times area) from ${found.from}.` }, // prettier-ignore
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
          ...Object.values(found.quantities)
            .filter(({ value }) => Number.isFinite(value))
            .map(({ value, unit, title: name }) => [name, print.quantity(value, unit, 3)]),
        ],
      },
      balance(found, print),
      ...pictures(found),
      { kind: 'list', tone: 'caution', items: cautions },
    ],
  };
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
