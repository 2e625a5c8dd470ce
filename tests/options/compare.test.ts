import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { compare } from '../../core/options/compare.ts';

it('names the option that cannot be appraised, whichever was asked for', () => {
  const small = readDocumentText(readFileSync('samples/small.stillplate.json', 'utf8'));
  const [design] = Object.keys(small.designs as object);
  const odd = { id: 'odd', title: 'Of an odd plate', base: null, changes: { designs: { [design!]: { material: 'no such plate' } } } }; // prettier-ignore
  const raw = { ...small, options: [...(small.options as unknown[]), odd] };
  expect(() => compare(raw, readDocument(raw))).toThrow(/Option “Of an odd plate”: .*no such plate.* Nearest are/);
}, 300_000);
