import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { modelOf } from '../../../core/appraise.ts';
import { checkRows } from '../../../core/checks/evaluate-check.ts';
import { checks } from '../../../core/checks/index.ts';
import { readDocument, readDocumentText } from '../../../core/document/read-document.ts';
import { laidRaw } from '../../../core/document/edit.ts';
import { readQuantity } from '../../../core/quantity/read-quantity.ts';
import { thickerIsBetter } from '../../../core/options/search/thicker-is-better.ts';

// Steels hold their strength in bands of thickness: the list crosses the first of them (EN 10025-2: 16 mm).
const thicknesses = ['3 mm', '4 mm', '6 mm', '10 mm', '16 mm', '20 mm'];

it('names checks that exist', () => {
  for (const id of thickerIsBetter) expect(checks.some((check) => check.id === id)).toBe(true);
});

it.each([
  ['small', null],
  ['small', 'welded'],
  ['middle', 'top-4-welded'],
  ['inch', null],
] as const)(
  'of the sample %s, option %s: no declared check rises with the panel’s thickness and all else the same, at any place in any situation',
  (name, option) => {
    const document = readDocument(
      laidRaw(readDocumentText(readFileSync(`samples/${name}.stillplate.json`, 'utf8')), option),
    );
    const used = new Map<string, number>();
    let compared = 0;
    for (const typed of thicknesses) {
      const thickness = readQuantity(typed, 'length');
      const model = modelOf({
        ...document,
        designs: Object.fromEntries(
          Object.entries(document.designs).map(([key, design]) => [key, { ...design, thickness }]),
        ),
      });
      for (const check of checks) {
        if (!thickerIsBetter.has(check.id)) continue;
        for (const { place, situation, verdict, utilisation } of checkRows(check, model).rows) {
          if (verdict === 'not applicable' || verdict === 'cannot be judged' || utilisation === null) continue;
          const key = `${check.id} ${place} ${situation}`;
          const before = used.get(key);
          if (before !== undefined) {
            // What passes at any thickness is no matter: only a fail is carried over to thinner plates.
            if (utilisation > 1) expect(before, `${key} at ${typed}`).toBeGreaterThan(1);
            compared++;
          }
          used.set(key, utilisation);
        }
      }
    }
    expect(compared).toBeGreaterThan(20);
  },
  300_000,
);
