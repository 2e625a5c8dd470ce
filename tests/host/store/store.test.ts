import Sqlite from 'better-sqlite3';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inFolder } from '../../command/in-folder.ts';
import { documentHash } from '../../../core/document/document-hash.ts';
import { schemaName } from '../../../core/document/schema.ts';
import { append, edit, later, now, refusalOf, step, textOf, withStore } from './opened.ts';

const create = (name: string) => ({ id: name, name, text: textOf(name), mirror: null, now });

describe('documents in the store', () => {
  it('keeps a document with its edits in order, and finds them after it was closed', () =>
    inFolder(async (folder) => {
      await withStore(folder, async (store) => {
        const line = await store.ask('createDocument', create('a'));
        expect(line).toEqual({ id: 'a', name: 'a', head: 0, changed: now, trashed: false, file: null, fault: null });
        expect(await store.ask('appendEdits', append('a', 0, [edit(1), edit(2)]))).toEqual({ written: true, head: 2 });
        expect(await store.ask('appendEdits', append('a', 2, [step('undo')]))).toEqual({ written: true, head: 3 });
      });
      await withStore(folder, async (store) => {
        const { line, text, journal } = await store.ask('openDocument', { id: 'a' });
        expect(line).toMatchObject({ head: 3, name: 'after 2', changed: later });
        expect(text).toBe(textOf('a'));
        expect(journal).toEqual([edit(1), edit(2), step('undo')]);
        expect(await store.ask('listDocuments', {})).toEqual([line]);
      });
    }));

  it('refuses a text that is no document, an id that is not there, and a document in the trash', () =>
    inFolder((folder) =>
      withStore(folder, async (store) => {
        expect(await refusalOf(store.ask('createDocument', { ...create('a'), text: '{"schema": 1}' }))).toContain("is not one of Stillplate's"); // prettier-ignore
        expect(await refusalOf(store.ask('openDocument', { id: 'none' }))).toContain('no longer in the store');
        await store.ask('createDocument', create('a'));
        expect(await refusalOf(store.ask('destroyDocument', { id: 'a' }))).toContain('not in the trash');
        expect(await store.ask('trashDocument', { id: 'a', now: later })).toMatchObject({ trashed: true });
        expect(await refusalOf(store.ask('openDocument', { id: 'a' }))).toContain('is in the trash');
        expect(await refusalOf(store.ask('appendEdits', append('a', 0, [edit(1)])))).toContain('is in the trash');
        expect(await store.ask('restoreDocument', { id: 'a' })).toMatchObject({ trashed: false });
        expect((await store.ask('openDocument', { id: 'a' })).text).toBe(textOf('a'));
        await store.ask('trashDocument', { id: 'a', now: later });
        expect(await store.ask('destroyDocument', { id: 'a' })).toBe(null);
        expect(await store.ask('listDocuments', {})).toEqual([]);
      }),
    ));
});

it('calls a document unreadable only when its schema is newer than ours', () =>
  inFolder((folder) =>
    withStore(folder, async (store) => {
      expect(schemaName).toBe('stillplate-document/1');
      await store.ask('createDocument', create('a'));
      expect(await faultAs(folder, schemaName)).toBe(null);
      expect(await faultAs(folder, 'stillplate-document/2')).toContain('written by a newer Stillplate');

      /** The document's line when another program left that schema in the store. */
      async function faultAs(place: string, schema: string) {
        const other = new Sqlite(join(place, 'store.sqlite'));
        other.prepare('UPDATE documents SET schema = ?').run(schema);
        other.close();
        return (await store.ask('listDocuments', {}))[0]!.fault;
      }
    }),
  ));

