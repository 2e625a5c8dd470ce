import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { applyEdit, laidRaw, valueAt, type Edit, type FieldPath, type Json } from '../../core/document/edit.ts';
import { mergeDifference } from '../../core/document/merge-difference.ts';
import { mergePatch } from '../../core/document/merge-patch.ts';
import { readDocument, readDocumentText, type RawDocument } from '../../core/document/read-document.ts';
import type { MergePatch } from '../../core/document/schema.ts';

const middle = (): RawDocument =>
  readDocumentText(readFileSync(new URL('../../samples/middle.stillplate.json', import.meta.url), 'utf8'));
const optionIds = (raw: RawDocument) => (raw['options'] as { id: string }[]).map(({ id }) => id);
const set = (option: string | null, path: FieldPath, value: Json): Edit => ({ kind: 'setField', option, path, value });

describe('an edit of the document as it stands', () => {
  it('sets a field and leaves the document it was given as it was', () => {
    const raw = middle();
    const before = JSON.stringify(raw);
    const after = applyEdit(raw, set(null, ['water', 'depth'], '47 m'));
    expect(valueAt(after, ['water', 'depth'])).toBe('47 m');
    expect(JSON.stringify(raw)).toBe(before);
    expect(after['grid']).toBe(raw['grid']);
  });
  it('keeps what was typed even when it is wrong, so that reading says what is wrong with it', () => {
    const after = applyEdit(middle(), set(null, ['water', 'depth'], '12 kg'));
    expect(valueAt(after, ['water', 'depth'])).toBe('12 kg');
    expect(() => readDocument(after)).toThrow(/12 kg/);
  });
  it('refuses a name that JavaScript gives a meaning of its own, and a path through a text', () => {
    expect(() => applyEdit(middle(), set(null, ['designs', '__proto__'], {}))).toThrow(/__proto__/);
    expect(() => applyEdit(middle(), set(null, ['project', 'name', 'first'], 'x'))).toThrow(/no field “first”/);
  });
  it('renames a design wherever it is named', () => {
    const raw = middle();
    const [first] = Object.keys(raw['designs'] as object) as [string];
    const renamed = applyEdit(raw, { kind: 'renameDesign', from: first, to: 'a name of its own' });
    expect(JSON.stringify(renamed)).toContain(':"a name of its own"');
    const after = applyEdit(renamed, { kind: 'renameDesign', from: 'a name of its own', to: 'another' });
    expect(JSON.stringify(after)).not.toContain('a name of its own');
    for (const id of [null, ...optionIds(raw)])
      expect(Object.keys(readDocument(laidRaw(after, id)).designs)).toContain('another');
    expect(() => applyEdit(raw, { kind: 'renameDesign', from: 'nowhere', to: 'x' })).toThrow(/no panel design/);
  });
});

