import { resolve } from 'node:path';
import { appraise, type Appraisal } from '../../core/appraise.ts';
import { printedUnit, quantityText } from '../../core/quantity/format-quantity.ts';
import type { CheckRow } from '../../core/checks/check-row.ts';
import { mergedFindings } from '../../core/merged-findings.ts';
import { placeWords, titleAtPlace } from '../../core/place-words.ts';
import { resultOf } from '../../core/result.ts';
import { openDocument } from '../host/open-document.ts';
import { chosenOption } from './chosen-option.ts';
import { optionsOf } from './options-of.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = 'check FILE [--option ID] [--json] [--every]';

export const checkVerb: Verb = {
  usage,
  purpose: 'judges one option: masses, areas, every check, what governs, findings',
  help: [
    '  --option ID   the option to judge; by default the chosen one; "base" is the document as it stands',
    '  --json        one object with everything, SI (schema stillplate-result/1)',
    '  --every       all rows in the JSON, not only the gravest of each check, place and direction',
    '',
    'Example: stillplate check samples/middle.stillplate.json --option under-8',
  ].join('\n'),
  run: async (args, on) => {
    const { values, file } = optionsOf(
      args,
      { option: { type: 'string' }, json: { type: 'boolean' }, every: { type: 'boolean' } },
      usage,
      1,
    );
    const { raw, document } = await openDocument(resolve(on.folder, file));
    const appraisal = appraise(raw, document, chosenOption(document, values.option));
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
export function checkText({ model, optionTitle, quantities, limitStates, findings, documentHash }: Appraisal): string {
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
