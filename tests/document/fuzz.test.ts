import fc from 'fast-check';
import { expect, it } from 'vitest';
import { documentHash } from '../../core/document/document-hash.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { Refusal } from '../../core/refusal.ts';
import { sampleText } from './middle.ts';
import { ownRows } from './own-rows.ts';

type Outcome = 'accepted' | 'refused';

/** Reads a text; anything but a document or a refusal with words is a failure. An accepted document has a hash. */
function outcome(text: string): Outcome {
  try {
    const raw = readDocumentText(text);
    readDocument(raw);
    expect(documentHash(raw)).toHaveLength(64);
    return 'accepted';
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    for (const { what, mend } of error.all)
      expect(
        [what, mend].every(
          (words) => words.length > 3 && !/undefined|\[object|NaN\b(?!”)/.test(words.replace(/“[^”]*”/g, '')),
        ),
      ).toBe(true);
    return 'refused';
  }
}

/** Every place in the sample's tree, as the object and the key in it. */
function places(value: unknown, found: { readonly of: Record<string, unknown>; readonly key: string }[] = []) {
  if (typeof value === 'object' && value !== null)
    for (const key of Object.keys(value)) {
      found.push({ of: value as Record<string, unknown>, key });
      places((value as Record<string, unknown>)[key], found);
    }
  return found;
}

/** The sample with rows of its own of every kind and the state of a window. */
const whole = { ...(JSON.parse(sampleText) as Record<string, unknown>), catalogue: ownRows(), view: { zoom: [1, 2] } };
const count = places(whole).length;
const scalar = fc.constantFrom<unknown>(
  0,
  -1,
  1e6,
  1e308,
  -0,
  '',
  ' ',
  '10 mm',
  '-3 in',
  '1 kg',
  '1,000 mm',
  '355 MPa',
  '5 s',
  '1e999 m',
  'A1',
  'flooded',
  'welded',
  'A1:B2',
  null,
  true,
  false,
  {},
  [],
  '__proto__',
  'toString',
  '𝕏',
  { si: 1, typed: '1 m' },
  { si: NaN, typed: '1 m' },
  [[]],
  { kind: 'welded' },
);
const value = fc.oneof(scalar, fc.jsonValue({ maxDepth: 3 }) as fc.Arbitrary<unknown>);
const change = fc.record({
  at: fc.nat({ max: count - 1 }),
  how: fc.constantFrom('put', 'take', 'copy', 'rename'),
  value,
  from: fc.nat({ max: count - 1 }),
});

it('2,000 documents with fields put, taken away, copied and renamed at random are read or refused, nothing else', () => {
  const seen: Record<Outcome, number> = { accepted: 0, refused: 0 };
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
      const document = structuredClone(whole) as Record<string, unknown>;
      for (const { at, how, value, from } of changes) {
        const all = places(document);
        const place = all[at % all.length]!;
        const other = all[from % all.length]!;
        if (how === 'put') place.of[place.key] = value;
        if (how === 'take') delete place.of[place.key];
        if (how === 'copy') place.of[place.key] = structuredClone(other.of[other.key]);
        if (how === 'rename') {
          place.of[`${place.key}s`] = place.of[place.key];
          delete place.of[place.key];
        }
      }
      seen[outcome(JSON.stringify(document))]++;
    }),
    { seed: 20260106, numRuns: 2000 },
  );
  expect(seen.accepted).toBeGreaterThan(50);
  expect(seen.refused).toBeGreaterThan(500);
});

it('500 documents with characters lost, doubled and strewn in are read or refused, nothing else', () => {
  const cut = fc.record({
    at: fc.nat({ max: sampleText.length }),
    drop: fc.nat({ max: 40 }),
    put: fc.string({ unit: 'binary', maxLength: 6 }),
  });
  fc.assert(
    fc.property(fc.array(cut, { minLength: 1, maxLength: 3 }), (cuts) => {
      outcome(cuts.reduce((text, { at, drop, put }) => text.slice(0, at) + put + text.slice(at + drop), sampleText));
    }),
    { seed: 20260107, numRuns: 500 },
  );
});
