import { resolve } from 'node:path';
import { appraise } from '../../core/appraise.ts';
import { placeWords } from '../../core/place-words.ts';
import { printedUnit, quantityText, significant } from '../../core/quantity/format-quantity.ts';
import { recoveryCautions } from '../../core/recovery/recovery-cautions.ts';
import {
  allowedByPeriod,
  allowedFor,
  recoveryReport,
  type RecoveryReport,
} from '../../core/recovery/recovery-report.ts';
import { refusal } from '../../core/refusal.ts';
import { programVersion } from '../../core/result.ts';
import type { CheckRow } from '../../core/checks/check-row.ts';
import type { Model } from '../../core/model.ts';
import { openDocument } from '../host/open-document.ts';
import { chosenOption } from './chosen-option.ts';
import { optionsOf } from './options-of.ts';
import { tableText } from './table-text.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = 'recovery FILE [--option ID] [--json]';

/** Putting the plate down and getting it back. */
export const recoveryVerb: Verb = {
  usage,
  purpose:
    'puts the plate down and gets it back: ropes, floats, releases, and the lift stage by stage, closed beside open',
  help: [
    '  --option ID   the option to judge; by default the chosen one; "base" is the document as it stands',
    '  --json        one object with everything, SI (schema stillplate-result/1)',
    '',
    'Ends with 1 where a check of it fails or cannot be judged.',
    '',
    'Example: stillplate recovery samples/middle.stillplate.json',
  ].join('\n'),
  run: async (args, on) => {
    const { values, file } = optionsOf(args, { option: { type: 'string' }, json: { type: 'boolean' } }, usage, 1);
    const { raw, document } = await openDocument(resolve(on.folder, file));
    const appraisal = appraise(raw, document, chosenOption(document, values.option));
    const { model } = appraisal;
    const report = recoveryReport(model);
    if (!report)
      throw refusal({
        what: 'The document says nothing of recovery',
        where: { path: 'recovery' },
        mend: 'Give "recovery" with rope, float, releases and ways, as in samples/small.stillplate.json.',
      });
    const rows = appraisal.rows.filter(
      ({ id, verdict }) => /^(lift|recovery)-/.test(id) && verdict !== 'not applicable',
    );
    if (values.json) {
      const { quantities, findings, ways, canisters, emptied, lift, openLift, legs, freeEnd, acoustic, float } = report;
      const stages = (of: typeof lift) => of && { capacity: of.capacity, sea: of.sea, stages: of.stages.map((stage) => ({ ...stage, allowedHeight: allowedFor(of, stage) })), allowed: allowedByPeriod(of), water: of.water }; // prettier-ignore
      const checks = rows.map(({ id, place, verdict, demand, capacity, utilisation, reason }) => ({ id, place, verdict, demand, capacity, utilisation, reason })); // prettier-ignore
      on.out(JSON.stringify({ schema: 'stillplate-result/1', programVersion, documentHash: appraisal.documentHash, option: appraisal.optionId, quantities, ways, float, canisters: canisters.map(({ canister: _canister, ...rest }) => rest), acoustic, emptied, lift: stages(lift), openLift: stages(openLift), bridle: legs, freeEnd, checks, findings, cautions: recoveryCautions }, null, 2)); // prettier-ignore
    } else on.out(words(model, report, rows));
    return rows.some(({ verdict }) => verdict !== 'passes') ? exit.failsOrUnjudged : exit.passes;
  },
};

function words(model: Model, report: RecoveryReport, rows: readonly CheckRow[]): string {
  const { units } = model.document;
  const text = (value: number, unit: string): string => quantityText(value, printedUnit(unit, units), 4);
  const force = (value: number): string => text(value, 'kN');
  const out: string[] = [`${model.document.project.name}: putting it down, getting it back`, ''];
  for (const { title, rank, fails, releasesFalsely, mass, left, chain, commonCause } of [...report.ways].sort(
    (a, b) => a.rank - b.rank,
  )) {
    out.push(`${rank}. ${title}`);
    out.push(`   fails ${fails === null ? 'no number: rates are missing' : significant(fails, 3)}, lets go by itself ${releasesFalsely === null ? '–' : significant(releasesFalsely, 3)}, adds ${text(mass, 'kg')}, leaves ${left}`); // prettier-ignore
    out.push(`   chain: ${chain.join('; ')}`);
    if (commonCause.length > 0) out.push(`   common cause: ${commonCause.join('; ')}`);
  }
  out.push('');
  for (const [id, { value, unit, title }] of Object.entries(report.quantities)) out.push(`${id.padEnd(26)} ${text(value, unit).padStart(14)}   ${title}`); // prettier-ignore
  for (const [name, lift] of [
    ['With its panels', report.lift],
    ['The open grid', report.openLift],
  ] as const) {
    if (!lift) continue;
    out.push('', `${name}, sea of ${text(lift.sea.Hs, 'm')} significant height, ${significant(lift.sea.Tz, 3)} s`);
    out.push(tableText([
      ['Stage', 'Weight', 'Water held', 'Hook', 'Factor', 'Slack margin', 'Sea'],
      ...lift.stages.map((stage) => {
        const { title, weight, held, hook, dynamicFactor, slackMargin, snaps } = stage;
        const allowed = allowedFor(lift, stage);
        return [title, force(weight), held > 0 ? text(held, 'kg') : '–', force(hook), dynamicFactor === null ? '–' : dynamicFactor.toFixed(2), slackMargin === null ? '–' : `${slackMargin.toFixed(2)}${snaps ? ' SNAPS' : ''}`, allowed === null ? '–' : text(allowed, 'm')];
      }), // prettier-ignore
    ])); // prettier-ignore
    out.push(`Allowed significant height by mean period: ${allowedByPeriod(lift).map(({ period, splash, deep }) => `${period} s ${text(Math.min(splash, deep), 'm')}`).join(', ')}`); // prettier-ignore
  }
  out.push('');
  for (const { title, place, verdict, utilisation, reason } of rows.filter((row) => row.verdict !== 'passes' || row.near))
    out.push(`${verdict === 'passes' ? 'near      ' : verdict === 'fails' ? 'FAILS     ' : 'NOT JUDGED'} ${title}, ${placeWords(model, place)}${utilisation === null ? '' : `, utilisation ${utilisation.toFixed(2)}`}${reason ? `: ${reason}` : ''}`); // prettier-ignore
  for (const { text: said, mend } of report.findings) out.push(`${said} ${mend}`);
  out.push(
    '',
    ...recoveryCautions,
    'No approval: a licensed engineer reviews; what is here is arithmetic on what the document says.',
  );
  return out.join('\n');
}
