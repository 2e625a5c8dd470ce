import type BetterSqlite from 'better-sqlite3';
import type { Database } from 'better-sqlite3';
import { backUpOf } from './back-up.ts';
import { documentsOf, type Tell } from './documents.ts';
import { issuedNotesOf } from './issued-notes.ts';
import { journalOf } from './journal.ts';
import { keptTextsOf } from './kept-texts.ts';
import { recordsOf } from './records.ts';
import { registersOf } from './registers.ts';
import { revisionsOf } from './revisions.ts';

/** Everything a store does. Calls throw a `Refusal`, or SQLite's own error. */
export const storeCalls = (Sqlite: typeof BetterSqlite, db: Database, folder: string, tell: Tell) => ({
  ...documentsOf(db, tell),
  ...journalOf(db, tell),
  ...revisionsOf(db, tell),
  ...issuedNotesOf(db),
  ...registersOf(db),
  ...recordsOf(db, folder),
  ...keptTextsOf(db),
  ...backUpOf(Sqlite, db, folder, tell),
});

export type StoreCalls = ReturnType<typeof storeCalls>;
export type StoreCall = keyof StoreCalls;
export type StoreTakes<C extends StoreCall> = Parameters<StoreCalls[C]>[0];
export type StoreGives<C extends StoreCall> = Awaited<ReturnType<StoreCalls[C]>>;
