import { comparedQuantities, type Comparison } from '../options/compare.ts';
import type { Block, Section } from './note.ts';
import type { Print } from '../print-in.ts';
import { comparedWords } from '../options/compared-words.ts';
import { waterGainRows } from '../options/water-gain-rows.ts';
import { waterGains } from '../options/water-gains.ts';
import { utilisationText } from '../quantity/utilisation-text.ts';

/** All options side by side, a column for each; changes are against the comparison's base. */
export function comparisonSection({ options, base, appraisals }: Comparison, print: Print): Section {
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
      ...waterOfOptions(appraisals, columns, print),
      {
        kind: 'table',
        caption: 'Utilisation of every check at its gravest place and situation',
        columns,
        rows: ids.map((id) => [
          options.find(({ checks }) => checks[id])?.checks[id]?.title ?? id,
          ...options.map(({ checks }) => {
            const row = checks[id];
            if (!row) return '–';
            const use = row.utilisation === null ? '' : utilisationText(row.utilisation);
            return row.verdict === 'passes' ? use : row.verdict === 'fails' ? `${use} FAILS`.trim() : 'not judged';
          }),
        ]),
      },
    ],
  };
}

/** What each option gains in the water; why a number is missing is said once below. */
function waterOfOptions(
  appraisals: Comparison['appraisals'],
  columns: Extract<Block, { kind: 'table' }>['columns'],
  print: Print,
): Block[] {
  const { hydrodynamics, rates } = appraisals[0]!.model.document;
  if (!hydrodynamics) return [];
  const of = appraisals.map(({ model }) => waterGainRows(waterGains(model), print, rates?.currency ?? null));
  const missing = new Set<string>();
  for (const rows of of)
    for (const { title, text, beside } of rows) if (text === '–' && beside) missing.add(`${title}: ${beside}.`);
  return [
    {
      kind: 'table',
      caption: 'What the water gives: best value and, below it, low to high. Coefficients of a plate with gaps are uncertain to a factor of two or more without tests', // prettier-ignore
      columns,
      rows: of[0]!.map(({ title }, row) => [title, ...of.map((rows) => [rows[row]!.text, ...(rows[row]!.text === '–' ? [] : [rows[row]!.beside])].filter(Boolean).join('; '))]), // prettier-ignore
    },
    ...(missing.size > 0 ? [{ kind: 'list', tone: 'plain', items: [...missing] } as const] : []),
    { kind: 'paragraph', text: 'What stills the plate also loads it: reaction, lift and line load rise with added mass and drag. The lift of each option is judged by its own checks above and below.' }, // prettier-ignore
  ];
}
