import type { MutationReport } from './run-mutants.ts';
import { survived } from './survived.ts';
import type { Tried } from './try-mutants.ts';

/** What was tried, check by check, and each slip that no test noticed. A slip in a shared thing stands under its first check. */
export function mutationText({ results, broken }: MutationReport): string {
  const lines: string[] = [];
  for (const first of new Set(results.map(({ checks }) => checks[0]))) {
    const own = results.filter(({ checks }) => checks[0] === first);
    const left = own.filter(survived);
    const unseen = own.filter(({ neverANumber }) => neverANumber);
    const noticed = left.length === 0 ? 'all noticed' : `${left.length} not noticed`;
    const besides = unseen.length === 0 ? '' : `, ${unseen.length} in what is never a number other than zero`;
    lines.push(`${String(first).padEnd(34)} ${own.length} slips, ${noticed}${besides}`);
    for (const slip of left) lines.push(`    ${slipText(slip)}`);
    for (const slip of unseen) lines.push(`    (never a number other than zero) ${slipText(slip)}`);
  }
  for (const { file, title, error } of broken)
    lines.push(`A test fails without any slip and was left out: ${file}, ${title}: ${error.slice(0, 200)}`);
  const count = (of: (slip: Tried) => boolean | undefined) => results.filter(of).length;
  lines.push(
    '',
    `${results.length} slips tried, ${count(survived)} not noticed, ${count(({ neverANumber }) => neverANumber)} in inputs that are never a number other than zero in tests and samples, ${count(({ killedBy }) => killedBy?.includes('time limit'))} stopped by the time limit.`,
  );
  return lines.join('\n');
}

const slipText = ({ what, checks }: Tried): string =>
  `${what}${checks.length > 1 ? ` (shared by ${checks.length} checks)` : ''}`;
