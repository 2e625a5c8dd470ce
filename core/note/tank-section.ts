import type { Print } from '../print-in.ts';
import type { Finding } from '../finding.ts';
import type { Estimate } from '../tank/estimate.ts';
import type { TankResult } from '../tank/identify.ts';
import type { ReducedTest } from '../tank/reduced-test.ts';
import type { TankSetup } from '../tank/tank-setup.ts';
import { powerText } from '../tank/trend.ts';
import { tankQuantities } from '../tank/tank-quantities.ts';
import { thinned } from '../record/thinned.ts';
import { significant } from '../quantity/format-quantity.ts';
import { linePlot } from './line-plot.ts';
import type { Block, Figure, Section, Table } from './note.ts';

export const tankCautions = [
  'Added mass and drag hold for the amplitudes and periods of this test, and for the plate as it was tested.',
  'In a test at one frequency a delay between force and travel and a change of drag are the same: state a bound on it.',
  'From a model to full scale by Froude’s law inertia scales; drag may not, since the water’s viscosity does not scale.',
  'A tank’s walls, bed and surface near the plate raise both numbers. They are not taken off.',
  'A plate swinging from a crane is a suspended load: the test is run under the site’s lifting rules, and nobody stands under it.',
] as const;

const columns = 600;
/** Cycles of the picture of the fit. */
const shownCycles = 4;

/** A test reduced: its numbers, the picture of the fit with what it leaves over, each run and cycle, what was done and found. */
export function tankSection({ result, steps, findings }: ReducedTest, setup: TankSetup, print: Print): Section {
  return {
    title: 'Added mass and drag of this record',
    blocks: [
      numbers(result, print),
      ...fitPictures(result),
      ...byRun(result, setup, print),
      byCycle(result),
      { kind: 'paragraph', text: 'What was done to the readings:', keep: true },
      { kind: 'list', items: steps },
      ...told(findings),
      { kind: 'list', tone: 'caution', items: tankCautions },
    ],
  };
}

/** Findings as a loud list, or that there is none. */
export const told = (findings: readonly Finding[]): Block[] =>
  findings.length === 0
    ? [{ kind: 'paragraph', text: 'Nothing was found that spoils the record.' }]
    : [{ kind: 'list', tone: 'loud', items: findings.map(({ text, mend }) => `${text} ${mend}`) }];

function numbers(result: TankResult, print: Print): Table {
  const { robust, bootstrap } = result;
  const row = (title: string, { value, low, high }: Omit<Estimate, 'standardError'>, unit: string, how: string) => [
    title,
    print.quantity(value, unit),
    `${print.quantity(low, unit)} to ${print.quantity(high, unit)}`,
    how,
  ];
  const also = [...result.also].map(([name, estimate]) =>
    row(
      name,
      estimate,
      { 'linear damping': 'N*s/m', 'dry friction': 'N', 'force drift': 'N/s', delay: 's' }[name],
      'least squares',
    ),
  );
  const least = 'least squares; interval by Newey and West';
  const drawn = 'interval by drawing blocks anew';
  const fourier = Object.entries(tankQuantities(result)).filter(([id]) => id.startsWith('tank.fourier.'));
  return {
    kind: 'table',
    caption: '95 % intervals; what a stated bound on the delay leaves open is in the first',
    columns: [
      { title: 'Number', width: 0.28 },
      { title: 'Value', width: 0.16, align: 'right' },
      { title: '95 % interval', width: 0.28 },
      { title: 'How', width: 0.28 },
    ],
    rows: [
      row('Added mass', result.addedMass, 'kg', least),
      row('Drag coefficient', result.dragCoefficient, '1', least),
      row('Force with nothing moving', result.weight, 'N', least),
      ...also,
      row('Added mass', { value: result.addedMass.value, low: bootstrap.addedMass[0], high: bootstrap.addedMass[1] }, 'kg', drawn), // prettier-ignore
      row('Drag coefficient', { value: result.dragCoefficient.value, low: bootstrap.dragCoefficient[0], high: bootstrap.dragCoefficient[1] }, '1', drawn), // prettier-ignore
      ['Added mass', print.quantity(robust.inertia, 'kg'), '', 'a fit that outliers cannot pull'],
      ['Drag coefficient', print.quantity(robust.dragCoefficient, '1'), '', 'a fit that outliers cannot pull'],
      ...fourier.map(([id, { value, unit }]) => [id.endsWith('addedMass') ? 'Added mass' : 'Drag coefficient', print.quantity(value, unit), '', 'Fourier averaging']), // prettier-ignore
      [
        'Left over, correlation from reading to reading',
        significant(result.residual.lagOne, 2),
        '',
        'nil of noise alone',
      ],
      ['Left over', `${significant(100 * result.residual.ofForce, 3)} %`, '', 'of the force’s own swing'],
    ],
    loud: [],
  };
}

