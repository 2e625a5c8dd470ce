import Sqlite from 'better-sqlite3';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { emptyRegister } from '../../core/issue/register.ts';
import { Refusal } from '../../core/refusal.ts';
import { migrations } from '../../electron/host/store/migrations.ts';
import { openDatabase } from '../../electron/host/store/open-database.ts';
import { sqliteInWords } from '../../electron/host/store/sqlite-words.ts';
import { storeCalls } from '../../electron/host/store/store-calls.ts';
import { inFolder } from '../command/in-folder.ts';
import { append, edit, now, textOf } from '../host/store/opened.ts';

const newest = migrations.length;
const next = [...migrations, 'CREATE TABLE invented (n INTEGER) STRICT'];
const inWords = (work: () => unknown): string => {
  try {
    work();
    return 'not refused';
  } catch (error) {
    const said = sqliteInWords(error);
    if (said instanceof Refusal) return said.message;
    throw error;
  }
};
const opened = (folder: string, steps = migrations) => {
  const { db, notices, close } = openDatabase(Sqlite, folder, now, steps);
  return { db, notices, close, ...storeCalls(Sqlite, db, folder, () => undefined) };
};
const create = { id: 'a', name: 'a', text: textOf('a'), mirror: null, now };

describe('a store of another version', () => {
  it('is brought up with its documents in it, and kept as it was beside', () =>
    inFolder(async (folder) => {
      const first = opened(folder);
      await first.createDocument(create);
      first.close();
      const second = opened(folder, next);
      expect(second.db.pragma('user_version', { simple: true })).toBe(newest + 1);
      expect(second.openDocument({ id: 'a' }).text).toBe(textOf('a'));
      second.close();
      const kept = new Sqlite(
        join(folder, 'set-aside', `before-version-${newest + 1}-${now.replace(/[:.]/g, '-')}`, 'store.sqlite'),
      );
      expect(kept.pragma('user_version', { simple: true })).toBe(newest);
      expect(kept.prepare('SELECT id FROM documents').pluck().all()).toEqual(['a']);
      kept.close();
      expect(inWords(() => opened(folder))).toContain('newer Stillplate');
    }));

  it('that knew no registers yet takes one', () =>
    inFolder(async (folder) => {
      const first = opened(folder, migrations.slice(0, 1));
      await first.createDocument(create);
      first.close();
      const second = opened(folder);
      expect(second.readRegister({ id: 'a' })).toEqual({ text: null });
      const text = JSON.stringify(emptyRegister);
      second.keepRegister({ id: 'a', text, now });
      expect(second.readRegister({ id: 'a' })).toEqual({ text });
      second.close();
    }));

  it('stays as it was when a step fails, and while another has it open', () =>
    inFolder(async (folder) => {
      const first = opened(folder);
      expect(inWords(() => opened(folder, next))).toContain('another Stillplate has it open');
      first.close();
      expect(() => opened(folder, [...next, 'CREATE TABLE documents (id TEXT)'])).toThrow(/already exists/);
      const again = opened(folder);
      expect(again.db.pragma('user_version', { simple: true })).toBe(newest);
      again.close();
    }));
});

it('says that the disk is full, and keeps what was there before', () =>
  inFolder(async (folder) => {
    const store = opened(folder);
    await store.createDocument(create);
    expect(store.appendEdits(append('a', 0, [edit(1)]))).toMatchObject({ written: true });
    // SQLite's own limit stands for the disk's: it gives the same error, SQLITE_FULL.
    store.db.pragma(`max_page_count = ${store.db.pragma('page_count', { simple: true })}`);
    const large = { kind: 'edit' as const, edit: JSON.stringify('x'.repeat(200_000)) };
    expect(inWords(() => store.appendEdits(append('a', 1, [edit(2), large])))).toContain(
      'disk of the data folder is full',
    );
    expect(store.openDocument({ id: 'a' })).toMatchObject({ line: { head: 1 }, journal: [edit(1)] });
    store.db.pragma('max_page_count = 100000');
    expect(store.appendEdits(append('a', 1, [edit(2), large]))).toEqual({ written: true, head: 3 });
    store.close();
  }));

it('never changes a revision or a note, and finds one that was changed from outside', () =>
  inFolder(async (folder) => {
    const store = opened(folder);
    await store.createDocument(create);
    for (const remark of ['one', 'two']) await store.saveRevision({ id: 'a', at: 0, text: textOf('r'), remark, now });
    store.keepNote({ id: 'a', name: 'n.pdf', documentHash: 'h', bytes: Uint8Array.of(1), now });
    expect(() => store.db.exec("UPDATE revisions SET remark = 'x'")).toThrow(/never changed/);
    expect(() => store.db.exec('DELETE FROM revisions')).toThrow(/never taken away/);
    expect(() => store.db.exec('DELETE FROM issued_notes')).toThrow(/never taken away/);
    expect(() => store.db.exec('DELETE FROM documents')).toThrow(/only a document in the trash/);
    expect(store.listRevisions({ id: 'a' })).toHaveLength(2);
    store.db.exec("DROP TRIGGER revision_stays; UPDATE revisions SET text = text || ' ' WHERE number = 2");
    expect(inWords(() => store.listRevisions({ id: 'a' }))).toContain('Revision 2 was changed or taken away outside');
    store.close();
  }));

it('gives back from a backup documents, edits, revisions, notes and records, and the store before it too', () =>
  inFolder(async (folder) => {
    const store = opened(folder);
    await store.createDocument(create);
    await store.saveRevision({ id: 'a', at: 0, text: textOf('r'), remark: 'sent', now });
    store.appendEdits(append('a', 0, [edit(1)]));
    store.keepNote({ id: 'a', name: 'n.pdf', documentHash: 'h', bytes: Uint8Array.of(7), now });
    const { hash } = await store.keepRecord({ name: 'r.csv', bytes: Uint8Array.of(1, 2), now });
    const all = async (from: ReturnType<typeof opened>) => [
      from.openDocument({ id: 'a' }), from.listRevisions({ id: 'a' }), from.readNote({ id: 'a', number: 1 }), await from.readRecord({ hash }),
    ]; // prettier-ignore
    const before = await all(store);
    const { bytes } = await store.backUp({ now });

    await inFolder(async (elsewhere) => {
      const other = opened(elsewhere);
      await other.createDocument({ ...create, id: 'b' });
      const { documents, setAside } = await other.restoreBackup({ bytes, now });
      expect(documents).toBe(1);
      expect(await all(other)).toEqual(before);
      await other.restoreBackup({ bytes: new Uint8Array(await readFile(join(elsewhere, setAside))), now });
      expect(other.listDocuments({}).map(({ id }) => id)).toEqual(['b']);
      const broken = bytes.slice(0, bytes.length - 40);
      await expect(other.restoreBackup({ bytes: broken, now })).rejects.toThrow(/cannot be restored/);
      expect(other.listDocuments({}).map(({ id }) => id)).toEqual(['b']);
      other.close();
    });
    store.close();
  }));
