import type { Database } from 'better-sqlite3';
import { basename } from 'node:path';
import type { DocumentLine, HostEvent, JournalEntry, OpenedDocument } from '../../../core/host/host-schema.ts';
import { refusal } from '../../../core/refusal.ts';
import { textFacts } from './text-facts.ts';

export interface DocumentRow {
  readonly id: string;
  readonly name: string;
  readonly made: string;
  readonly changed: string;
  readonly trashed: string | null;
  readonly imported: string;
  readonly schema: string;
  readonly head: number;
  readonly base: number;
  readonly writer: string;
  readonly file_path: string | null;
  readonly file_hash: string | null;
  readonly file_changed: number | null;
}

/** A file that a document is also written to, as it was when we read or wrote it last. */
export interface Mirror {
  readonly path: string;
  /** SHA-256 of its content. */
  readonly hash: string;
  /** When the file system says it changed, ms since 1970. */
  readonly changed: number;
}

export type Tell = (event: HostEvent) => void;

/** Writer of what the host does itself. */
export const ourself = 'host';

/** Documents of a store, without their journal. `now`: ISO 8601. */
export function documentsOf(db: Database, tell: Tell) {
  const update = db.transaction((id: string, set: string, values: readonly unknown[]) => {
    requireDocument(db, id);
    db.prepare(`UPDATE documents SET ${set} WHERE id = ?`).run(...values, id);
    return requireDocument(db, id);
  }).immediate;
  const updated = (id: string, set: string, values: readonly unknown[]): DocumentLine => {
    const row = update(id, set, values);
    tell({ kind: 'document-changed', id, head: row.head, writer: ourself });
    return lineOf(row);
  };
  return {
    listDocuments: (_takes: object): DocumentLine[] =>
      db.prepare<[], DocumentRow>('SELECT * FROM documents ORDER BY changed DESC, id').all().map(lineOf),

    createDocument: async (takes: { id: string; name: string; text: string; mirror: Mirror | null; now: string }) => {
      const { id, name, text, mirror, now } = takes;
      const { schema } = await textFacts(text);
      db.prepare(
        'INSERT INTO documents VALUES (@id, @name, @now, @now, NULL, @text, @schema, 0, 0, @ourself, @path, @hash, @changed)',
      ).run({ id, name, text, now, schema, ourself, path: null, hash: null, changed: null, ...mirror });
      tell({ kind: 'document-changed', id, head: 0, writer: ourself });
      return lineOf(requireDocument(db, id));
    },

    openDocument: db.transaction(({ id }: { id: string }): OpenedDocument => {
      const row = requireKept(db, id);
      const text = db
        .prepare<[string], string>('SELECT text FROM revisions WHERE document = ? ORDER BY number DESC LIMIT 1')
        .pluck()
        .get(id);
      const journal = db
        .prepare<[string], JournalEntry>('SELECT kind, edit FROM journal WHERE document = ? ORDER BY number')
        .all(id);
      return { line: lineOf(row), text: text ?? row.imported, journal };
    }),

    trashDocument: ({ id, now }: { id: string; now: string }) => updated(id, 'trashed = ?', [now]),
    restoreDocument: ({ id }: { id: string }) => updated(id, 'trashed = ?', [null]),

    destroyDocument: ({ id }: { id: string }): null => {
      const { head } = db
        .transaction(() => {
          const row = requireDocument(db, id);
          if (row.trashed === null)
            throw refusal({
              what: `“${row.name}” is not in the trash`,
              where: { document: id },
              mend: 'Put it into the trash first.',
            });
          db.prepare('DELETE FROM documents WHERE id = ?').run(id);
          return row;
        })
        .immediate();
      tell({ kind: 'document-changed', id, head, writer: ourself });
      return null;
    },

    mirrorOf: ({ id }: { id: string }): Mirror | null => {
      const { file_path, file_hash, file_changed } = requireKept(db, id);
      return file_path === null ? null : { path: file_path, hash: file_hash!, changed: file_changed! };
    },
    setMirror: ({ id, mirror }: { id: string; mirror: Mirror | null }) =>
      updated(id, 'file_path = ?, file_hash = ?, file_changed = ?', [
        mirror?.path ?? null,
        mirror?.hash ?? null,
        mirror?.changed ?? null,
      ]),
  };
}

/** The row of a document. Refuses an id that is not there. */
export function requireDocument(db: Database, id: string): DocumentRow {
  const row = db.prepare<[string], DocumentRow>('SELECT * FROM documents WHERE id = ?').get(id);
  if (row) return row;
  throw refusal({
    what: 'This document is no longer in the store',
    where: { document: id },
    mend: 'Look in the list of documents, or restore a backup.',
  });
}

/** The row of a document to be worked on. Refuses one in the trash, too. */
export function requireKept(db: Database, id: string): DocumentRow {
  const row = requireDocument(db, id);
  if (row.trashed === null) return row;
  throw refusal({
    what: `“${row.name}” is in the trash`,
    where: { document: id },
    mend: 'Take it out of the trash first.',
  });
}

const lineOf = ({ id, name, head, changed, trashed, file_path, schema }: DocumentRow): DocumentLine => ({
  id,
  name,
  head,
  changed,
  trashed: trashed !== null,
  file: file_path === null ? null : basename(file_path).slice(0, 400),
  fault: faultOf(schema),
});

/** Of core/document/schema.ts; a test holds the two together, so that a list loads no schema. */
const newestSchema = 1;

/** A store can come from a machine with a newer program. */
function faultOf(schema: string): string | null {
  const [, version] = /^stillplate-document\/(\d+)$/.exec(schema) ?? [];
  return version !== undefined && Number(version) <= newestSchema
    ? null
    : `It was written by a newer Stillplate (${schema}). Open it there; nothing was changed.`;
}
