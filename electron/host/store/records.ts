import type { Database } from 'better-sqlite3';
import { createHash } from 'node:crypto';
import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { refusal } from '../../../core/refusal.ts';
import { writeFileWhole } from '../write-file.ts';

/** Records as files beside the database, each named by the SHA-256 of its content and never changed. */
export function recordsOf(db: Database, folder: string) {
  return {
    keepRecord: async ({ name, bytes, now }: { name: string; bytes: Uint8Array; now: string }) => {
      const hash = createHash('sha256').update(bytes).digest('hex');
      await writeRecord(folder, hash, bytes);
      db.prepare('INSERT INTO records VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING').run(hash, name, bytes.length, now);
      return { hash };
    },
    readRecord: async ({ hash }: { hash: string }): Promise<{ name: string; bytes: Uint8Array }> => {
      const name = db.prepare<[string], string>('SELECT name FROM records WHERE hash = ?').pluck().get(hash);
      if (name === undefined)
        throw refusal({
          what: 'The store holds no such record',
          where: { record: hash.slice(0, 64) },
          mend: 'Import the record again, or restore a backup.',
        });
      return { name, bytes: await readRecordFile(folder, hash) };
    },
  };
}

/** Writes a record's file, whole, unless it is there. */
export async function writeRecord(folder: string, hash: string, bytes: Uint8Array): Promise<void> {
  if (await isWhole(folder, hash)) return;
  await mkdir(join(folder, 'records', hash.slice(0, 2)), { recursive: true });
  await writeFileWhole(pathOf(folder, hash), bytes);
}

/** Content of a record's file. Refuses one that is missing or was changed. */
export async function readRecordFile(folder: string, hash: string): Promise<Uint8Array> {
  const bytes = await readFile(pathOf(folder, hash)).catch(() => null);
  if (bytes && createHash('sha256').update(bytes).digest('hex') === hash) return new Uint8Array(bytes);
  throw refusal({
    what: bytes ? 'The file of this record was changed outside Stillplate' : 'The file of this record is missing',
    where: { record: hash },
    mend: 'Import the record again, or restore a backup.',
  });
}

const pathOf = (folder: string, hash: string): string => join(folder, 'records', hash.slice(0, 2), hash);
const isWhole = (folder: string, hash: string): Promise<boolean> =>
  readRecordFile(folder, hash).then(
    () => true,
    () => false,
  );
