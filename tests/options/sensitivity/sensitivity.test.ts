import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { appraise } from '../../../core/appraise.ts';
import { applyEdit } from '../../../core/document/edit.ts';
import { readDocument, readDocumentText, type RawDocument } from '../../../core/document/read-document.ts';
import { countedRandom } from '../../../core/counted-random.ts';
import { sensitivityKey, sensitivityRecord } from '../../../core/options/sensitivity/sensitivity-record.ts';
import { drained } from '../../../core/solve/drained.ts';
import { sensitivity, type Sensitivity } from '../../../core/options/sensitivity/sensitivity.ts';

const small = readDocumentText(readFileSync('samples/small.stillplate.json', 'utf8'));
const by = 'invented for this test';

/** Highest utilisation of checks by their titles, of the document appraised in full. */
const usedBy = (titles: readonly string[], raw: RawDocument): number =>
  Math.max(...appraise(raw, readDocument(raw), null).rows.flatMap(({ title, utilisation }) => (titles.includes(title) && utilisation !== null ? [utilisation] : []))); // prettier-ignore
const withForce = (newtons: number): RawDocument =>
  applyEdit(small, { kind: 'setField', option: null, path: ['loads', 'service', 'force'], value: `${newtons} N` });

const ended = (raw: RawDocument): Sensitivity => drained(sensitivity(readDocument(raw)));

it('gives at each end what an appraisal of the document with that value written into it gives, the widest first', () => {
  const force = readDocument(small).loads.service.force.si;
  const { governing, moved } = ended({
    ...small,
    spreads: [
      { input: 'thickness', low: -0.2, high: 0, source: by },
      { input: 'force', low: -0.1, high: 0.25, source: by },
    ],
  });
  const used = (raw: RawDocument): number => usedBy([governing.title], raw);
  expect(governing.use).toBe(used(small));
  expect(moved.map(({ input }) => input)).toEqual(['force', 'thickness']);
  const [byForce, byThickness] = moved as [Sensitivity['moved'][number], Sensitivity['moved'][number]];
  for (const [part, use] of [
    [0.9, byForce.atLow],
    [1.25, byForce.atHigh],
  ] as const) {
    expect(use).toBeCloseTo(used(withForce(force * part)), 9);
  }
  const thinner = Object.entries(readDocument(small).designs).reduce<RawDocument>(
    (on, [name, { thickness }]) => applyEdit(on, { kind: 'setField', option: null, path: ['designs', name, 'thickness'], value: `${thickness.si * 0.8} m` }), // prettier-ignore
    small,
  );
  expect(byThickness.atLow).toBeCloseTo(used(thinner), 9);
  expect(byThickness.atHigh).toBe(governing.use);
}, 300_000);

it('refuses without a stated spread, and a spread given twice', () => {
  expect(() => ended(small)).toThrow(/No spread of an input is stated/);
  const twice = { input: 'force', low: 0, high: 0.1, source: by };
  expect(() => readDocument({ ...small, spreads: [twice, twice] })).toThrow(/given twice/);
});

it('tells of all inputs at once what appraisals of the documents with the sampled values written into them give', () => {
  const force = readDocument(small).loads.service.force.si;
  const raw = { ...small, spreads: [{ input: 'force', low: -0.1, high: 0.25, source: by }], sensitivity: { points: 8, seed: 5 } }; // prettier-ignore
  const { together, of } = drained(sensitivityRecord(raw, null));
  const states = Array.from({ length: 16 }, (_, i) =>
    usedBy(together.watched, withForce(force * (0.9 + 0.35 * countedRandom(5, i)))),
  ).sort((a, b) => a - b);
  expect(together.quantiles[0]).toBeCloseTo(states[0]!, 9);
  expect(together.quantiles[10]).toBeCloseTo((states[7]! + states[8]!) / 2, 9);
  expect(together.quantiles[20]).toBeCloseTo(states[15]!, 9);
  expect(together.partOverOne).toBe(states.filter((use) => use > 1).length / 16);
  expect(together.mean).toBeCloseTo(states.reduce((sum, use) => sum + use, 0) / 16, 9);
  // One input alone has all of the variance.
  expect(together.shares).toEqual([{ input: 'force', first: expect.any(Number) as number, total: expect.any(Number) as number }]); // prettier-ignore

  // Kept with the document it is still of it; of another seed, spread or plate it is not.
  const kept = (changed: RawDocument) => sensitivityKey(changed, null) === of;
  expect(kept({ ...raw, sensitivity: { points: 8, seed: 5, record: { of } } })).toBe(true);
  expect(kept({ ...raw, sensitivity: { points: 8, seed: 6 } })).toBe(false);
  expect(kept({ ...raw, spreads: [{ input: 'force', low: -0.1, high: 0.2, source: by }] })).toBe(false);
  expect(kept({ ...withForce(1000), spreads: raw.spreads, sensitivity: raw.sensitivity })).toBe(false);
}, 300_000);