describe('two windows on one document', () => {
  it('tells the second what the first wrote and writes nothing', () =>
    inFolder((folder) =>
      withStore(folder, async (store) => {
        await store.ask('createDocument', create('a'));
        await store.ask('appendEdits', append('a', 0, [edit(1), edit(2)], 'one'));
        expect(await store.ask('appendEdits', append('a', 0, [edit(9)], 'two'))).toEqual({
          written: false,
          head: 2,
          since: [edit(1), edit(2)],
        });
        expect((await store.ask('openDocument', { id: 'a' })).journal).toEqual([edit(1), edit(2)]);
      }),
    ));

  it('tells it all the same when a revision put those entries away', () =>
    inFolder((folder) =>
      withStore(folder, async (store) => {
        await store.ask('createDocument', create('a'));
        await store.ask('appendEdits', append('a', 0, [edit(1), edit(2)], 'one'));
        await store.ask('saveRevision', { id: 'a', at: 2, text: textOf('r'), remark: '', now });
        await store.ask('appendEdits', append('a', 2, [edit(3)], 'one'));
        expect(await store.ask('appendEdits', append('a', 1, [edit(9)], 'two'))).toEqual({
          written: false,
          head: 3,
          since: [edit(2), edit(3)],
        });
      }),
    ));

  it('takes a message that comes twice as one: its answer was lost on the way', () =>
    inFolder((folder) =>
      withStore(folder, async (store) => {
        await store.ask('createDocument', create('a'));
        const message = append('a', 0, [edit(1), edit(2)]);
        for (const _ of [1, 2]) expect(await store.ask('appendEdits', message)).toEqual({ written: true, head: 2 });
        expect((await store.ask('openDocument', { id: 'a' })).journal).toHaveLength(2);
        expect(await store.ask('appendEdits', { ...message, writer: 'other' })).toMatchObject({ written: false });
      }),
    ));

  it('tells the other process within its next look, with the writer', () =>
    inFolder((folder) =>
      withStore(folder, (one) =>
        withStore(folder, async (two) => {
          await one.ask('createDocument', create('a'));
          const heard = new Promise((resolve) =>
            two.listen((event) => event.kind === 'document-changed' && event.head === 1 && resolve(event)),
          );
          await one.ask('appendEdits', append('a', 0, [edit(1)], 'one'));
          expect(await heard).toEqual({ kind: 'document-changed', id: 'a', head: 1, writer: 'one' });
          const saved = new Promise((resolve) =>
            two.listen((event) => event.kind === 'revision-saved' && resolve(event)),
          );
          await one.ask('saveRevision', { id: 'a', at: 1, text: textOf('r'), remark: '', now });
          expect(await saved).toEqual({ kind: 'revision-saved', id: 'a', number: 1, at: 1 });
          expect(await two.ask('appendEdits', append('a', 0, [edit(2)], 'two'))).toMatchObject({ written: false });
        }),
      ),
    ));
});

describe('revisions', () => {
  it('hold the document, the journal that led there and the hash of the one before', () =>
    inFolder((folder) =>
      withStore(folder, async (store) => {
        await store.ask('createDocument', create('a'));
        await store.ask('appendEdits', append('a', 0, [edit(1), edit(2), edit(3)]));
        const first = await store.ask('saveRevision', { id: 'a', at: 2, text: textOf('r1'), remark: 'first', now });
        expect(first).toMatchObject({
          number: 1,
          remark: 'first',
          documentHash: documentHash(JSON.parse(textOf('r1'))),
        });
        const open = await store.ask('openDocument', { id: 'a' });
        expect(open).toMatchObject({ text: textOf('r1'), journal: [edit(3)], line: { head: 3 } });
        const second = await store.ask('saveRevision', { id: 'a', at: 3, text: textOf('r1'), remark: 'second', now });
        expect(second.documentHash).toBe(first.documentHash);
        expect(second.chainHash).not.toBe(first.chainHash);
        expect(await store.ask('listRevisions', { id: 'a' })).toEqual([first, second]);
        expect(await store.ask('readRevision', { id: 'a', number: 1 })).toEqual({ text: textOf('r1') });
        expect(await refusalOf(store.ask('readRevision', { id: 'a', number: 3 }))).toContain('no revision 3');
      }),
    ));

  it('refuses one of an edit that is not there, or older than the newest revision', () =>
    inFolder((folder) =>
      withStore(folder, async (store) => {
        await store.ask('createDocument', create('a'));
        await store.ask('appendEdits', append('a', 0, [edit(1), edit(2)]));
        const save = (at: number) => store.ask('saveRevision', { id: 'a', at, text: textOf('r'), remark: '', now });
        expect(await refusalOf(save(3))).toContain('holds 2 edits');
        await save(2);
        expect(await refusalOf(save(1))).toContain('newer revision holds edit 2');
      }),
    ));

  it('refuses a step back to what a revision put away: the journal could not be read again', () =>
    inFolder((folder) =>
      withStore(folder, async (store) => {
        await store.ask('createDocument', create('a'));
        await store.ask('appendEdits', append('a', 0, [edit(1), edit(2), step('undo')]));
        expect(await store.ask('appendEdits', append('a', 3, [step('redo'), step('undo')]))).toMatchObject({ head: 5 });
        await store.ask('saveRevision', { id: 'a', at: 5, text: textOf('r'), remark: '', now });
        for (const kind of ['undo', 'redo'] as const)
          expect(await refusalOf(store.ask('appendEdits', append('a', 5, [step(kind)])))).toContain('put away with a revision'); // prettier-ignore
        expect(await store.ask('appendEdits', append('a', 5, [edit(3), step('undo')]))).toMatchObject({ head: 7 });
      }),
    ));
});

