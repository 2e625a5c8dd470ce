import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { laidRaw, optionsOf } from '../../core/document/edit.ts';
import { optionsFrom } from '../../core/document/options-from.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';

const sample = (name: string) => readDocumentText(readFileSync(`samples/${name}.stillplate.json`, 'utf8'));

it('brings options of another document over with the designs that they need', () => {
  const [theirs, ours] = [sample('small'), sample('middle')];
  const taken = optionsFrom(theirs, ours, (id) => `${id}-taken`);
  expect(taken.map(({ id }) => id)).toEqual(optionsOf(theirs).map(({ id }) => `${id}-taken`));
  const raw = { ...ours, options: [...optionsOf(ours), ...taken] };
  for (const { id } of taken) {
    const laid = laidRaw(raw, id);
    const named = new Set(Object.values(laid['panels'] as Record<string, string>));
    expect(Object.keys(laid['designs'] as object)).toEqual(expect.arrayContaining([...named]));
  }
  expect(readDocument(raw).options).toHaveLength(optionsOf(raw).length);
});

it('joins the differences of an option’s bases, and what they take away stays taken away', () => {
  const theirs = {
    options: [
      { id: 'a', title: 'a', base: null, changes: { water: { depth: '5 m', salinity: null } } },
      { id: 'b', title: 'b', base: 'a', changes: { water: { depth: '7 m' } } },
    ],
  };
  const [, b] = optionsFrom(theirs, {}, (id) => id);
  expect(b).toMatchObject({ base: null, changes: { water: { depth: '7 m', salinity: null } } });
});
