import type { MutationReport } from './run-mutants.ts';

/** What was tried, check by check, and each slip that no test noticed. A slip in a shared thing stands under its first check. */
export function mutationText({ results, broken }: MutationReport): string {
  const lines: string[] = [];
  for (const first of new Set(results.map(({ checks }) => checks[0]))) {
    const own = results.filter(({ checks }) => checks[0] === first);
    const left = own.filter(({ killedBy }) => killedBy === undefined);
    lines.push(
      `${String(first).padEnd(34)} ${own.length} slips, ${left.length === 0 ? 'all noticed' : `${left.length} not noticed`}`,
    );
    for (const { what, checks } of left)
      lines.push(`    ${what}${checks.length > 1 ? ` (shared by ${checks.length} checks)` : ''}`);
  }
  for (const { file, title, error } of broken)
    lines.push(`A test fails without any slip and was left out: ${file}, ${title}: ${error.slice(0, 200)}`);
  const stopped = results.filter(({ killedBy }) => killedBy?.includes('time limit')).length;
  lines.push(
    '',
    `${results.length} slips tried, ${results.filter(({ killedBy }) => killedBy === undefined).length} not noticed, ${stopped} stopped by the time limit.`,
  );
  return lines.join('\n');
}