function fitPictures({ overlay, runs }: TankResult): Figure[] {
  const { time, measured, modelled } = overlay;
  const run = runs.reduce((best, one) => (one.amplitude > best.amplitude ? one : best));
  const from = time.findIndex((t) => t >= run.from);
  const past = time.findIndex((t) => t > run.from + shownCycles * run.period);
  const to = past < 0 ? time.length : past;
  const left = measured.map((value, i) => value - modelled[i]!);
  return [
    linePlot({
      caption: `Force measured (points) and modelled (line), first ${Math.min(shownCycles, run.cycles)} cycles of the run with the largest amplitude`,
      alt: 'Force measured and modelled over a few cycles',
      axes: ['time, s', 'force, N'],
      curves: [{ ...thinned(time, modelled, columns, from, to), pen: 'outline' }],
      points: pointsOf(time, measured, from, to),
      shape: 0.4,
    }),
    linePlot({
      caption: 'What the model leaves over, all readings used: without a shape of its own if the model is right',
      alt: 'Force measured less modelled over time',
      axes: ['time, s', 'force left over, N'],
      curves: [{ ...thinned(time, left, columns), pen: 'accent' }],
      shape: 0.26,
    }),
  ];
}

const mostPoints = 160;
function pointsOf(x: Float64Array, y: Float64Array, from: number, to: number) {
  const every = Math.max(1, Math.ceil((to - from) / mostPoints));
  return Array.from({ length: Math.floor((to - from) / every) }, (_, n) => ({
    x: x[from + n * every]!,
    y: y[from + n * every]!,
    fill: 'paper' as const,
  }));
}

function byRun({ runs, addedMass, dragCoefficient, trends }: TankResult, { width }: TankSetup, print: Print): Block[] {
  const shown = runs.slice(0, 60);
  const KC = shown.map(({ keuleganCarpenter }) => keuleganCarpenter);
  const ends = [Math.min(...KC), Math.max(...KC)];
  const against = (what: string, axis: string, { value, low, high }: Estimate, of: (run: (typeof runs)[number]) => number): Figure =>
    linePlot({
      caption: `${what} of each run by itself against the Keulegan-Carpenter number (2π amplitude / ${significant(width, 3)} m); lines: all runs together, with their interval`,
      alt: `${what} of each run against the Keulegan-Carpenter number`,
      axes: ['Keulegan-Carpenter number', axis],
      curves: ([[value, 'outline'], [low, 'hidden'], [high, 'hidden']] as const).map(([y, pen]) => ({ x: ends, y: [y, y], pen })),
      points: shown.map((run, i) => ({ x: KC[i]!, y: of(run) })),
      shape: 0.3,
    }); // prettier-ignore
  return [
    {
      kind: 'table',
      caption: runs.length > shown.length ? `The first ${shown.length} of ${runs.length} runs, each by itself` : 'Each run by itself', // prettier-ignore
      columns: [
        { title: 'From', width: 0.12, align: 'right' },
        { title: 'Cycles', width: 0.1, align: 'right' },
        { title: 'Period', width: 0.12, align: 'right' },
        { title: 'Amplitude', width: 0.14, align: 'right' },
        { title: 'KC', width: 0.1, align: 'right' },
        { title: 'Frequency parameter', width: 0.16, align: 'right' },
        { title: 'Added mass', width: 0.14, align: 'right' },
        { title: 'Drag coefficient', width: 0.12, align: 'right' },
      ],
      rows: shown.map(({ from, cycles, period, amplitude, keuleganCarpenter, frequencyParameter, fit }) => [
        print.quantity(from, 's'),
        String(cycles),
        print.quantity(period, 's', 3),
        print.quantity(amplitude, 'm', 3),
        significant(keuleganCarpenter, 3),
        significant(frequencyParameter, 3),
        print.quantity(fit.inertia, 'kg'),
        significant(fit.dragCoefficient, 4),
      ]),
    },
    ...(shown.length > 1
      ? [
          against('Added mass', 'added mass, kg', addedMass, ({ fit }) => fit.inertia),
          against('Drag coefficient', 'drag coefficient', dragCoefficient, ({ fit }) => fit.dragCoefficient),
          ...trendWords(trends),
        ]
      : []),
  ];
}

/** The trend of both numbers as exponents, or that the runs tell none. */
function trendWords(trends: TankResult['trends']): Block[] {
  const items = trends.flatMap(({ of, amplitude, frequency }) => {
    const parts = [
      ...(amplitude ? [`Keulegan-Carpenter number, ${powerText(amplitude)}`] : []),
      ...(frequency ? [`frequency parameter, ${powerText(frequency)}`] : []),
    ];
    return parts.length === 0 ? [] : [`${of === 'addedMass' ? 'Added mass' : 'Drag coefficient'} over the runs goes as a power of the ${parts.join('; of the ')}. Nil lies in the interval where the runs tell no trend.`]; // prettier-ignore
  });
  return items.length === 0 ? [] : [{ kind: 'list', tone: 'plain', items }];
}

function byCycle({ cycles }: TankResult): Figure {
  const every = Math.max(1, Math.ceil(cycles.length / 300));
  return linePlot({
    caption: `Drag coefficient of each ${every === 1 ? 'cycle' : `${every}th cycle`} by itself, in their order: a trend says that something changes while the test goes on`,
    alt: 'Drag coefficient of each cycle',
    axes: ['cycle', 'drag coefficient'],
    points: cycles.flatMap(({ dragCoefficient }, i) => (i % every === 0 ? [{ x: i + 1, y: dragCoefficient, fill: 'paper' as const }] : [])), // prettier-ignore
    shape: 0.26,
  });
}
