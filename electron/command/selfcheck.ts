import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { compare } from '../../core/options/compare.ts';
import { refusal } from '../../core/refusal.ts';
import { sampleRecord } from '../../core/selfcheck/sample-record.ts';
import {
  publishedRows,
  sampleRows,
  selfcheckOf,
  tracedRows,
  type SelfcheckRow,
} from '../../core/selfcheck/selfcheck.ts';
import { writeFileWhole } from '../host/write-file.ts';
import { optionsOf } from './options-of.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = 'selfcheck [--samples LIST] [--json] [--pdf FILE]';
const every = ['small', 'middle', 'large', 'inch'];

export const selfcheckVerb: Verb = {
  usage,
  purpose:
    'proves the program on this machine: published values, printed against computed, samples against what is recorded',
  help: [
    `  --samples LIST   of ${every.join(',')}; all by default (about half a minute), none for the published values alone`,
    '  --json           every comparison as one object (schema stillplate-selfcheck/1)',
    '  --pdf FILE       the same as a report to file with a release: sources, values, what was not compared, limits',
    '',
    'What it shows: formulas and methods give values from outside this program again; every check that a sample makes gives,',
    'to the bit, what its printed expressions give; samples give what is recorded. What it does not: whether a plate is right,',
    'and the checks that are not compared with an outside value: they are named, each with the reason.',
    '',
    'Example: stillplate selfcheck --samples small',
  ].join('\n'),
  run: async (args, on) => {
    const { values } = optionsOf(
      args,
      { samples: { type: 'string' }, json: { type: 'boolean' }, pdf: { type: 'string' } },
      usage,
      0,
    );
    const names = values.samples === undefined ? every : values.samples === 'none' ? [] : values.samples.split(',');
    const unknown = names.find((name) => !every.includes(name));
    if (unknown !== undefined)
      throw refusal({ what: `There is no sample “${unknown}”`, where: { option: '--samples' }, mend: `Use some of: ${every.join(',')}, or none.` }); // prettier-ignore
    const rows: SelfcheckRow[] = [...publishedRows()];
    for (const name of names) rows.push(...(await ofSample(name)));
    const report = selfcheckOf(rows);
    const differ = rows.filter(({ verdict }) => verdict === 'DIFFERS');
    const code = differ.length === 0 ? exit.passes : exit.failsOrUnjudged;
    const machine = `Node ${process.version}, ${process.platform} ${process.arch}`;
    if (values.pdf !== undefined) {
      const [{ verificationReport }, { writeNote }] = await Promise.all([
        import('../../core/selfcheck/verification-report.ts'),
        import('../host/note/write-note.ts'),
      ]);
      const date = new Date().toISOString().slice(0, 10);
      await writeFileWhole(
        resolve(on.folder, values.pdf),
        await writeNote(verificationReport(report, { date, machine })),
      );
      on.err(`Wrote ${values.pdf}.`);
    }
    if (values.json) {
      on.out(JSON.stringify(report, null, 2));
      return code;
    }
    on.out(`Stillplate ${report.programVersion}, on ${machine}`);
    const outside = rows.filter(({ kind }) => kind === 'published');
    on.out(`Values from outside this program, of ${report.registered.compared} of ${report.registered.checks} checks:`);
    for (const family of new Set(outside.map((row) => row.family))) {
      on.out(`${family}:`);
      for (const row of outside.filter((each) => each.family === family)) on.out(`  ${lineOf(row)}`);
    }
    for (const [kind, title] of [
      ['traced', 'Computed against printed expressions'],
      ['sample', 'Samples against what is recorded'],
    ] as const) {
      // prettier-ignore
      const own = rows.filter((row) => row.kind === kind);
      if (own.length > 0) on.out(`${title}: ${own.filter(({ verdict }) => verdict !== 'DIFFERS').length} of ${own.length} as expected`); // prettier-ignore
      for (const row of own.filter(({ verdict }) => verdict === 'DIFFERS')) on.out(`  ${lineOf(row)}`);
    }
    on.out('Not compared with an outside value:');
    for (const { id, reason } of report.withoutOutsideValue) on.out(`  ${id}: ${reason}`);
    on.out(
      differ.length === 0 ? 'All as expected.' : `${differ.length} DIFFER: do not rely on this copy of the program.`,
    );
    return code;
  },
};

const lineOf = ({ verdict, id, unit, expected, got, tolerance, source }: SelfcheckRow): string => {
  const difference = typeof got === 'number' && typeof expected === 'number' && got !== expected ? `, difference ${Number((got - expected).toPrecision(2))}` : ''; // prettier-ignore
  return `${verdict}: ${id}: expected ${expected}${tolerance > 0 ? ` ± ${Number(tolerance.toPrecision(3))}` : ''}${unit && ` ${unit}`}, got ${typeof got === 'number' && !Number.isInteger(got) ? Number(got.toPrecision(7)) : got}${difference} (${source})`; // prettier-ignore
};

async function ofSample(name: string): Promise<readonly SelfcheckRow[]> {
  const folder = samplesFolder();
  const raw = readDocumentText(await readFile(join(folder, `${name}.stillplate.json`), 'utf8'));
  const { recorded } = JSON.parse(await readFile(join(folder, `${name}.expected.json`), 'utf8')) as { recorded: { options: unknown } }; // prettier-ignore
  const comparison = compare(raw, readDocument(raw));
  const traced = comparison.appraisals.flatMap((appraisal) => tracedRows(appraisal, `${name}, ${appraisal.optionId ?? 'base'}`)); // prettier-ignore
  return [...traced, ...sampleRows(name, recorded.options, sampleRecord(comparison))];
}

/** The samples go with the program: beside the source, and two folders above the bundle. */
function samplesFolder(): string {
  for (let at = dirname(fileURLToPath(import.meta.url)); ; at = dirname(at)) {
    if (existsSync(join(at, 'samples', 'small.expected.json'))) return join(at, 'samples');
    if (at === dirname(at))
      throw refusal({
        what: 'The samples are not beside the program',
        mend: 'Install it whole, or use --samples none.',
      });
  }
}
