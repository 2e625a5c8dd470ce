import type { Database } from 'better-sqlite3';
import { createHash } from 'node:crypto';
import type { JournalEntry, RevisionLine } from '../../../core/host/host-schema.ts';
import { refusal } from '../../../core/refusal.ts';
import { requireDocument, requireKept, type Tell } from './documents.ts';
import { textFacts } from './text-facts.ts';

interface RevisionRow {
  readonly number: number;
  readonly at: number;
  readonly made: string;
  readonly remark: string;
  readonly text: string;
  readonly journal: string;
  readonly document_hash: string;
  readonly chain_hash: string;
}

interface Saved {
  readonly id: string;
  readonly at: number;
  readonly text: string;
  readonly remark: string;
  readonly now: string;
}

/** Revisions of a document: append-only, each holds the hash of the one before it, and the journal that led to it. */
export function revisionsOf(db: Database, tell: Tell) {
  const rows = (id: string): RevisionRow[] =>
    db.prepare<[string], RevisionRow>('SELECT * FROM revisions WHERE document = ? ORDER BY number').all(id);

  const save = db.transaction(
    ({ id, at, text, remark, now }: Saved, { schema, documentHash }: Awaited<ReturnType<typeof textFacts>>) => {
      const { head, base } = requireKept(db, id);
      if (at > head || at < base)
        throw refusal({
          what:
            at > head
              ? `The store holds ${head} edits of this document, the revision is of edit ${at}`
              : `A newer revision holds edit ${base}, this one would be of edit ${at}`,
          where: { document: id },
          mend: 'Open the document again, then save the revision.',
        });
      const entries = db
        .prepare<[string, number], JournalEntry>(
          'SELECT kind, edit FROM journal WHERE document = ? AND number <= ? ORDER BY number',
        )
        .all(id, at);
      const last = rows(id).at(-1);
      const revision = {
        number: (last?.number ?? 0) + 1,
        at,
        made: now,
        remark,
        text,
        journal: JSON.stringify(entries),
        document_hash: documentHash,
      };
      const chain_hash = chainHash(id, revision, last?.chain_hash ?? '');
      db.prepare(
        'INSERT INTO revisions VALUES (@id, @number, @at, @made, @remark, @text, @journal, @document_hash, @chain_hash)',
      ).run({ id, ...revision, chain_hash });
      db.prepare('DELETE FROM journal WHERE document = ? AND number <= ?').run(id, at);
      db.prepare('UPDATE documents SET base = ?, schema = ? WHERE id = ?').run(at, schema, id);
      return { ...revision, chain_hash };
    },
  ).immediate;

  return {
    saveRevision: async (takes: Saved): Promise<RevisionLine> => {
      const row = save(takes, await textFacts(takes.text));
      tell({ kind: 'revision-saved', id: takes.id, number: row.number, at: row.at });
      return lineOf(row);
    },
    listRevisions: ({ id }: { id: string }): RevisionLine[] => {
      requireDocument(db, id);
      return requireChain(id, rows(id)).map(lineOf);
    },
    readRevision: ({ id, number }: { id: string; number: number }): { text: string } => {
      requireDocument(db, id);
      const found = requireChain(id, rows(id)).find((row) => row.number === number);
      if (found) return { text: found.text };
      throw refusal({
        what: `There is no revision ${number} of this document`,
        where: { document: id },
        mend: 'Choose one of its list.',
      });
    },
  };
}

const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex');

/** SHA-256 over a JSON list of all that the revision holds, with the hash of the one before ('' for the first). */
const chainHash = (
  id: string,
  { number, at, made, remark, text, journal, document_hash }: Omit<RevisionRow, 'chain_hash'>,
  before: string,
): string =>
  sha256(JSON.stringify([id, number, at, made, remark, sha256(text), sha256(journal), document_hash, before]));

/** The revisions as given. Refuses where one was changed, lost or put in from outside, naming the first. */
function requireChain(id: string, rows: readonly RevisionRow[]): readonly RevisionRow[] {
  let before = '';
  rows.forEach((row, n) => {
    if (row.number !== n + 1 || row.chain_hash !== chainHash(id, row, before))
      throw refusal({
        what: `Revision ${n + 1} was changed or taken away outside Stillplate: its hash does not fit`,
        where: { document: id, revision: n + 1 },
        mend:
          n === 0
            ? 'Compare with a backup; nothing was changed now.'
            : `Revisions up to ${n} are whole. Compare with a backup; nothing was changed now.`,
      });
    before = row.chain_hash;
  });
  return rows;
}

const lineOf = ({ number, made, remark, document_hash, chain_hash }: RevisionRow): RevisionLine => ({
  number,
  made,
  remark,
  documentHash: document_hash,
  chainHash: chain_hash,
});
