import { utf8ToBytes } from '@noble/hashes/utils.js';
import { checks } from '../checks/index.ts';
import { documentHash } from '../document/document-hash.ts';
import type { Block, Note, Section } from '../note/note.ts';
import { significant } from '../quantity/format-quantity.ts';
import { limitsOfValidation } from './limits-of-validation.ts';
import { publishedValues } from './published/families.ts';
import type { Origin } from './published/published-value.ts';
import type { Selfcheck, SelfcheckRow } from './selfcheck.ts';

/** A self check as a document to file with a release: what was compared, with what, and what was not. `date`: ISO, `machine`: in words. */
export function verificationReport(report: Selfcheck, { date, machine }: { date: string; machine: string }): Note {
  const differ = report.checks.filter(({ verdict }) => verdict === 'DIFFERS');
  return {
    title: 'Verification report of the program',
    stamp: differ.length === 0 ? 'ALL AS EXPECTED' : 'DIFFERS',
    paper: 'A4',
    titleBlock: [
      ['Subject', `Stillplate ${report.programVersion}`],
      ['Run on', machine],
      ['Date', date],
    ],
    documentHash: documentHash({ ...report }),
    programVersion: report.programVersion,
    date,
    language: 'en-GB',
    sections: [
      summary(report, differ),
      published(report),
      again(report, 'traced', 'Computed against printed', 'Each check that a sample makes, at each place, made again from the expressions that its note prints: equal to the last bit.'),
      again(report, 'sample', 'Samples against what is recorded', 'Results of the samples as they were recorded when the program was released.'),
      without(report),
      limits(),
    ],
    attachments: [
      { name: 'selfcheck.json', description: 'Every comparison', mime: 'application/json', relationship: 'Data', bytes: utf8ToBytes(`${JSON.stringify(report, null, 2)}\n`) },
    ],
  };
} // prettier-ignore

function summary({ checks: rows }: Selfcheck, differ: readonly SelfcheckRow[]): Section {
  return {
    title: 'What this run says',
    blocks: [
      {
        kind: 'paragraph',
        tone: differ.length === 0 ? 'plain' : 'loud',
        text:
          differ.length === 0
            ? `All ${rows.length} comparisons came out as expected on this machine.`
            : `${differ.length} of ${rows.length} comparisons differ: do not rely on this copy of the program. They are listed below.`,
      },
      {
        kind: 'paragraph',
        text: 'It shows that this copy computes here what it computed where it was released, and gives values from outside again. It does not show that a plate is right: that is for the engineer who signs.',
      },
      ...(differ.length > 0 ? [table('What differs', differ)] : []),
    ],
  };
}

function published({ checks: rows, registered }: Selfcheck): Section {
  const own = rows.filter(({ kind }) => kind === 'published');
  const of = (origin: Origin) => publishedValues.filter((value) => value.origin === origin).length;
  const remembered = publishedValues.filter(({ memory }) => memory).length;
  const families = [...new Set(own.map(({ family }) => family))];
  return {
    title: 'Values from outside the program',
    blocks: [
      {
        kind: 'paragraph',
        text: `${registered.compared} of ${registered.checks} checks are compared here, with ${publishedValues.length} values. ${of('printed')} stand in their source as printed; ${of('by hand')} were worked with pencil and paper from the formula of the source; ${of('second method')} come from another way of solving. None was taken from the program. ${remembered} rest on a clause or a table from memory, and say so. A value agrees when it rounds to the digits that are printed.`,
      },
      ...families.map((family) =>
        table(
          family,
          own.filter((row) => row.family === family),
        ),
      ),
    ],
  };
}

/** Comparisons that are too many to print each: counted by what they are of. */
function again({ checks: rows }: Selfcheck, kind: SelfcheckRow['kind'], title: string, text: string): Section {
  const counts = new Map<string, { all: number; same: number }>();
  for (const row of rows.filter((each) => each.kind === kind)) {
    const of = row.id.split(/[,:]/)[0]!;
    const count = counts.get(of) ?? { all: 0, same: 0 };
    counts.set(of, { all: count.all + 1, same: count.same + (row.verdict === 'DIFFERS' ? 0 : 1) });
  }
  const lines = [...counts].map(([of, { all, same }]) => [of, String(all), String(same)]);
  const counted: Block =
    lines.length === 0
      ? { kind: 'paragraph', tone: 'loud', text: 'Not run: no sample was named.' }
      : {
          kind: 'table',
          caption: title,
          columns: [
            { title: 'Of', width: 0.6 },
            { title: 'Compared', width: 0.2, align: 'right' },
            { title: 'As expected', width: 0.2, align: 'right' },
          ],
          rows: lines,
        };
  return { title, blocks: [{ kind: 'paragraph', text }, counted] };
}

function without({ withoutOutsideValue, registered }: Selfcheck): Section {
  return {
    title: 'Checks not compared with an outside value',
    blocks: [
      {
        kind: 'paragraph',
        text: `${withoutOutsideValue.length} of ${registered.checks} checks. Each has a second opinion by another method and tests beside the program's source; neither is repeated here.`,
      },
      ...(withoutOutsideValue.length === 0 ? [] : [whyNot(withoutOutsideValue)]),
    ],
  };
}

const whyNot = (rows: Selfcheck['withoutOutsideValue']): Block => ({
  kind: 'table',
  caption: 'Why there is none',
  columns: [
    { title: 'Check', width: 0.38 },
    { title: 'Reason', width: 0.62 },
  ],
  rows: rows.map(({ id, reason }) => [titleOf.get(id) ?? id, reason]),
});

const limits = (): Section => ({
  title: 'Limits of validation',
  blocks: [{ kind: 'list', tone: 'caution', items: limitsOfValidation() }],
});

/** A number with the digits that its tolerance, half of the last of them, stands for. */
const asPrinted = (value: number | string, tolerance: number): string =>
  typeof value === 'string' ? value : tolerance > 0 ? value.toFixed(Math.max(0, Math.round(-Math.log10(2 * tolerance)))) : String(value); // prettier-ignore

const titleOf = new Map(checks.map(({ id, title }) => [id, title]));

/** A check's title in place of its id. */
const inWords = (id: string): string => id.replace(/^[\w-]+(?=: )/, (check) => titleOf.get(check) ?? check);

function table(caption: string, rows: readonly SelfcheckRow[]): Block {
  const printed = (value: number | string, figures = 6): string => (typeof value === 'number' ? significant(value, figures) : value);
  return {
    kind: 'table',
    caption,
    columns: [
      { title: 'What', width: 0.34 },
      { title: 'Expected', width: 0.14, align: 'right' },
      { title: 'Got', width: 0.13, align: 'right' },
      { title: 'Within', width: 0.1, align: 'right' },
      { title: 'Source', width: 0.29 },
    ],
    rows: rows.map(({ id, unit, expected, got, tolerance, source }) => [inWords(id), `${asPrinted(expected, tolerance)} ${unit}`.trim(), printed(got), printed(tolerance, 2), source]),
    loud: rows.flatMap(({ verdict }, i) => (verdict === 'DIFFERS' ? [i] : [])),
  };
} // prettier-ignore
