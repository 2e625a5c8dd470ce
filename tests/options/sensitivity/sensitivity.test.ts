import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { appraise } from '../../../core/appraise.ts';
import { applyEdit } from '../../../core/document/edit.ts';
import { readDocument, readDocumentText, type RawDocument } from '../../../core/document/read-document.ts';
import { sensitivity, type Sensitivity } from '../../../core/options/sensitivity/sensitivity.ts';

const small = readDocumentText(readFileSync('samples/small.stillplate.json', 'utf8'));
const by = 'invented for this test';

function ended(raw: RawDocument): Sensitivity {
  const steps = sensitivity(readDocument(raw));
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

it('gives at each end what an appraisal of the document with that value written into it gives, the widest first', () => {
  const force = readDocument(small).loads.service.force.si;
  const { governing, moved } = ended({
    ...small,
    spreads: [
      { input: 'thickness', low: -0.2, high: 0, source: by },
      { input: 'force', low: -0.1, high: 0.25, source: by },
    ],
  });
  const used = (raw: RawDocument): number =>
    Math.max(...appraise(raw, readDocument(raw), null).rows.flatMap(({ id, utilisation }) => (id === governing.check && utilisation !== null ? [utilisation] : []))); // prettier-ignore
  expect(governing.use).toBe(used(small));
  expect(moved.map(({ input }) => input)).toEqual(['force', 'thickness']);
  const [byForce, byThickness] = moved as [Sensitivity['moved'][number], Sensitivity['moved'][number]];
  for (const [part, use] of [
    [0.9, byForce.atLow],
    [1.25, byForce.atHigh],
  ] as const) {
    const edited = applyEdit(small, { kind: 'setField', option: null, path: ['loads', 'service', 'force'], value: `${force * part} N` }); // prettier-ignore
    expect(use).toBeCloseTo(used(edited), 9);
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
