import type { Database } from 'better-sqlite3';
import type { JournalEntry } from '../../../core/host/host-schema.ts';
import { refusal } from '../../../core/refusal.ts';
import { requireKept, type Tell } from './documents.ts';

export interface Appended {
  readonly id: string;
  readonly writer: string;
  readonly after: number;
  readonly name: string;
  readonly entries: readonly JournalEntry[];
  readonly now: string;
}
export type AppendAnswer =
  | { readonly written: true; readonly head: number }
  | { readonly written: false; readonly head: number; readonly since: JournalEntry[] };

/** The journal of edits: compare and append, in one transaction that is on the disk before it is acknowledged. */
export function journalOf(db: Database, tell: Tell) {
  const append = db.transaction(({ id, writer, after, name, entries, now }: Appended): AppendAnswer => {
    const { head, base } = requireKept(db, id);
    if (after > head)
      throw refusal({
        what: `The store holds ${head} edits of this document, the window has seen ${after}`,
        where: { document: id },
        mend: 'A backup was restored meanwhile, it seems. Save this document as a file, then open it again from the list.',
      });
    if (after < head) {
      const { since, ours } = entriesAfter(db, id, after, base, writer);
      // Our own message once more: its answer was lost on the way.
      if (ours && JSON.stringify(since) === JSON.stringify(plain(entries))) return { written: true, head };
      return { written: false, head, since };
    }
    requireSteps(db, id, entries);
    const insert = db.prepare('INSERT INTO journal VALUES (?, ?, ?, ?, ?, ?)');
    entries.forEach(({ kind, edit }, n) => insert.run(id, head + 1 + n, kind, edit, writer, now));
    const newHead = head + entries.length;
    db.prepare('UPDATE documents SET head = ?, name = ?, writer = ?, changed = ? WHERE id = ?').run(newHead, name, writer, now, id); // prettier-ignore
    return { written: true, head: newHead };
  }).immediate;

  return {
    appendEdits: (takes: Appended): AppendAnswer => {
      const answer = append(takes);
      if (answer.written) tell({ kind: 'document-changed', id: takes.id, head: answer.head, writer: takes.writer });
      return answer;
    },
  };
}

const plain = (entries: readonly JournalEntry[]): JournalEntry[] => entries.map(({ kind, edit }) => ({ kind, edit }));

/** Entries after one, those put away with revisions too; and whether they are all of one writer. */
function entriesAfter(db: Database, id: string, after: number, base: number, writer: string) {
  const rows = db
    .prepare<[string, number], JournalEntry & { writer: string }>(
      'SELECT kind, edit, writer FROM journal WHERE document = ? AND number > ? ORDER BY number',
    )
    .all(id, after);
  const putAway = after >= base ? [] : entriesPutAway(db, id).slice(after);
  return {
    since: [...putAway, ...plain(rows)],
    ours: after >= base && rows.every((row) => row.writer === writer),
  };
}

/** All entries that revisions hold, the first has number 1. */
const entriesPutAway = (db: Database, id: string): JournalEntry[] =>
  db
    .prepare<[string], string>('SELECT journal FROM revisions WHERE document = ? ORDER BY number')
    .pluck()
    .all(id)
    .flatMap((journal) => JSON.parse(journal) as JournalEntry[]);

/** A step back or forth that the journal does not hold would keep the document from being opened again. */
function requireSteps(db: Database, id: string, entries: readonly JournalEntry[]): void {
  let past = 0;
  let future = 0;
  const steps = db.prepare<[string], JournalEntry['kind']>('SELECT kind FROM journal WHERE document = ? ORDER BY number').pluck(); // prettier-ignore
  if (entries.every(({ kind }) => kind === 'edit')) return;
  for (const kind of [...steps.all(id), ...entries.map((entry) => entry.kind)]) {
    if (kind === 'edit') {
      past++;
      future = 0;
    } else if (kind === 'undo' && past > 0) {
      past--;
      future++;
    } else if (kind === 'redo' && future > 0) {
      past++;
      future--;
    } else
      throw refusal({
        what: 'This step was put away with a revision that another window saved',
        where: { document: id },
        mend: 'Open the document again; earlier revisions are in its list.',
      });
  }
}
