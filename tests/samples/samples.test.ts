import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { comparisonOf, reasonsIn, sampleNames } from '../../build/record-samples.ts';
import { appraise } from '../../core/appraise.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { notWhere } from '../../core/handbook/not-where.ts';
import { sampleRecord } from '../../core/selfcheck/sample-record.ts';

interface Expected {
  readonly byHand: Readonly<Record<string, { readonly value: number; readonly relativeTolerance: number; readonly how: string }>>;
  readonly recorded: { readonly options: unknown };
}

describe.each(sampleNames)('the sample “%s”', (name) => {
  const expected = JSON.parse(readFileSync(`samples/${name}.expected.json`, 'utf8')) as Expected;

  it('gives the areas, masses and counts that were worked out by hand', () => {
    const raw = readDocumentText(readFileSync(`samples/${name}.stillplate.json`, 'utf8'));
    const { quantities } = appraise(raw, readDocument(raw), null);
    expect(Object.keys(expected.byHand).length).toBeGreaterThan(4);
    for (const [id, { value, relativeTolerance }] of Object.entries(expected.byHand))
      expect(Math.abs((quantities[id]?.value ?? NaN) - value), id).toBeLessThanOrEqual(relativeTolerance * value);
  });

  it('gives the verdicts and utilisations of its expected file; what moved belongs into CHANGELOG.md', async () => {
    const comparison = await comparisonOf(name);
    expect(sampleRecord(comparison)).toEqual(expected.recorded.options);
    // The handbook tells where checks are not made: what a sample meets has to stand there (npm run record).
    for (const [id, reasons] of Object.entries(reasonsIn([comparison])))
      expect(notWhere[id], id).toEqual(expect.arrayContaining([...reasons]));
  });
});