describe('notes, records and texts for all documents', () => {
  it('keeps notes with their document and numbers them', () =>
    inFolder((folder) =>
      withStore(folder, async (store) => {
        await store.ask('createDocument', create('a'));
        const keep = (bytes: Uint8Array) =>
          store.ask('keepNote', { id: 'a', name: 'note.pdf', documentHash: 'h', bytes, now });
        const line = { made: now, name: 'note.pdf', documentHash: 'h' };
        expect(await keep(Uint8Array.of(1, 2, 3))).toEqual({ ...line, number: 1, bytes: 3 });
        expect(await keep(Uint8Array.of(4))).toEqual({ ...line, number: 2, bytes: 1 });
        expect(await store.ask('listNotes', { id: 'a' })).toEqual([
          { ...line, number: 1, bytes: 3 },
          { ...line, number: 2, bytes: 1 },
        ]);
        const read = await store.ask('readNote', { id: 'a', number: 1 });
        expect(read).toEqual({ name: 'note.pdf', bytes: Uint8Array.of(1, 2, 3) });
        expect(await refusalOf(store.ask('readNote', { id: 'a', number: 3 }))).toContain('no note 3');
      }),
    ));

  it('names a record by its content, whichever way it came, and finds a changed file out', () =>
    inFolder(async (folder) => {
      // SHA-256 of "abc": FIPS 180-2, appendix B.1.
      const hash = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
      await withStore(folder, async (store) => {
        const bytes = new TextEncoder().encode('abc');
        for (const name of ['x.csv', 'y.csv'])
          expect(await store.ask('keepRecord', { name, bytes, now })).toEqual({ hash });
        expect(await store.ask('readRecord', { hash })).toEqual({ name: 'x.csv', bytes });
        await writeFile(`${folder}/records/ba/${hash}`, 'abd');
        expect(await refusalOf(store.ask('readRecord', { hash }))).toContain('changed outside');
        await store.ask('keepRecord', { name: 'x.csv', bytes, now });
        expect(await store.ask('readRecord', { hash })).toEqual({ name: 'x.csv', bytes });
        expect(await refusalOf(store.ask('readRecord', { hash: 'f'.repeat(64) }))).toContain('no such record');
      });
    }));

  it('keeps settings and catalogue rows', () =>
    inFolder((folder) =>
      withStore(folder, async (store) => {
        expect(await store.ask('readSettings', {})).toEqual({ text: '{}' });
        await store.ask('keepSettings', { text: '{"size": 2}' });
        expect(await store.ask('readSettings', {})).toEqual({ text: '{"size": 2}' });
        await store.ask('keepCatalogueAddition', { name: 'b', text: '1', now });
        await store.ask('keepCatalogueAddition', { name: 'a', text: '1', now });
        await store.ask('keepCatalogueAddition', { name: 'b', text: '2', now });
        expect(await store.ask('listCatalogueAdditions', {})).toEqual([{ name: 'a', text: '1' }, { name: 'b', text: '2' }]); // prettier-ignore
      }),
    ));
});
