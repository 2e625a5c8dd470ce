import { expect, test } from 'vitest';
import { handAgainstEngine } from '../../build/bench/hand-judged.ts';
import { modelOf } from '../../core/appraise.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { sample } from '../../build/bench/sample.ts';

/** The yardstick of `npm run bench` must do the engine's work, or its ratios compare different things. */
test('formulas written by hand for the benchmark give the numbers of the engine', async () => {
  const { compared, differences } = handAgainstEngine(modelOf(readDocument(readDocumentText(await sample('middle')))));
  expect(differences).toEqual([]);
  expect(compared).toBeGreaterThan(500);
});
