import type { Measure } from './measure.ts';

/** What one part of the benchmark measured, or why it stopped. */
export interface Part {
  readonly part: string;
  readonly seconds: number;
  readonly measures: readonly Measure[];
  readonly stopped?: string;
}

/** Marks of README's place for the table. */
export const [begin, end] = ['<!-- bench begins: written by npm run bench -->', '<!-- bench ends -->'];

/** One line a measure, as Markdown. */
export function table(parts: readonly Part[]): string {
  const lines = parts.flatMap(({ part, measures, stopped }) => [
    ...measures.map(
      ({ name, ratio, goal, met }) =>
        `| ${part} | ${name.replaceAll('|', '\\|')} | ${ratio.toFixed(2)} | ${goal ?? 'none'} | ${met === null ? '' : met ? 'met' : '**missed**'} |`,
    ),
    ...(stopped === undefined ? [] : [`| ${part} | ${stopped.replaceAll('|', '\\|')} | | | **stopped** |`]),
  ]);
  return ['| Part | Measured | Ratio | Goal | |', '| --- | --- | ---: | ---: | --- |', ...lines].join('\n');
}

/** README with the table in its place. Throws where the marks are not there. */
export function withTable(readme: string, text: string): string {
  const [from, to] = [readme.indexOf(begin), readme.indexOf(end)];
  if (from < 0 || to < from) throw new Error(`README.md has no place for the table: “${begin}” and “${end}”`);
  return `${readme.slice(0, from)}${begin}\n\n${text}\n\n${readme.slice(to)}`;
}
