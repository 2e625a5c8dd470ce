import { resolve } from 'node:path';
import { appraise, asksSolver, type Appraisal } from '../../core/appraise.ts';
import { printedUnit, quantityText } from '../../core/quantity/format-quantity.ts';
import type { CheckRow } from '../../core/checks/check-row.ts';
import { mergedFindings } from '../../core/merged-findings.ts';
import { placeWords, titleAtPlace } from '../../core/place-words.ts';
import { resultOf } from '../../core/result.ts';
import type { Model } from '../../core/model.ts';
import { openDocument } from '../host/open-document.ts';
import { chosenOption } from './chosen-option.ts';
import { solvedFor } from '../host/solved-for.ts';
import { optionsOf } from './options-of.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = 'check FILE [--option ID] [--solver] [--json] [--every]';

export const checkVerb: Verb = {
  usage,
  purpose: 'judges one option: masses, areas, every check, what governs, findings',
  help: [
    '  --option ID   the option to judge; by default the chosen one; "base" is the document as it stands',
    '  --solver      also with the forces of the whole plate solved, though the document does not ask for them; the larger governs',
    '  --json        one object with everything, SI (schema stillplate-result/1)',
    '  --every       all rows in the JSON, not only the gravest of each check, place and direction',
    '',
    'Example: stillplate check samples/middle.stillplate.json --option under-8',
  ].join('\n'),
  run: async (args, on) => {
    const { values, file } = optionsOf(
      args,
      {
        option: { type: 'string' },
        solver: { type: 'boolean' },
        json: { type: 'boolean' },
        every: { type: 'boolean' },
      },
      usage,
      1,
    );
    const { raw, document } = await openDocument(resolve(on.folder, file));
    const option = chosenOption(document, values.option);
    const forces = solvedFor(raw, document, option, values.solver ?? false, on);
    const appraisal = appraise(raw, document, option, forces);
    on.out(
      values.json
        ? JSON.stringify(resultOf(appraisal, { every: values.every ?? false }), null, 2)
        : checkText(appraisal),
    );
    return exitOf(appraisal);
  },
};

/** 0 when every check is judged and passes, 1 otherwise. */
export const exitOf = ({ rows }: Appraisal): number =>
  rows.some(({ verdict }) => verdict === 'fails' || verdict === 'cannot be judged')
    ? exit.failsOrUnjudged
    : exit.passes;

/** What a person reads first: what decides, then what was found. */
export function checkText({
  model,
  optionTitle,
  quantities,
  limitStates,
  findings,
  documentHash,
  rows,
}: Appraisal): string {
  const { units } = model.document;
  const say = (id: string, unit: string) =>
    `  ${quantities[id]?.title}: ${quantityText(quantities[id]?.value ?? NaN, printedUnit(unit, units))}`;
  const lines = [
    `${model.document.project.name}, revision ${model.document.project.revision}. ${optionTitle}. ${model.basis.title}.`,
    `Document ${documentHash.slice(0, 16)}`,
    '',
  ];
  lines.push(
    say('mass.air', 'kg'),
    say('mass.panels', 'kg'),
    say('weight.submerged', 'kN'),
    say('mass.entrained', 'kg'),
    say('area.open', 'm^2'),
    say('ratio.open', '1'),
    '',
  );
  const sides = sidesText(rows, model);
  if (sides.length > 0) lines.push(...sides, '');
  for (const state of limitStates) {
    const { name, verdict, row, highest, fails, unjudged, made, remark } = state;
    const counts =
      made === 0
        ? ''
        : ` (${made} made${fails ? `, ${fails} fail` : ''}${unjudged ? `, ${unjudged} cannot be judged` : ''})`;
    lines.push(
      `${verdict === 'passes' ? 'passes    ' : verdict === 'fails' ? 'FAILS     ' : 'NOT JUDGED'} ${name}${counts}`,
    );
    const where = (of: CheckRow) =>
      `${titleAtPlace(model, of.title, of.place)}${of.situation ? `, ${of.situation}` : ''}`;
    if (row)
      lines.push(
        `           ${where(row)}${row.utilisation === null ? '' : `, utilisation ${row.utilisation.toFixed(2)}`}${row.reason ? `: ${row.reason}` : ''}`,
      );
    if (highest && highest !== row)
      lines.push(`           highest judged: ${where(highest)}, utilisation ${highest.utilisation?.toFixed(2)}`);
    if (remark) lines.push(`           ${remark}`);
  }
  lines.push(
    '',
    findings.length === 0 ? 'No findings.' : findings.length === 1 ? '1 finding:' : `${findings.length} findings:`,
  );
  for (const { places, text, mend } of mergedFindings(findings)) {
    const shown = places.slice(0, 4).map((place) => placeWords(model, place));
    lines.push(`  ${shown.join(', ')}${places.length > 4 ? ` and ${places.length - 4} more` : ''}: ${text} ${mend}`);
  }
  lines.push('', 'No approval: a licensed engineer reviews; local codes, class and lifting rules take precedence.');
  return lines.join('\n');
}

/** Whose forces the verdicts are made of; nothing where all are by hand because the document says so. */
function sidesText(rows: readonly CheckRow[], { solved, document: { forces, units } }: Model): string[] {
  if (solved === null) return [];
  if ('missing' in solved)
    return [`Forces by hand; those of the whole plate are asked for and missing: ${solved.missing}.`];
  const both = rows.flatMap((row) => (row.both ? [row.both] : []));
  const count = (by: 'hand' | 'solver') => both.filter(({ governs }) => governs === by).length;
  const smaller = both.filter((one) => one.smaller !== '').length;
  const { size, stressError, residual } = solved.mesh;
  return [
    `Forces by hand and of the whole plate${asksSolver({ forces }) ? '' : ' (for this run: the document takes its forces by hand)'}: ${both.length} demands are made of both; ${count('hand')} govern by hand, ${count('solver')} by the solver.`,
    ...(smaller > 0 ? [`${smaller} of them at the smaller of two values, for reasons in the document.`] : []),
    `Cells up to ${quantityText(size, printedUnit('mm', units), 3)}, stress error about ${(100 * stressError).toFixed(1)} %, balance to ${residual.toExponential(0)}.`,
  ];
}
