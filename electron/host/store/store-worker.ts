import type BetterSqlite from 'better-sqlite3';
import { parentPort, workerData } from 'node:worker_threads';
import { Refusal } from '../../../core/refusal.ts';
import { openDatabase, type OpenDatabase } from './open-database.ts';
import { sqliteInWords } from './sqlite-words.ts';
import { storeCalls } from './store-calls.ts';
import { storeFault } from './store-fault.ts';
import type { FromStore, StoreThreadData, ToStore } from './store.ts';
import { watch } from './watch.ts';

// The thread of the store: SQLite waits for the disk, which must hold neither window nor server.
const { folder, now, nativeBinding, lookEvery } = workerData as StoreThreadData;
const port = parentPort!;
const post = (message: FromStore): void => port.postMessage(message);

try {
  const Sqlite = await sqlite();
  serve(Sqlite, openDatabase(Sqlite, folder, now));
} catch (error) {
  post({ fault: storeFault(error) });
}

/** An optional package: where it could not be built everything else works. */
async function sqlite(): Promise<typeof BetterSqlite> {
  const { default: Sqlite } = await import('better-sqlite3');
  if (nativeBinding === undefined) return Sqlite;
  return class extends Sqlite {
    constructor(file: string, options?: BetterSqlite.Options) {
      super(file, { ...options, nativeBinding });
    }
  } as typeof BetterSqlite;
}

function serve(Sqlite: typeof BetterSqlite, { db, notices, close }: OpenDatabase): void {
  const tell = (event: Extract<FromStore, { event: unknown }>['event']): void => post({ event });
  const calls = storeCalls(Sqlite, db, folder, tell) as unknown as Record<string, (takes: unknown) => unknown>;
  const { look } = watch(db, tell);
  const looking = setInterval(() => {
    try {
      look();
    } catch (error) {
      // The next call will say what is wrong; looking for others' edits is not worth a loud word of its own.
      if (sqliteInWords(error) === error) throw error;
    }
  }, lookEvery);
  port.on('message', (message: ToStore) => {
    if ('close' in message) {
      clearInterval(looking);
      close();
      port.close();
    } else void answer(message);
  });
  post({ opened: { notices, sqlite: String(db.prepare('SELECT sqlite_version()').pluck().get()) } });

  async function answer({ id, call, takes }: Exclude<ToStore, { close: true }>): Promise<void> {
    try {
      post({ id, gives: await calls[call]!(takes) });
    } catch (thrown) {
      const error = sqliteInWords(thrown);
      if (error instanceof Refusal) post({ id, refusals: error.all });
      else post({ id, broken: error instanceof Error ? (error.stack ?? error.message) : String(error) });
    }
  }
}
