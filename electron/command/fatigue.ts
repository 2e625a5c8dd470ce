import { resolve } from 'node:path';
import { appraise } from '../../core/appraise.ts';
import { fatigueReport, type FatigueReport } from '../../core/checks/fatigue-report.ts';
import { countedCycles } from '../../core/fatigue/counted-cycles.ts';
import { minerSum } from '../../core/fatigue/miner-sum.ts';
import { environmentWords, snCurve, snCurveNames, type Environment } from '../../core/fatigue/sn-curve.ts';
import { stressRecord } from '../../core/fatigue/stress-record.ts';
import { thicknessFactor } from '../../core/fatigue/thickness-factor.ts';
import { placeWords } from '../../core/place-words.ts';
import { significant } from '../../core/quantity/format-quantity.ts';
import { readQuantity } from '../../core/quantity/read-quantity.ts';
import { Refusal, refusal } from '../../core/refusal.ts';
import { programVersion, sourceText } from '../../core/result.ts';
import { openDocument } from '../host/open-document.ts';
import { openRecord } from '../host/open-record.ts';
import { solvedFor } from '../host/solved-for.ts';
import { chosenOption } from './chosen-option.ts';
import { optionsOf } from './options-of.ts';
import { exit, type Terminal } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = 'fatigue FILE [--curve CLASS] [--environment WHERE] [--thickness T] [--option ID] [--solver] [--json]';
const MPa = 1e6;

/** Counts and sums a stress record, or gives the life of each detail of a document. */
export const fatigueVerb: Verb = {
  usage,
  purpose: 'counts the cycles of a stress record and sums their damage; or gives the life of each detail of a document',
  help: [
    'A record (.csv): one column, the stress in MPa, with a header or none',
    `  --curve CLASS         S-N curve: ${snCurveNames.slice(0, 14).join(' ')}, or a detail category (90), which holds in air`,
    '  --environment WHERE   air, protected (in the sea, with cathodic protection) or free (in the sea, free to corrode)',
    '  --thickness 40mm      of the part at the detail; beyond the curve’s reference thickness the ranges count for more',
    'A document (.stillplate): the life of each detail',
    '  --option ID           the option to judge; by default the chosen one; "base" is the document as it stands',
    '  --solver              also with the forces of the whole plate solved, though the document does not ask for them; the graver counts',
    'Either',
    '  --json                one object: cycles (range, mean and count, in MPa) and damage; or details with damage and life',
    '',
    'Cycles are counted by rainflow (ASTM E1049-85, 5.4.4), what stays open as halves; means play no part, as welded.',
    '',
    'Example: stillplate fatigue samples/weld-stress.csv --curve F --environment protected',
  ].join('\n'),
  run: async (args, on) => {
    const { values, file } = optionsOf(
      args,
      {
        curve: { type: 'string' },
        environment: { type: 'string' },
        thickness: { type: 'string' },
        option: { type: 'string' },
        solver: { type: 'boolean' },
        json: { type: 'boolean' },
      },
      usage,
      1,
    );
    const path = resolve(on.folder, file);
    const stray = (name: 'curve' | 'environment' | 'thickness' | 'option' | 'solver', is: string, mend: string) => {
      if (values[name] !== undefined)
        throw refusal({ what: `“--${name}” is not for ${is}`, where: { option: `--${name}` }, mend });
    };
    // A record is a column of numbers: what is JSON is a document, whatever its name.
    if (/\.(stillplate|json)$/i.test(file)) {
      for (const name of ['curve', 'environment', 'thickness'] as const)
        stray(name, 'a document', 'Leave it out: the document says what its details are and where.');
      return ofDocument(path, values, on);
    }
    for (const name of ['option', 'solver'] as const)
      stray(name, 'a record', 'Leave it out, or name a document (.stillplate or .json).');
    return ofRecord(path, values, on);
  },
};

interface DocumentOptions {
  readonly option?: string | undefined;
  readonly solver?: boolean | undefined;
  readonly json?: boolean | undefined;
}

interface RecordOptions {
  readonly curve?: string | undefined;
  readonly environment?: string | undefined;
  readonly thickness?: string | undefined;
  readonly json?: boolean | undefined;
}

