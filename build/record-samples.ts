import { readFile, writeFile } from 'node:fs/promises';
import { readDocument, readDocumentText } from '../core/document/read-document.ts';
import { compare } from '../core/options/compare.ts';
import { programVersion } from '../core/result.ts';

export const sampleNames = ['small', 'middle', 'large', 'inch'] as const;

/** What each option of a sample gives, in figures that a person can hold against the note: verdicts and highest utilisations. */
export async function recordOf(name: string) {
  const raw = readDocumentText(await readFile(`samples/${name}.stillplate.json`, 'utf8'));
  const { options, appraisals } = compare(raw, readDocument(raw));
  return Object.fromEntries(
    options.map(({ id, quantities, fails, unjudged, findings }, i) => [
      id ?? 'base',
      {
        massKg: Number(quantities['mass.air'].toPrecision(5)),
        weightInWaterN: Number(quantities['weight.submerged'].toPrecision(5)),
        fails,
        unjudged,
        findings,
        limitStates: Object.fromEntries(
          appraisals[i]!.limitStates.map(({ name: state, verdict, highest }) => [
            state,
            highest?.utilisation == null ? verdict : `${verdict}; highest ${highest.utilisation.toFixed(3)}: ${highest.id} at ${highest.place}, ${highest.situation ?? 'no load'}`,
          ]),
        ),
      },
    ]),
  );
}

/** Writes what the samples give now beside what was worked out by hand, which stays as it is. */
export async function record(): Promise<void> {
  for (const name of sampleNames) {
    const path = `samples/${name}.expected.json`;
    const { about, byHand } = JSON.parse(await readFile(path, 'utf8')) as { about: string; byHand: unknown };
    await writeFile(path, `${JSON.stringify({ about, byHand, recorded: { programVersion, options: await recordOf(name) } }, null, 2)}\n`);
    console.log(`Wrote ${path}`);
  }
}
