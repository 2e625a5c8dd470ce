import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { applyEdit } from '../../core/document/edit.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { createSearchService, type FromSearch } from '../../core/engine/search-service.ts';
import { searchKey } from '../../core/options/search/search-record.ts';

const small = readDocumentText(readFileSync('samples/small.stillplate.json', 'utf8'));
const raw = { ...small, search: { aims: ['mass', 'use'], thickness: ['4 mm', '5 mm', '6 mm'], aside: ['fatigue', 'stability'] } }; // prettier-ignore

/** Hears everything told; `waiting` are slices not yet run. */
function service() {
  const told: FromSearch[] = [];
  const waiting: (() => void)[] = [];
  const hear = createSearchService({ tell: (news) => told.push(news), later: (goOn) => waiting.push(goOn), isDue: () => true }); // prettier-ignore
  return { told, waiting, hear };
}
type Told = Extract<FromSearch, { kind: 'found' }>;

it('finds the same whether it is stopped half way and goes on or not, and tells nothing while it is stopped', () => {
  const ran = ({ stop }: { stop: boolean }): Told => {
    const { told, waiting, hear } = service();
    hear({ kind: 'search', edit: 7, raw, option: null });
    waiting.shift()!();
    if (stop) {
      hear({ kind: 'stop' });
      const before = told.length;
      while (waiting.length > 0) waiting.shift()!();
      expect(told).toHaveLength(before);
      expect(told.at(-1)).toEqual({ kind: 'stopped', edit: 7 });
      hear({ kind: 'go on' });
    }
    while (waiting.length > 0) waiting.shift()!();
    return told.at(-1) as Told;
  };
  const whole = ran({ stop: false });
  expect(whole.kind).toBe('found');
  expect(whole.found.length).toBeGreaterThan(0);
  expect(ran({ stop: true })).toEqual(whole);

  // What it hands out for the document goes into it as it is, and is of that document until something in it changes.
  const kept = applyEdit(raw, { kind: 'setField', option: null, path: ['search', 'record'], value: structuredClone(whole.record) as never }); // prettier-ignore
  expect(readDocument(kept).search!.record).toEqual(whole.record);
  expect(searchKey(kept, null)).toBe(whole.record.of);
  const thicker = applyEdit(kept, { kind: 'setField', option: null, path: ['search', 'thickness'], value: ['9 mm'] });
  expect(searchKey(thicker, null)).not.toBe(whole.record.of);
  const taken = applyEdit(kept, { kind: 'addOption', option: whole.found[0]!.option });
  expect(searchKey(taken, null)).toBe(whole.record.of);
}, 300_000);

it('refuses what cannot be searched, in words', () => {
  const { told, waiting, hear } = service();
  hear({ kind: 'search', edit: 1, raw: { ...raw, search: { aims: ['cost'] } }, option: null });
  while (waiting.length > 0) waiting.shift()!();
  expect(told.at(-1)).toMatchObject({ kind: 'refused', edit: 1, refusals: [{ where: { path: 'rates' } }] });
});
