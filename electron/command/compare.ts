import { resolve } from 'node:path';
import { compare, comparedQuantities, type Comparison } from '../../core/options/compare.ts';
import { againstRows, turnWords } from '../../core/options/bolted-against-welded-rows.ts';
import {
  boltedAgainstWelded,
  type BoltedAgainstWelded,
  type FixedSo,
} from '../../core/options/bolted-against-welded.ts';
import { comparedWords } from '../../core/options/compared-words.ts';
import { waterGainRows } from '../../core/options/water-gain-rows.ts';
import { waterGains } from '../../core/options/water-gains.ts';
import { printIn } from '../../core/print-in.ts';
import { formatQuantity, printedUnit, unitText } from '../../core/quantity/format-quantity.ts';
import { programVersion, resultOf } from '../../core/result.ts';
import type { UnitSystem } from '../../core/quantity/format-quantity.ts';
import { openDocument } from '../host/open-document.ts';
import { chosenOption } from './chosen-option.ts';
import { exitOf } from './check.ts';
import { solvedFor } from '../host/solved-for.ts';
import { optionsOf } from './options-of.ts';
import { tableText } from './table-text.ts';
import type { Verb } from './verbs.ts';
import { utilisationText } from '../../core/quantity/utilisation-text.ts';

const usage = 'compare FILE [--against ID] [--bolted-welded] [--solver] [--json]';

export const compareVerb: Verb = {
  usage,
  purpose:
    'sets all options side by side: mass, weight, openness, what governs, what drives cost, what the water gives',
  help: '  --against ID   the option that changes are counted from; by default the document as it stands ("base")\n  --solver       with the forces of the whole plate solved as well, though the document does not ask for them\n  --bolted-welded  instead of all options: the one named by --against (by default as the document stands) bolted\n                 and welded with everything else equal, and what would turn the decision round\n  --json         one object: for each option its result, SI\n\nExample: stillplate compare samples/middle.stillplate.json',
  run: async (args, on) => {
    const { values, file } = optionsOf(
      args,
      {
        against: { type: 'string' },
        'bolted-welded': { type: 'boolean' },
        solver: { type: 'boolean' },
        json: { type: 'boolean' },
      },
      usage,
      1,
    );
    const { raw, document } = await openDocument(resolve(on.folder, file));
    if (values['bolted-welded']) {
      const against = boltedAgainstWelded(raw, chosenOption(document, values.against ?? 'base'), (...of) =>
        solvedFor(...of, values.solver ?? false, on),
      );
      on.out(values.json ? againstJson(against) : againstText(against, document.units));
      return Math.max(exitOf(against.bolted.appraisal), exitOf(against.welded.appraisal));
    }
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
    water: appraisals[i]!.model.document.hydrodynamics ? waterGains(appraisals[i]!.model) : null,
  }));
  return JSON.stringify({ schema: 'stillplate-result/1', programVersion, against: base, options: rows }, null, 2);
}

function againstJson({ from, bolted, welded, said, turns }: BoltedAgainstWelded): string {
  const side = ({ kind, appraisal, work, cost, fatigueLife, fails, unjudged }: FixedSo) => ({
    ...resultOf(appraisal),
    kind,
    work,
    cost,
    fatigueLife,
    fails,
    unjudged,
  });
  return JSON.stringify(
    {
      schema: 'stillplate-bolted-welded/1',
      programVersion,
      from,
      bolted: side(bolted),
      welded: side(welded),
      said,
      turns,
    },
    null,
    2,
  );
}

/** The page as text: bolted and welded line by line, how the other was made up, and what would turn the decision. */
function againstText(against: BoltedAgainstWelded, system: UnitSystem): string {
  const print = printIn(system);
  return [
    ...against.said,
    '',
    ...againstRows(against, print).flatMap(({ title, bolted, welded, source }) => [
      title,
      `  bolted  ${bolted}`,
      `  welded  ${welded}`,
      `  from    ${source}`,
    ]),
    '',
    ...turnWords(against, print),
    'The page decides nothing: whoever signs weighs it, and the yard’s and class’s own rules on hot work and bolting come first.',
  ].join('\n');
}

/** A row for each quantity and check, a column for each option. */
export function comparisonText({ options, base, appraisals }: Comparison, system: UnitSystem): string {
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
      const use = row.utilisation === null ? '' : utilisationText(row.utilisation);
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
    ...waterText(appraisals, head, system),
  ].join('\n');
}

/** What each option gains in the water, with its range below it; nothing where the document does not describe the water. */
function waterText(appraisals: Comparison['appraisals'], head: string[], system: UnitSystem): string[] {
  const { hydrodynamics, rates } = appraisals[0]!.model.document;
  if (!hydrodynamics) return [];
  const of = appraisals.map(({ model }) => waterGainRows(waterGains(model), printIn(system), rates?.currency ?? null));
  const missing = new Set(of.flat().flatMap(({ title, text, beside }) => (text === '–' && beside ? [`${title}: ${beside}.`] : []))); // prettier-ignore
  const rows = of[0]!.flatMap(({ title }, row) => {
    const cells = of.map((own) => own[row]!);
    const ranges = cells.map(({ text, beside }) => (text === '–' ? '' : beside));
    return [[title, ...cells.map(({ text }) => text)], ...(ranges.some(Boolean) ? [['', ...ranges]] : [])];
  });
  return [
    '',
    'What the water gives: best value, below it low to high. Without tests a factor of two or more.',
    '',
    tableText([head, ...rows]),
    ...missing,
  ];
}
