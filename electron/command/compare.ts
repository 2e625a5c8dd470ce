import { resolve } from 'node:path';
import { compare, comparedQuantities, type Comparison } from '../../core/options/compare.ts';
import { comparedWords } from '../../core/options/compared-words.ts';
import { formatQuantity, printedUnit, unitText } from '../../core/quantity/format-quantity.ts';
import { programVersion, resultOf } from '../../core/result.ts';
import type { UnitSystem } from '../../core/quantity/format-quantity.ts';
import { openDocument } from '../host/open-document.ts';
import { chosenOption } from './chosen-option.ts';
import { exitOf } from './check.ts';
import { solvedFor } from './solved-for.ts';
import { optionsOf } from './options-of.ts';
import { tableText } from './table-text.ts';
import type { Verb } from './verbs.ts';

const usage = 'compare FILE [--against ID] [--solver] [--json]';

export const compareVerb: Verb = {
  usage,
  purpose: 'sets all options side by side: mass, weight, openness, what governs, what drives cost',
  help: '  --against ID   the option that changes are counted from; by default the document as it stands ("base")\n  --solver       with the forces of the whole plate solved as well, though the document does not ask for them\n  --json         one object: for each option its result, SI\n\nExample: stillplate compare samples/middle.stillplate.json',
  run: async (args, on) => {
    const { values, file } = optionsOf(
      args,
      { against: { type: 'string' }, solver: { type: 'boolean' }, json: { type: 'boolean' } },
      usage,
      1,
    );
    const { raw, document } = await openDocument(resolve(on.folder, file));
    const comparison = compare(raw, document, chosenOption(document, values.against ?? 'base'), (option) =>
      solvedFor(raw, document, option, values.solver ?? false, on),
    );
    on.out(values.json ? comparisonJson(comparison) : comparisonText(comparison, document.units));
    return Math.max(...comparison.appraisals.map(exitOf));
  },
};

function comparisonJson({ base, options, appraisals }: Comparison): string {
  const rows = options.map(({ id, title, change, fails, unjudged }, i) => ({
    ...resultOf(appraisals[i]!),
    id,
    title,
    change,
    fails,
    unjudged,
  }));
  return JSON.stringify({ schema: 'stillplate-result/1', programVersion, against: base, options: rows }, null, 2);
}

/** A row for each quantity and check, a column for each option. */
export function comparisonText({ options, base }: Comparison, system: UnitSystem): string {
  const head = ['', ...options.map(({ id }) => id ?? 'base')];
  const shown = (value: number, unit: string) => formatQuantity(value, printedUnit(unit, system)).number;
  const quantities = comparedQuantities.map((id) => {
    const { title, unit } = comparedWords[id];
    const printed = printedUnit(unit, system);
    return [
      `${title}${printed === '1' ? '' : `, ${unitText(printed)}`}`,
      ...options.map(
        ({ quantities: q, change }) =>
          `${shown(q[id], unit)}${change[id] === 0 ? '' : ` (${change[id] > 0 ? '+' : ''}${shown(change[id], unit)})`}`,
      ),
    ];
  });
  const ids = [...new Set(options.flatMap(({ checks }) => Object.keys(checks)))];
  const checks = ids.map((id) => [
    options.find(({ checks: c }) => c[id])?.checks[id]?.title ?? id,
    ...options.map(({ checks: c }) => {
      const row = c[id];
      if (!row) return '–';
      const use = row.utilisation === null ? '' : row.utilisation.toFixed(2);
      return row.verdict === 'passes' ? use : row.verdict === 'fails' ? `${use} FAILS`.trim() : 'not judged';
    }),
  ]);
  const totals = [
    ['Fails', ...options.map(({ fails }) => String(fails))],
    ['Cannot be judged', ...options.map(({ unjudged }) => String(unjudged))],
    ['Findings', ...options.map(({ findings }) => String(findings))],
  ];
  return [
    ...options.map(({ id, title }) => `${(id ?? 'base').padEnd(16)} ${title}`),
    '',
    `Changes in brackets are counted from “${base ?? 'base'}”. Utilisations: the gravest place and situation of each check.`,
    '',
    tableText([head, ...quantities, ...totals, ...checks]),
  ].join('\n');
}