async function ofRecord(
  path: string,
  { curve: named, environment, thickness, json }: RecordOptions,
  on: Terminal,
): Promise<number> {
  if (named === undefined)
    throw refusal({
      what: 'The S-N curve is missing',
      where: { option: '--curve' },
      mend: `Write --curve with one of ${snCurveNames.join(', ')}.`,
    });
  const curve = snCurve(named, environmentOf(environment));
  const factor = thickness === undefined ? 1 : thicknessFactor(curve, lengthOf(thickness));
  const series = stressRecord(await openRecord(path));
  const cycles = countedCycles(series);
  const damage = minerSum(curve, cycles, factor);
  const inMPa = cycles.map(({ range, mean, count }) => ({ range: range / MPa, mean: mean / MPa, count }));
  const count = cycles.reduce((sum, of) => sum + of.count, 0);
  if (json)
    on.out(
      JSON.stringify(
        {
          schema: 'stillplate-result/1',
          programVersion,
          curve: curve.name,
          environment: curve.environment,
          source: sourceText(curve.source),
          counting: 'ASTM E1049-85, 5.4.4',
          thicknessFactor: factor,
          values: series.length,
          unit: 'MPa',
          count,
          cycles: inMPa,
          damage,
        },
        null,
        2,
      ),
    );
  else {
    on.out(`${series.length} values, ${count} cycles by rainflow (ASTM E1049-85, 5.4.4)`);
    if (inMPa.length > 0) on.out(`Largest range ${significant(inMPa.at(-1)!.range, 4)} MPa`);
    on.out(`Curve ${curve.name} ${environmentWords[curve.environment]} (${sourceText(curve.source)})`);
    if (factor !== 1) on.out(`Thickness: every range times ${significant(factor, 4)}`);
    on.out(
      `Damage of the record ${significant(damage, 4)}${damage > 0 ? `, so it may come ${significant(1 / damage, 4)} times` : ''}`,
    );
    on.out('');
    on.out(
      'No approval: divide what it may come by a design fatigue factor for access and consequence; a licensed engineer reviews.',
    );
  }
  return exit.passes;
}

function environmentOf(text: string | undefined): Environment {
  if (text === 'air' || text === 'protected' || text === 'free') return text;
  throw refusal({
    what: text === undefined ? 'The environment is missing' : `“${text}” is no environment of an S-N curve`,
    where: { option: '--environment' },
    mend: 'Write --environment air, protected or free.',
  });
}

function lengthOf(text: string): number {
  try {
    const { si } = readQuantity(text, 'length');
    if (si > 0) return si;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    throw refusal({ what: error.what, where: { option: '--thickness' }, mend: error.mend });
  }
  throw refusal({
    what: `“${text}” must be more than zero`,
    where: { option: '--thickness' },
    mend: 'Write a thickness such as 25mm.',
  });
}

async function ofDocument(
  path: string,
  { option: named, solver, json }: DocumentOptions,
  on: Terminal,
): Promise<number> {
  const { raw, document } = await openDocument(path);
  const option = chosenOption(document, named);
  const appraisal = appraise(raw, document, option, solvedFor(raw, document, option, solver ?? false, on));
  const report = fatigueReport(appraisal.model, appraisal.rows);
  on.out(
    json
      ? JSON.stringify(
          {
            schema: 'stillplate-result/1',
            programVersion,
            documentHash: appraisal.documentHash,
            option: appraisal.optionId,
            ...report,
          },
          null,
          2,
        )
      : reportText(appraisal.model, report),
  );
  return report.details.some(({ verdict }) => verdict !== 'passes') ? exit.failsOrUnjudged : exit.passes;
}

function reportText(
  model: Parameters<typeof placeWords>[0],
  { history, environment, factor, details }: FatigueReport,
): string {
  const lines = [
    `${model.document.project.name}: life of each detail, ${environment.words}`,
    history.words,
    `Design fatigue factor ${factor.value}: ${factor.reason}`,
    '',
  ];
  for (const { title, place, verdict, life, needed, damage, curve, range, reason, mend } of details.filter(
    ({ leads }) => leads,
  )) {
    const word = verdict === 'passes' ? 'passes    ' : verdict === 'fails' ? 'FAILS     ' : 'NOT JUDGED';
    lines.push(`${word} ${title}, ${placeWords(model, place)}`);
    if (damage === null) lines.push(`           ${reason}`);
    else
      lines.push(
        `           class ${curve}, range ${significant((range ?? 0) / MPa, 3)} MPa, damage ${significant(damage, 3)}, life ${life === null ? 'without end' : `${significant(life, 3)} years`} of ${significant(needed, 3)} needed`,
      );
    if (verdict !== 'passes') lines.push(`           To change: ${mend}`);
  }
  lines.push('', 'No approval: a licensed engineer reviews; local codes, class and lifting rules take precedence.');
  return lines.join('\n');
}
