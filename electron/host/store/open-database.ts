import type BetterSqlite from 'better-sqlite3';
import type { Database } from 'better-sqlite3';
import { existsSync, mkdirSync, readdirSync, renameSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { refusal } from '../../../core/refusal.ts';
import { migrate, migrations, versionOf } from './migrations.ts';
import { sqliteCode } from './sqlite-words.ts';

export interface OpenDatabase {
  readonly db: Database;
  /** What the user should know of how it was opened. */
  readonly notices: readonly string[];
  readonly close: () => void;
}

/** Long enough for another window's backup; a program that hangs should not hang us. */
const patience = 10_000;

/**
 * Opens the store of a data folder, making both where they lack: integrity checked, a damaged one set aside whole,
 * migrated, written ahead with full sync. `now`: ISO 8601, names what is set aside.
 * Refuses a folder that cannot be used, a store of a newer version, and one that must be mended or migrated while
 * another process has it open.
 */
export function openDatabase(
  Sqlite: typeof BetterSqlite,
  folder: string,
  now: string,
  steps = migrations,
): OpenDatabase {
  mkdirSync(folder, { recursive: true });
  const lock = new Sqlite(join(folder, 'store.lock'), { timeout: patience });
  try {
    const alone = takeLock(lock);
    const file = join(folder, 'store.sqlite');
    const notices: string[] = [];
    const isNew = !existsSync(file) || statSync(file).size === 0;
    if (isNew && hasRecords(folder))
      notices.push('No store was found in the data folder although it holds records: a new one was begun. Restore a backup if documents are missing.'); // prettier-ignore
    const damage = isNew ? null : damageOf(Sqlite, file);
    if (damage !== null) {
      if (!alone) throw inUse(`The store is damaged (${damage}) and another Stillplate has it open`);
      const place = setAside(folder, 'damaged', now, ['store.sqlite', 'store.sqlite-wal', 'store.sqlite-shm']);
      notices.push(`The store was damaged (${damage}). It was set aside whole in ${place}, and a new one was begun. Restore a backup to get documents back.`); // prettier-ignore
    }
    const db = new Sqlite(file, { timeout: patience });
    try {
      const version = versionOf(db, steps.length);
      requireLocalDrive(db);
      if (version < steps.length) {
        if (!alone) throw inUse(`The store is of version ${version} and another Stillplate has it open`);
        if (version > 0)
          db.prepare('VACUUM INTO ?').run(join(setAside(folder, `before-version-${steps.length}`, now, []), 'store.sqlite')); // prettier-ignore
        migrate(db, steps);
      }
    } catch (error) {
      db.close();
      throw error;
    }
    if (alone) shareLock(lock);
    const close = (): void => {
      db.close();
      lock.close();
    };
    return { db, notices, close };
  } catch (error) {
    lock.close();
    throw error;
  }
}

/**
 * SQLite's own locks tell whether another process has the store open, also after one was killed: each holds the empty
 * `store.lock` shared for as long as it lives, and for itself while it mends. True when nobody else has it.
 */
function takeLock(lock: Database): boolean {
  lock.pragma('busy_timeout = 0');
  try {
    lock.exec('BEGIN EXCLUSIVE');
    return true;
  } catch (error) {
    if (sqliteCode(error) !== 'BUSY') throw error;
  }
  lock.pragma(`busy_timeout = ${patience}`);
  shareLock(lock);
  return false;
}

function shareLock(lock: Database): void {
  if (lock.inTransaction) lock.exec('ROLLBACK');
  lock.pragma(`busy_timeout = ${patience}`);
  lock.exec('BEGIN');
  lock.prepare('SELECT count(*) FROM sqlite_schema').get();
}

/** What is wrong with a database file, or null. */
function damageOf(Sqlite: typeof BetterSqlite, file: string): string | null {
  let db: Database | undefined;
  try {
    db = new Sqlite(file, { fileMustExist: true, timeout: patience });
    const found = db.pragma('integrity_check(1)', { simple: true }) as string;
    return found === 'ok' ? null : found.replace(/\s+/g, ' ');
  } catch (error) {
    if (!/^(CORRUPT|NOTADB)/.test(sqliteCode(error))) throw error;
    return (error as Error).message;
  } finally {
    db?.close();
  }
}

/** Write-ahead needs memory that processes share, which a network drive does not give. */
function requireLocalDrive(db: Database): void {
  const mode = db.pragma('journal_mode = WAL', { simple: true }) as string;
  if (mode !== 'wal')
    throw refusal({
      what: 'The data folder is on a drive that cannot be shared safely between windows, such as a network drive',
      mend: 'Set STILLPLATE_DATA to a folder of this machine. Documents can still be saved as files on the drive.',
    });
  db.pragma('synchronous = FULL');
  // Apple's disks keep written data in a cache of their own unless asked for more.
  db.pragma('fullfsync = ON');
  db.pragma('checkpoint_fullfsync = ON');
  db.pragma('foreign_keys = ON');
}

/** Moves files of the data folder into a folder of their own; gives that folder. */
export function setAside(folder: string, why: string, now: string, names: readonly string[]): string {
  const stamp = now.replace(/[:.]/g, '-');
  let place = join(folder, 'set-aside', `${why}-${stamp}`);
  for (let n = 2; existsSync(place); n++) place = join(folder, 'set-aside', `${why}-${stamp}-${n}`);
  mkdirSync(place, { recursive: true });
  for (const name of names) if (existsSync(join(folder, name))) renameSync(join(folder, name), join(place, name));
  return place;
}

const hasRecords = (folder: string): boolean =>
  existsSync(join(folder, 'records')) && readdirSync(join(folder, 'records')).length > 0;

const inUse = (what: string) =>
  refusal({ what, mend: 'Close every other window of Stillplate, then start again; nothing was changed.' });
