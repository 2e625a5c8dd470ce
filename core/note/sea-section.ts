import type { KeptSeaResult } from '../document/sea-tests-field.ts';
import { causeWords, wayWords } from '../motion/sea-quantities.ts';
import type { Print } from '../print-in.ts';
import { significant } from '../quantity/format-quantity.ts';
import { linePlot, type PlotCurve } from './line-plot.ts';
import type { Block } from './note.ts';

export const seaCautions = [
  'A small difference of large numbers: read the band, not the value alone.',
  'What is slower than the high pass is in no number; drift of an accelerometer cannot be told from it.',
  'The float’s roll is left out, and a line whose angle is not recorded is taken as hanging straight down.',
  'A pressure logger is taken as clear of the panels, and the float’s height as that of the waves (common practice, no source).',
];

/** How still the plate was, as the document keeps it: window and note read the same. */
export function seaBlocks(kept: KeptSeaResult, title: string, print: Print): Block[] {
  const m = (si: number): string => print.quantity(si, 'm', 3);
  const band = ({ value, low, high }: KeptSeaResult['significant']): string => `${m(value.si)} (${m(low.si)} to ${m(high.si)})`; // prettier-ignore
  const { significant: plate, floatSignificant, strokeSignificant, held, takeOff, ways, causes } = kept;
  const ratio = plate.value.si / floatSignificant.si;
  return [
    {
      kind: 'paragraph',
      text: `Significant double amplitude of the plate ${band(plate)}: ${significant(100 * ratio, 3)} % of the float’s ${m(floatSignificant.si)}. Largest double amplitude ${m(kept.largest.si)}. By ${wayWords[kept.by]}.`,
    },
    ...(kept.within === undefined ? [] : [{ kind: 'paragraph', text: `Within the stated limit ${significant(100 * kept.within, 3)} % of the time.` } as const]), // prettier-ignore
    {
      kind: 'table',
      caption: `Over ${print.quantity(kept.seconds, 's', 4)}, ${kept.readings} readings, ${kept.rowsKeptOut} rows kept out. The band carries what sensors, clocks and scales leave open`,
      columns: [
        { title: 'Number', width: 0.64 },
        { title: 'Value', width: 0.36, align: 'right' },
      ],
      rows: [
        ['Significant double amplitude of the plate', band(plate)],
        ['Of the float where the line is fastened', m(floatSignificant.si)],
        ...(strokeSignificant ? [['Of the stroke', m(strokeSignificant.si)]] : []),
        ...(kept.period ? [['Mean period of the plate', print.quantity(kept.period.si, 's', 3)]] : []),
        ...(kept.floatPeriod ? [['Mean period of the float', print.quantity(kept.floatPeriod.si, 's', 3)]] : []),
        ...held.map(({ part, doubleAmplitude }) => [`Double amplitude within which the plate is ${significant(100 * part, 2)} % of the time`, m(doubleAmplitude.si)]), // prettier-ignore
        ...(takeOff
          ? [
              ['Pull of the line: mean', print.quantity(takeOff.mean.si, 'kN')],
              ['Pull of the line: least and largest', `${print.quantity(takeOff.least.si, 'kN')} and ${print.quantity(takeOff.largest.si, 'kN')}`], // prettier-ignore
              ['Line slack, of the time', `${significant(100 * takeOff.slack, 2)} %`],
              ...(takeOff.power === undefined ? [] : [['Power absorbed: mean', print.quantity(takeOff.power, 'W')]]),
              ...(takeOff.peakPower === undefined ? [] : [['Power absorbed: largest', print.quantity(takeOff.peakPower, 'W')]]), // prettier-ignore
            ]
          : []),
      ],
    },
    {
      kind: 'table',
      caption: 'What leaves the plate’s motion open: noise as one standard deviation of a reading of its height, a bound as it stands', // prettier-ignore
      columns: [
        { title: 'Cause', width: 0.6 },
        { title: 'Kind', width: 0.16 },
        { title: 'Height', width: 0.24, align: 'right' },
      ],
      rows: causes.map(({ id, kind, value }) => [causeWords[id].replace(', one deviation', ''), kind, print.quantity(value.si, 'mm', 3)]), // prettier-ignore
    },
    ...(ways.length > 1
      ? [
          {
            kind: 'table',
            caption: `Each way that the sensors allow; the note’s numbers are by ${kept.by}`,
            columns: [
              { title: 'Way', width: 0.2 },
              { title: 'Significant double amplitude', width: 0.5, align: 'right' },
              { title: 'Apart from the one taken', width: 0.3, align: 'right' },
            ],
            rows: ways.map(({ by, significant: own, apart }) => [by, band(own), by === kept.by ? '' : m(apart.si)]),
          } as const,
        ]
      : []),
    ...picturesOf(kept, title),
    { kind: 'list', items: kept.steps },
    ...(kept.findings.length > 0 ? [{ kind: 'list', tone: 'loud', items: kept.findings } as const] : []),
  ];
}

function picturesOf({ whole, minute, spectra }: KeptSeaResult, title: string): Block[] {
  const over = (of: typeof whole): PlotCurve[] => [
    { x: of.at, y: of.float, pen: 'thin', name: 'float' },
    ...(of.stroke ? [{ x: of.at, y: of.stroke, pen: 'hidden', name: 'stroke' } as const] : []),
    { x: of.at, y: of.plate, pen: 'accent', name: 'plate' },
  ];
  const apart = (curves: PlotCurve[]): PlotCurve[] => curves.map(({ name: _, ...curve }) => curve);
  return [
    linePlot({
      caption: 'The whole record: height of the plate (strong) and of the float (thin)',
      alt: `Height of plate and float over the whole record, ${title}`,
      axes: ['time, s', 'height, m'],
      curves: apart(over({ at: whole.at, plate: whole.plate, float: whole.float })),
      shape: 0.28,
    }),
    linePlot({
      caption: `The first minute: plate (strong), float (thin)${minute.stroke ? ', stroke (broken)' : ''}`,
      alt: `Height of plate, float and stroke in the first minute, ${title}`,
      axes: ['time, s', 'height, m'],
      curves: apart(over(minute)),
      shape: 0.34,
    }),
    linePlot({
      caption: 'Spectra: plate (strong), float (thin)',
      alt: `Spectra of plate and float, ${title}`,
      axes: ['frequency, Hz', 'density, m²/Hz'],
      curves: apart(over({ at: spectra.at, plate: spectra.plate, float: spectra.float })),
      shape: 0.3,
      fromZero: true,
    }),
    ...(spectra.floor
      ? [
          linePlot({
            caption: 'The plate’s spectrum alone, and what the noise of the sensors makes of it (broken)',
            alt: `Spectrum of the plate and its noise, ${title}`,
            axes: ['frequency, Hz', 'density, m²/Hz'],
            curves: [
              { x: spectra.at, y: spectra.plate, pen: 'accent' },
              { x: spectra.at, y: spectra.floor, pen: 'hidden' },
            ],
            shape: 0.26,
            fromZero: true,
          }),
        ]
      : []),
  ];
}
