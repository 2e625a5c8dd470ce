import { applyEdit, type Edit } from '../document/edit.ts';
import { editWords } from '../document/edit-words.ts';
import type { RawDocument } from '../document/read-document.ts';
import type { JournalEntry } from '../host/host-schema.ts';
import { refusal } from '../refusal.ts';

/** A document with its steps back and forth. Every change gives the journal entries that say it. */
export interface History {
  readonly raw: RawDocument;
  readonly head: number;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  /**
   * The documents that a step back or forth of the journal alone would give. A revision puts the journal away, and with
   * it the steps that it holds; a step to a document that is not here is told as an edit of its own.
   */
  readonly journal: { readonly past: readonly RawDocument[]; readonly future: readonly RawDocument[] };
}

/** A document as it was beside the words for the change between. */
interface Step {
  readonly raw: RawDocument;
  readonly words: string;
}

export interface Changed {
  readonly history: History;
  readonly entries: readonly JournalEntry[];
}

const empty: History['journal'] = { past: [], future: [] };

export const historyOf = (raw: RawDocument): History => ({ raw, head: 0, past: [], future: [], journal: empty });

/** The same history when its journal up to now was put away with a revision. */
export const putAway = (history: History): History => ({ ...history, journal: empty });

/** The history after an edit. Refuses what `applyEdit` refuses. */
export function edited(history: History, edit: Edit): Changed {
  const raw = applyEdit(history.raw, edit);
  return {
    history: {
      raw,
      head: history.head + 1,
      past: [...history.past, { raw: history.raw, words: editWords(edit) }],
      future: [],
      journal: { past: [...history.journal.past, history.raw], future: [] },
    },
    entries: [{ kind: 'edit', edit: JSON.stringify(edit) }],
  };
}

/** One step back; null when there is none. */
export function undone(history: History): Changed | null {
  const step = history.past.at(-1);
  if (!step) return null;
  const past = history.past.slice(0, -1);
  const future = [...history.future, { raw: history.raw, words: step.words }];
  return stepped(history, 'undo', step.raw, { past, future });
}

/** One step forth; null when there is none. */
export function redone(history: History): Changed | null {
  const step = history.future.at(-1);
  if (!step) return null;
  const past = [...history.past, { raw: history.raw, words: step.words }];
  return stepped(history, 'redo', step.raw, { past, future: history.future.slice(0, -1) });
}

/** A step to a document, as the journal can say it. */
function stepped(
  { raw: from, head, journal }: History,
  kind: 'undo' | 'redo',
  raw: RawDocument,
  steps: Pick<History, 'past' | 'future'>,
): Changed {
  const { past, future } = journal;
  const [source, other] = kind === 'undo' ? [past, future] : [future, past];
  if (source.at(-1) !== raw)
    return {
      history: { raw, head: head + 1, ...steps, journal: { past: [...past, from], future: [] } },
      entries: [replaced(raw)],
    };
  const left = source.slice(0, -1);
  const grown = [...other, from];
  return {
    history: {
      raw,
      head: head + 1,
      ...steps,
      journal: kind === 'undo' ? { past: left, future: grown } : { past: grown, future: left },
    },
    entries: [{ kind, edit: '' }],
  };
}

const replaced = (raw: RawDocument): JournalEntry => ({
  kind: 'edit',
  edit: JSON.stringify({ kind: 'replaceDocument', document: raw } satisfies Edit),
});

/** A document brought up to its journal's last entry. Refuses a journal that does not fit its document. */
export function replayed(raw: RawDocument, journal: readonly JournalEntry[]): History {
  return journal.reduce((history, entry, n) => {
    const changed =
      entry.kind === 'edit'
        ? edited(history, JSON.parse(entry.edit) as Edit)
        : entry.kind === 'undo'
          ? undone(history)
          : redone(history);
    if (!changed)
      throw refusal({
        what: `Entry ${n + 1} of the journal takes a step that is not there`,
        mend: 'Open the last revision; the journal is kept beside it.',
      });
    return changed.history;
  }, historyOf(raw));
}
