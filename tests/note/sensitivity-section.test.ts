import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { modelOf } from '../../core/appraise.ts';
import { readDocument, readDocumentText, type RawDocument } from '../../core/document/read-document.ts';
import { sensitivitySection } from '../../core/note/sensitivity-section.ts';
import { sensitivityRecord } from '../../core/options/sensitivity/sensitivity-record.ts';
import { drained } from '../../core/solve/drained.ts';

const small = readDocumentText(readFileSync('samples/small.stillplate.json', 'utf8'));
const spreads = [
  { input: 'force', low: -0.1, high: 0.1, source: 'invented for this test' },
  { input: 'loss', low: 0, high: 0.5, source: 'invented for this test' },
];

const words = (raw: RawDocument, option: string | null = null): string =>
  JSON.stringify(sensitivitySection(raw, modelOf(readDocument(raw)), option));

it('tells what is kept of the spreads while it is of the document as it stands, and of which option it is', () => {
  expect(sensitivitySection(small, modelOf(readDocument(small)), null)).toEqual([]);
  const raw = { ...small, spreads, sensitivity: { points: 8 } };
  expect(words(raw)).toContain('is not kept with the document');

  const record = drained(sensitivityRecord(raw, null));
  const kept = { ...raw, sensitivity: { points: 8, record } };
  const told = words(kept);
  for (const said of [
    record.governing.title,
    'Corrosion by the end of life',
    '0 % to +50 %',
    '16 states',
    record.together.quantiles[19]!.toFixed(3),
  ])
    // prettier-ignore
    expect(told).toContain(said);
  expect(told).not.toContain('not of the option of this note');
  expect(words(kept, 'another')).toContain('of the document as it stands, not of the option of this note');

  const changed = words({ ...kept, water: { ...(small.water as object), depth: '31 m' } });
  expect(changed).toContain('of another state of the document');
  expect(changed).not.toContain('16 states');
}, 300_000);
