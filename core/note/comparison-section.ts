import { comparedQuantities, type Comparison } from '../options/compare.ts';
import type { Section } from './note.ts';
import type { Print } from '../print-in.ts';
import { comparedWords } from '../options/compared-words.ts';

/** All options side by side, a column for each; changes are against the comparison's base. */
export function comparisonSection({ options, base }: Comparison, print: Print): Section {
  const name = (id: string | null) => id ?? 'base';
  const width = 0.72 / options.length;
  const columns = [
    { title: '', width: 0.28 },
    ...options.map(({ id }) => ({ title: name(id), width, align: 'right' as const })),
  ];
  const ids = [...new Set(options.flatMap(({ checks }) => Object.keys(checks)))];
  return {
    title: 'Options side by side',
    startsPage: true,
    blocks: [
      { kind: 'list', items: options.map(({ id, title }) => `${name(id)}: ${title}`) },
      {
        kind: 'table',
        caption: `Quantities; changes against “${name(base)}” in brackets. A verdict is one check at one place in one load situation`,
        columns,
        rows: [
          ...comparedQuantities.map((id) => {
            const { title, unit } = comparedWords[id];
            return [
              title,
              ...options.map(
                ({ quantities, change }) =>
                  `${print.quantity(quantities[id], unit)}${change[id] === 0 ? '' : ` (${change[id] > 0 ? '+' : ''}${print.quantity(change[id], unit, 3)})`}`,
              ),
            ];
          }),
          ['Verdicts that are fails', ...options.map(({ fails }) => String(fails))],
          ['Verdicts left open', ...options.map(({ unjudged }) => String(unjudged))],
          ['Findings', ...options.map(({ findings }) => String(findings))],
        ],
      },
      {
        kind: 'table',
        caption: 'Utilisation of every check at its gravest place and situation',
        columns,
        rows: ids.map((id) => [
          options.find(({ checks }) => checks[id])?.checks[id]?.title ?? id,
          ...options.map(({ checks }) => {
            const row = checks[id];
            if (!row) return '–';
            const use = row.utilisation === null ? '' : row.utilisation.toFixed(2);
            return row.verdict === 'passes' ? use : row.verdict === 'fails' ? `${use} FAILS`.trim() : 'not judged';
          }),
        ]),
      },
    ],
  };
}
