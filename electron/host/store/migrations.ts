import type { Database } from 'better-sqlite3';
import { refusal } from '../../../core/refusal.ts';

/** Says in a file's head that it is a store of ours ("StPl"). */
const applicationId = 0x5374506c;

/** Each brings the store from the version before to its own (its place in the list, from 1). A released one is never changed. */
export const migrations: readonly string[] = [
  `CREATE TABLE documents (
    id TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    made TEXT NOT NULL,
    changed TEXT NOT NULL,
    trashed TEXT,
    -- The text as it was created or imported, and the schema that its newest text names.
    imported TEXT NOT NULL,
    schema TEXT NOT NULL,
    -- Number of the newest entry of the journal, and of the entry that the newest revision holds.
    head INTEGER NOT NULL,
    base INTEGER NOT NULL,
    writer TEXT NOT NULL,
    -- The file that each save also writes, and what it held when we wrote or read it last.
    file_path TEXT,
    file_hash TEXT,
    file_changed REAL
  ) STRICT;
  CREATE TABLE journal (
    document TEXT NOT NULL REFERENCES documents ON DELETE CASCADE,
    number INTEGER NOT NULL,
    kind TEXT NOT NULL,
    edit TEXT NOT NULL,
    writer TEXT NOT NULL,
    made TEXT NOT NULL,
    PRIMARY KEY (document, number)
  ) STRICT;
  CREATE TABLE revisions (
    document TEXT NOT NULL REFERENCES documents ON DELETE CASCADE,
    number INTEGER NOT NULL,
    at INTEGER NOT NULL,
    made TEXT NOT NULL,
    remark TEXT NOT NULL,
    text TEXT NOT NULL,
    -- The journal that led here from the revision before, as JSON.
    journal TEXT NOT NULL,
    document_hash TEXT NOT NULL,
    chain_hash TEXT NOT NULL,
    PRIMARY KEY (document, number)
  ) STRICT;
  CREATE TABLE issued_notes (
    document TEXT NOT NULL REFERENCES documents ON DELETE CASCADE,
    number INTEGER NOT NULL,
    made TEXT NOT NULL,
    name TEXT NOT NULL,
    document_hash TEXT NOT NULL,
    hash TEXT NOT NULL,
    bytes BLOB NOT NULL,
    PRIMARY KEY (document, number)
  ) STRICT;
  CREATE TABLE records (hash TEXT PRIMARY KEY, name TEXT NOT NULL, size INTEGER NOT NULL, made TEXT NOT NULL) STRICT;
  CREATE TABLE catalogue_additions (name TEXT PRIMARY KEY, text TEXT NOT NULL, changed TEXT NOT NULL) STRICT;
  CREATE TABLE settings (name TEXT PRIMARY KEY, text TEXT NOT NULL) STRICT;

  -- Revisions and issued notes are only ever added to; they go with their document, and that only out of the trash.
  CREATE TRIGGER revision_stays BEFORE UPDATE ON revisions BEGIN SELECT RAISE(ABORT, 'a revision is never changed'); END;
  CREATE TRIGGER note_stays BEFORE UPDATE ON issued_notes BEGIN SELECT RAISE(ABORT, 'an issued note is never changed'); END;
  CREATE TRIGGER revision_kept BEFORE DELETE ON revisions
    WHEN EXISTS (SELECT 1 FROM documents WHERE id = OLD.document AND trashed IS NULL)
    BEGIN SELECT RAISE(ABORT, 'a revision is never taken away'); END;
  CREATE TRIGGER note_kept BEFORE DELETE ON issued_notes
    WHEN EXISTS (SELECT 1 FROM documents WHERE id = OLD.document AND trashed IS NULL)
    BEGIN SELECT RAISE(ABORT, 'an issued note is never taken away'); END;
  CREATE TRIGGER document_kept BEFORE DELETE ON documents WHEN OLD.trashed IS NULL
    BEGIN SELECT RAISE(ABORT, 'only a document in the trash is taken away'); END;`,
  `CREATE TABLE registers (
    document TEXT PRIMARY KEY REFERENCES documents ON DELETE CASCADE,
    changed TEXT NOT NULL,
    text TEXT NOT NULL
  ) STRICT;
  -- What happened to a document's notes is only ever added to; it goes with its document, and that only out of the trash.
  CREATE TRIGGER register_kept BEFORE DELETE ON registers
    WHEN EXISTS (SELECT 1 FROM documents WHERE id = OLD.document AND trashed IS NULL)
    BEGIN SELECT RAISE(ABORT, 'a register is never taken away'); END;`,
];

/** The version of a store, 0 for an empty file. Refuses one of another program, or of a newer Stillplate. */
export function versionOf(db: Database, known = migrations.length): number {
  const version = db.pragma('user_version', { simple: true }) as number;
  const owner = db.pragma('application_id', { simple: true }) as number;
  if (version === 0 && owner === 0 && db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get() === 0) return 0;
  if (owner !== applicationId)
    throw refusal({
      what: 'The database in the data folder belongs to another program',
      mend: 'Set STILLPLATE_DATA to a folder of its own; nothing was changed.',
    });
  if (version > known)
    throw refusal({
      what: `The store is of version ${version}, this program knows versions up to ${known}`,
      mend: 'Open it with a newer Stillplate; nothing was changed.',
    });
  return version;
}

/** Brings a store to the newest version: every step, or none. */
export function migrate(db: Database, steps = migrations): void {
  db.transaction(() => {
    const from = versionOf(db, steps.length);
    for (const step of steps.slice(from)) db.exec(step);
    db.pragma(`application_id = ${applicationId}`);
    db.pragma(`user_version = ${steps.length}`);
  }).immediate();
}
