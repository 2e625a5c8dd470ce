import { readFile, writeFile } from 'node:fs/promises';
import { checks } from '../core/checks/index.ts';
import { readDocument, readDocumentText } from '../core/document/read-document.ts';
import { compare, type Comparison } from '../core/options/compare.ts';
import { programVersion } from '../core/result.ts';
import { sampleRecord } from '../core/selfcheck/sample-record.ts';

export const sampleNames = ['small', 'middle', 'large', 'inch'] as const;

/** A sample with all its options, appraised now. */
export async function comparisonOf(name: string): Promise<Comparison> {
  const raw = readDocumentText(await readFile(`samples/${name}.stillplate.json`, 'utf8'));
  return compare(raw, readDocument(raw));
}

/** Why checks were not made, by their ids: each reason that an option of these comparisons met. */
export function reasonsIn(comparisons: readonly Comparison[]): Readonly<Record<string, readonly string[]>> {
  const reasons: Record<string, string[]> = {};
  for (const { appraisals } of comparisons)
    for (const { id, verdict, reason } of appraisals.flatMap(({ rows }) => rows))
      if (verdict === 'not applicable' && !reasons[id]?.includes(reason)) (reasons[id] ??= []).push(reason);
  return Object.fromEntries(checks.flatMap(({ id }) => (reasons[id] ? [[id, reasons[id].sort()]] : [])));
}

/** Writes what the samples give now beside what was worked out by hand, which stays as it is; and what the handbook says of where checks are not made. */
export async function record(): Promise<void> {
  const comparisons: Comparison[] = [];
  for (const name of sampleNames) {
    const comparison = await comparisonOf(name);
    comparisons.push(comparison);
    const path = `samples/${name}.expected.json`;
    const { about, byHand } = JSON.parse(await readFile(path, 'utf8')) as { about: string; byHand: unknown };
    await writeFile(
      path,
      `${JSON.stringify({ about, byHand, recorded: { programVersion, options: sampleRecord(comparison) } }, null, 2)}\n`,
    );
    console.log(`Wrote ${path}`);
  }
  const path = 'core/handbook/not-where.ts';
  await writeFile(path, notWhereText(reasonsIn(comparisons)));
  console.log(`Wrote ${path}`);
}

const notWhereText = (reasons: Readonly<Record<string, readonly string[]>>): string =>
  `/** Why a check was not made somewhere in a sample, by its id. Written by npm run record. */
export const notWhere: Readonly<Record<string, readonly string[]>> = ${JSON.stringify(reasons, null, 2)};
`;