describe('an edit of an option', () => {
  it('stores only what differs, and nothing once it is again as its base', () => {
    const raw = middle();
    const [id] = optionIds(raw) as [string];
    const depth = valueAt(raw, ['water', 'depth']) as Json;
    const there = applyEdit(raw, set(id, ['water', 'depth'], '51 m'));
    expect(valueAt(laidRaw(there, id), ['water', 'depth'])).toBe('51 m');
    expect(valueAt(there, ['water', 'depth'])).toEqual(depth);
    const back = applyEdit(there, set(id, ['water', 'depth'], depth));
    expect(back).toEqual(raw);
  });
  it('replaces a group of other fields without leaving any of the old ones', () => {
    const raw = middle();
    const [id] = optionIds(raw) as [string];
    const designs = raw['designs'] as Record<string, { fixing: { kind: string } }>;
    const name = Object.keys(designs).find((key) => designs[key]!.fixing.kind === 'bolted')!;
    const fixing = { kind: 'welded', throat: '3 mm', pattern: 'all round' };
    const after = applyEdit(raw, set(id, ['designs', name, 'fixing'], fixing));
    expect(valueAt(laidRaw(after, id), ['designs', name, 'fixing'])).toEqual(fixing);
    expect(readDocument(laidRaw(after, id)).designs[name]!.fixing.kind).toBe('welded');
  });
  it('takes a field away by null, and gives it back', () => {
    const raw = middle();
    const [id] = optionIds(raw) as [string];
    const away = applyEdit(raw, { kind: 'clearField', option: id, path: ['loads', 'crossing'] });
    expect(valueAt(laidRaw(away, id), ['loads', 'crossing'])).toBeUndefined();
    const back = applyEdit(away, set(id, ['loads', 'crossing'], valueAt(raw, ['loads', 'crossing']) as Json));
    expect(laidRaw(back, id)).toEqual(laidRaw(raw, id));
  });
  it('replaces a list as a whole (RFC 7396), by one of its entries', () => {
    const raw = middle();
    const [id] = optionIds(raw) as [string];
    const path = ['grid', 'suspension', 'attachments'] as const;
    const after = applyEdit(raw, set(id, [...path, 0, 'x'], '123 mm'));
    expect(valueAt(laidRaw(after, id), [...path, 0, 'x'])).toBe('123 mm');
    expect(valueAt(laidRaw(after, id), [...path, 1])).toEqual(valueAt(raw, [...path, 1]));
    expect(valueAt(raw, [...path, 0, 'x'])).not.toBe('123 mm');
  });
  it('refuses to differ in the project, and an option that is not there', () => {
    const [id] = optionIds(middle()) as [string];
    expect(() => applyEdit(middle(), set(id, ['project', 'name'], 'x'))).toThrow(/cannot differ/);
    expect(() => applyEdit(middle(), set('none', ['water', 'depth'], '1 m'))).toThrow(/no option “none”/);
  });
  it('opens and closes bays', () => {
    const raw = middle();
    const [id] = optionIds(raw) as [string];
    const [bay] = Object.keys(laidRaw(raw, id)['panels'] as object) as [string];
    const open = applyEdit(raw, { kind: 'coverBays', option: id, bays: [bay], design: null });
    expect(Object.keys(laidRaw(open, id)['panels'] as object)).not.toContain(bay);
    expect(Object.keys(raw['panels'] as object)).toEqual(Object.keys(open['panels'] as object));
  });
  it('hands the differences of a removed option to those that build on it', () => {
    const raw = middle();
    const [id] = optionIds(raw) as [string];
    const child = applyEdit(raw, {
      kind: 'addOption',
      option: { id: 'child', title: 'On top', base: id, changes: { water: { depth: '33 m' } } },
    });
    const was = laidRaw(child, 'child');
    const now = laidRaw(applyEdit(child, { kind: 'removeOption', id }), 'child');
    expect({ ...now, options: 0 }).toEqual({ ...was, options: 0 });
  });
});

describe('the difference of two groups', () => {
  const leaf = fc.oneof(fc.integer(), fc.string(), fc.boolean(), fc.array(fc.integer(), { maxLength: 3 }));
  const name = fc.string({ minLength: 1, maxLength: 2 }).filter((key) => key !== '__proto__');
  const { group } = fc.letrec<{ group: Record<string, unknown>; value: unknown }>((tie) => ({
    group: fc.dictionary(name, tie('value'), { maxKeys: 4 }),
    value: fc.oneof({ depthSize: 'small' }, leaf, tie('group')),
  }));
  it('makes the second of the first when laid on as RFC 7396 says', () => {
    fc.assert(
      fc.property(group, group, (a, b) => {
        const difference = mergeDifference(a as Json, b as Json);
        const laid = difference === undefined ? a : mergePatch(a, difference as MergePatch);
        expect(laid).toEqual(b);
      }),
      { numRuns: 300, seed: 4 },
    );
  });
  it('gives the examples of RFC 7396, appendix A, that have one answer', () => {
    expect(mergeDifference({ a: 'b' }, { a: 'c' })).toEqual({ a: 'c' });
    expect(mergeDifference({ a: 'b' }, { a: 'b', b: 'c' })).toEqual({ b: 'c' });
    expect(mergeDifference({ a: 'b' }, {})).toEqual({ a: null });
    expect(mergeDifference({ a: ['b'] }, { a: 'c' })).toEqual({ a: 'c' });
    expect(mergeDifference({ a: { b: 'c' } }, { a: { b: 'd' } })).toEqual({ a: { b: 'd' } });
  });
});
