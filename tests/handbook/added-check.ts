import { readFileSync } from 'node:fs';
import { appraise } from '../../core/appraise.ts';
import { stepsOf } from '../../core/checks/evaluate-check.ts';
import { checks } from '../../core/checks/index.ts';
import { checkDimensions } from '../../core/derive/dimensions.ts';
import { readFormula } from '../../core/derive/formula.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { theoryOf } from '../../core/handbook/theory-of.ts';
import { fullCheck } from '../../core/note/check-sections.ts';
import { publishedRows } from '../../core/selfcheck/selfcheck.ts';
import type { Safety } from '../../core/source.ts';

/** What a check gives on a sample, by both kinds of basis where it has them: its dimensions hold, or this throws. */
export function added(id: string, sample: string) {
  const check = checks.find((each) => each.id === id)!;
  for (const safety of Object.keys(check.steps) as Safety[]) {
    const given = Object.entries(check.inputs).map(([symbol, { unit }]) => [symbol, unit]);
    const units = Object.fromEntries([...given, ...stepsOf(check, safety).map(({ symbol, unit }) => [symbol, unit])]) as Record<string, string>; // prettier-ignore
    for (const step of stepsOf(check, safety))
      if ('expression' in step) checkDimensions(readFormula(step.expression, new Set(Object.keys(units))), step.unit, units); // prettier-ignore
  }
  const raw = readDocumentText(readFileSync(sample, 'utf8'));
  const { rows, model, findings } = appraise(raw, readDocument(raw), null);
  const own = rows.filter((row) => row.id === id);
  return { rows: own, findings: findings.filter((finding) => finding.text.startsWith(check.title)), printed: fullCheck(own[0]!, model), theory: theoryOf(check), outside: publishedRows().filter((row) => row.id.startsWith(`${id}: `)) }; // prettier-ignore
}
