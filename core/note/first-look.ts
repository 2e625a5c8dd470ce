import type { Print } from '../print-in.ts';
import { significant } from '../quantity/format-quantity.ts';
import { usualStep } from '../record/read-recording.ts';
import type { Table } from '../record/read-table.ts';
import type { Recording } from '../record/record.ts';
import { thinned } from '../record/thinned.ts';
import { linePlot } from './line-plot.ts';
import type { Block, Section } from './note.ts';

/** Rows kept out that are listed; all are counted. */
const mostListed = 40;
/** Readings of each channel drawn close up. */
const closeUp = 400;
const columns = 700;

/** A record before anything is accepted of it: how the file was understood, each channel over time, and what is wrong with its rows. */
export function firstLook({ hasHeader, columns: heads, rows }: Table, recording: Recording, print: Print): Section {
  const { time, channels, bad, gaps, readAs } = recording;
  const step = usualStep(time);
  const sample = rows.first(3);
  const blocks: Block[] = [
    {
      kind: 'paragraph',
      text: `${rows.length} rows, of them ${time.length} read: ${print.quantity(time.at(-1)!, 's')} at ${significant(1 / step, 4)} readings a second. Understood as: ${readAs.join('; ')}.`,
    },
    {
      kind: 'paragraph',
      tone: bad.length > 0 ? 'loud' : 'plain',
      text:
        bad.length === 0
          ? 'No row is kept out.'
          : `${bad.length} ${bad.length === 1 ? 'row is' : 'rows are'} kept out and listed; nothing below takes them in anything below.`,
    },
    {
      kind: 'table',
      caption: hasHeader ? 'Columns of the file' : 'Columns of the file, which has no header',
      columns: [
        { title: 'No.', width: 0.08, align: 'right' },
        { title: 'Name', width: 0.3 },
        { title: 'Unit', width: 0.14 },
        { title: 'First readings', width: 0.48 },
      ],
      rows: heads.map(({ name, unit }, i) => [
        String(i + 1),
        name,
        unit || 'none given',
        sample.map((row) => (row[i] ?? '').trim().slice(0, 24)).join('   '),
      ]),
    },
    ...channels.flatMap(({ name, values }): Block[] => {
      const axis = `${name}, ${unitOf(name)}`;
      return [
        linePlot({
          caption: `The ${name} as it was read, all of it`,
          alt: `The ${name} over the whole record`,
          axes: ['time, s', axis],
          curves: [{ ...thinned(time, values, columns), pen: 'accent' }],
          shape: 0.26,
        }),
        linePlot({
          caption: `The first ${Math.min(closeUp, time.length)} readings of the ${name}`,
          alt: `The ${name} close up`,
          axes: ['time, s', axis],
          curves: [{ ...thinned(time, values, columns, 0, Math.min(closeUp, time.length)), pen: 'accent' }],
          shape: 0.22,
        }),
      ];
    }),
    ...(bad.length > 0
      ? [
          {
            kind: 'table',
            caption:
              bad.length > mostListed ? `The first ${mostListed} of ${bad.length} rows kept out` : 'Rows kept out',
            columns: [
              { title: 'Line', width: 0.15, align: 'right' },
              { title: 'Why', width: 0.85 },
            ],
            rows: bad.slice(0, mostListed).map(({ line, why }) => [String(line), why]),
          } as const,
        ]
      : []),
    ...(gaps.length > 0
      ? [
          {
            kind: 'paragraph',
            text: `${gaps.length === 1 ? 'One gap' : `${gaps.length} gaps`} longer than one and a half steps: ${gaps
              .slice(0, 6)
              .map(({ from, to }) => `${significant(from, 4)} s to ${significant(to, 4)} s`)
              .join('; ')}${gaps.length > 6 ? '; and more' : ''}.`,
          } as const,
        ]
      : []),
  ];
  return { title: 'First look', blocks };
}

const unitOf = (name: string): string =>
  name.endsWith('acceleration') || name === 'acceleration ahead' ? 'm/s²' : (units[name] ?? 'SI');
const units: Readonly<Record<string, string>> = {
  ...{ force: 'N', travel: 'm', stroke: 'm', pitch: 'rad', 'line angle': 'rad', pressure: 'Pa' },
};
