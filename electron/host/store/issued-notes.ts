import type { Database } from 'better-sqlite3';
import { createHash } from 'node:crypto';
import type { IssuedNoteLine } from '../../../core/host/host-schema.ts';
import { refusal } from '../../../core/refusal.ts';
import { requireDocument, requireKept } from './documents.ts';

interface NoteRow {
  readonly number: number;
  readonly made: string;
  readonly name: string;
  readonly document_hash: string;
  readonly hash: string;
  readonly bytes: Uint8Array;
}

/** Notes kept with the document that they are of: append-only. */
export function issuedNotesOf(db: Database) {
  const keep = db.transaction(
    (takes: { id: string; name: string; documentHash: string; bytes: Uint8Array; now: string }): IssuedNoteLine => {
      const { id, name, documentHash, bytes, now } = takes;
      requireKept(db, id);
      const number =
        db.prepare<[string], number>('SELECT count(*) FROM issued_notes WHERE document = ?').pluck().get(id)! + 1;
      db.prepare('INSERT INTO issued_notes VALUES (?, ?, ?, ?, ?, ?, ?)').run(id, number, now, name, documentHash, sha256(bytes), bytes); // prettier-ignore
      return { number, made: now, name, documentHash, bytes: bytes.length };
    },
  ).immediate;
  return {
    keepNote: (takes: Parameters<typeof keep>[0]) => keep(takes),
    listNotes: ({ id }: { id: string }): IssuedNoteLine[] => {
      requireDocument(db, id);
      return db
        .prepare<[string], IssuedNoteLine>(
          'SELECT number, made, name, document_hash AS documentHash, length(bytes) AS bytes FROM issued_notes WHERE document = ? ORDER BY number',
        )
        .all(id);
    },
    readNote: ({ id, number }: { id: string; number: number }): { name: string; bytes: Uint8Array } => {
      requireDocument(db, id);
      const row = db
        .prepare<[string, number], NoteRow>('SELECT * FROM issued_notes WHERE document = ? AND number = ?')
        .get(id, number);
      const where = { document: id, note: number };
      if (!row) throw refusal({ what: `There is no note ${number} of this document`, where, mend: 'Choose one of its list.' }); // prettier-ignore
      const bytes = new Uint8Array(row.bytes);
      if (sha256(bytes) !== row.hash)
        throw refusal({
          what: `Note ${number} was changed outside Stillplate: its hash does not fit`,
          where,
          mend: 'Take it from a backup.',
        });
      return { name: row.name, bytes };
    },
  };
}

const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
