import type { MutationReport } from './try-mutants.ts';

/** What was tried, check by check, and each slip that no test noticed. */
export function mutationText({ results, broken }: Pick<MutationReport, 'results' | 'broken'>): string {
  const lines: string[] = [];
  for (const check of new Set(results.map(({ check }) => check))) {
    const own = results.filter((result) => result.check === check);
    const left = own.filter(({ killedBy }) => killedBy === undefined);
    lines.push(
      `${check.padEnd(34)} ${own.length} slips, ${left.length === 0 ? 'all noticed' : `${left.length} not noticed`}`,
    );
    for (const { what } of left) lines.push(`    ${what}`);
  }
  for (const { file, title, error } of broken)
    lines.push(`A test fails without any slip and was left out: ${file}, ${title}: ${String(error).slice(0, 200)}`);
  lines.push(
    '',
    `${results.length} slips tried, ${results.filter(({ killedBy }) => killedBy === undefined).length} not noticed.`,
  );
  return lines.join('\n');
}
