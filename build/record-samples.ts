import { readFile, writeFile } from 'node:fs/promises';
import { readDocument, readDocumentText } from '../core/document/read-document.ts';
import { compare } from '../core/options/compare.ts';
import { programVersion } from '../core/result.ts';
import { sampleRecord } from '../core/selfcheck/sample-record.ts';

export const sampleNames = ['small', 'middle', 'large', 'inch'] as const;

/** What a sample gives now. */
export async function recordOf(name: string) {
  const raw = readDocumentText(await readFile(`samples/${name}.stillplate.json`, 'utf8'));
  return sampleRecord(compare(raw, readDocument(raw)));
}

/** Writes what the samples give now beside what was worked out by hand, which stays as it is. */
export async function record(): Promise<void> {
  for (const name of sampleNames) {
    const path = `samples/${name}.expected.json`;
    const { about, byHand } = JSON.parse(await readFile(path, 'utf8')) as { about: string; byHand: unknown };
    await writeFile(
      path,
      `${JSON.stringify({ about, byHand, recorded: { programVersion, options: await recordOf(name) } }, null, 2)}\n`,
    );
    console.log(`Wrote ${path}`);
  }
}
