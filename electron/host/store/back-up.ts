import type BetterSqlite from 'better-sqlite3';
import type { Database } from 'better-sqlite3';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { createHash } from 'node:crypto';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { Refusal, refusal } from '../../../core/refusal.ts';
import { writeFileWhole } from '../write-file.ts';
import type { Tell } from './documents.ts';
import { ourself } from './documents.ts';
import { migrate, migrations, versionOf } from './migrations.ts';
import { setAside } from './open-database.ts';
import { readRecordFile, writeRecord } from './records.ts';

const format = 'stillplate-backup/1';
/** A backup says how large it is before it is unpacked; a small file can say much. */
const largest = 4_000_000_000;
/** Tables of the store, those that others point to first. */
const tables = ['documents', 'journal', 'revisions', 'issued_notes', 'records', 'catalogue_additions', 'settings'];

/** The whole store in one ZIP file: the database as of one moment, and every record. */
export function backUpOf(Sqlite: typeof BetterSqlite, db: Database, folder: string, tell: Tell) {
  const inTurn = async <T>(work: (place: string) => Promise<T>): Promise<T> => {
    const place = await mkdtemp(join(folder, 'backup-'));
    try {
      return await work(place);
    } finally {
      await rm(place, { recursive: true, force: true });
    }
  };

  const backUp = ({ now }: { now: string }): Promise<{ name: string; bytes: Uint8Array }> =>
    inTurn(async (place) => {
      const file = join(place, 'store.sqlite');
      db.prepare('VACUUM INTO ?').run(file);
      const copy = new Sqlite(file, { readonly: true });
      const hashes = hashesIn(copy);
      copy.close();
      const entries: Record<string, Uint8Array> = {
        'manifest.json': strToU8(JSON.stringify({ format, made: now, records: hashes })),
        'store.sqlite': new Uint8Array(await readFile(file)),
      };
      for (const hash of hashes) entries[`records/${hash}`] = await readRecordFile(folder, hash);
      return {
        name: `stillplate-${now.slice(0, 10)}.stillplate-backup`,
        // A ZIP file tells time from 1980 on, in the machine's own zone.
        bytes: zipSync(entries, { mtime: new Date(1980, 0, 1) }),
      };
    });

  return {
    backUp,
    restoreBackup: ({ bytes, now }: { bytes: Uint8Array; now: string }) =>
      inTurn(async (place) => {
        const { store, records } = unpacked(bytes);
        const file = join(place, 'store.sqlite');
        await writeFile(file, store);
        requireSound(Sqlite, file, records);
        for (const [hash, content] of records) await writeRecord(folder, hash, content);
        const lost = db.prepare<[], { id: string; head: number }>('SELECT id, head FROM documents').all();
        const aside = setAside(folder, 'before-restore', now, []);
        const name = 'before-restore.stillplate-backup';
        for (let left = 10; ; left--) {
          const state = stateOf(db);
          await writeFileWhole(join(aside, name), (await backUp({ now })).bytes);
          // What another window wrote while we copied must be in the copy: then once more.
          if (takeOver(db, file, state)) break;
          if (left === 0) throw busy();
        }
        const found = db.prepare<[], { id: string; head: number }>('SELECT id, head FROM documents').all();
        const heads = new Map([...lost, ...found].map(({ id, head }) => [id, head]));
        for (const [id, head] of heads) tell({ kind: 'document-changed', id, head, writer: ourself });
        return { documents: found.length, setAside: join('set-aside', basename(aside), name) };
      }),
  };
}

const hashesIn = (db: Database): string[] =>
  db.prepare<[], string>('SELECT hash FROM records ORDER BY hash').pluck().all();

/** Moves with every commit, of this connection or another. */
const stateOf = (db: Database): string =>
  `${db.pragma('data_version', { simple: true })} ${db.prepare('SELECT total_changes()').pluck().get()}`;

/**
 * Puts the content of another store in the place of ours, in one transaction: other windows have it open.
 * False, with nothing done, when the store is no longer in the state given.
 */
function takeOver(db: Database, file: string, state: string): boolean {
  db.prepare('ATTACH ? AS restored').run(file);
  try {
    return db
      .transaction(() => {
        if (stateOf(db) !== state) return false;
        db.prepare("UPDATE documents SET trashed = coalesce(trashed, 'restored over')").run();
        for (const table of [...tables].reverse()) db.exec(`DELETE FROM main.${table}`);
        for (const table of tables) db.exec(`INSERT INTO main.${table} SELECT * FROM restored.${table}`);
        return true;
      })
      .immediate();
  } finally {
    db.exec('DETACH restored');
  }
}

const busy = () =>
  refusal({
    what: 'Another window kept writing while the store was copied',
    mend: 'Close other windows of Stillplate, then restore again; nothing was changed.',
  });

/** Refuses a store that is damaged, of a newer version or another program's, or whose records do not fit. */
function requireSound(Sqlite: typeof BetterSqlite, file: string, records: ReadonlyMap<string, Uint8Array>): void {
  let copy: Database | undefined;
  try {
    copy = new Sqlite(file, { fileMustExist: true });
    if (copy.pragma('integrity_check(1)', { simple: true }) !== 'ok') throw noBackup('its store is damaged');
    if (versionOf(copy) === 0) throw noBackup('its store is empty');
    migrate(copy, migrations);
    const missing = hashesIn(copy).filter((hash) => !records.has(hash));
    if (missing.length > 0) throw noBackup(`${missing.length} of its records are missing`);
  } catch (error) {
    throw error instanceof Refusal ? error : noBackup((error as Error).message);
  } finally {
    copy?.close();
  }
  for (const [hash, content] of records)
    if (createHash('sha256').update(content).digest('hex') !== hash) throw noBackup('one of its records was changed');
}

function unpacked(bytes: Uint8Array): { store: Uint8Array; records: Map<string, Uint8Array> } {
  let size = 0;
  let entries: Record<string, Uint8Array>;
  try {
    entries = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        size += originalSize;
        if (size > largest) throw noBackup('it is too large');
        return name === 'manifest.json' || name === 'store.sqlite' || /^records\/[0-9a-f]{64}$/.test(name);
      },
    });
  } catch (error) {
    throw error instanceof Refusal ? error : noBackup('it is no ZIP file, or not a whole one');
  }
  const manifest = entries['manifest.json'];
  const store = entries['store.sqlite'];
  if (!manifest || !store) throw noBackup('it holds no store');
  if (formatOf(manifest) !== format) throw noBackup('it is of another program or of a newer Stillplate');
  const records = Object.entries(entries).filter(([name]) => name.startsWith('records/'));
  return { store, records: new Map(records.map(([name, content]) => [name.slice('records/'.length), content])) };
}

function formatOf(manifest: Uint8Array): unknown {
  try {
    return (JSON.parse(strFromU8(manifest)) as { format?: unknown } | null)?.format;
  } catch {
    return undefined;
  }
}

const noBackup = (why: string) =>
  refusal({
    what: `This file cannot be restored: ${why}`,
    mend: 'Choose a backup that Stillplate made (.stillplate-backup). The present store was not changed.',
  });
