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
  /** Steps in `past` that the journal no longer holds: they were put away with a revision. */
  readonly putAway: number;
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

export const historyOf = (raw: RawDocument): History => ({ raw, head: 0, past: [], future: [], putAway: 0 });

/** The history after an edit. Refuses what `applyEdit` refuses. */
export function edited(history: History, edit: Edit): Changed {
  const raw = applyEdit(history.raw, edit);
  return {
    history: {
      ...history,
      raw,
      head: history.head + 1,
      past: [...history.past, { raw: history.raw, words: editWords(edit) }],
      future: [],
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
  const beyond = history.past.length <= history.putAway;
  return {
    history: { raw: step.raw, head: history.head + 1, past, future, putAway: Math.min(history.putAway, past.length) },
    entries: [beyond ? replaced(step.raw) : { kind: 'undo', edit: '' }],
  };
}

/** One step forth; null when there is none. */
export function redone(history: History): Changed | null {
  const step = history.future.at(-1);
  if (!step) return null;
  const beyond = history.past.length < history.putAway;
  return {
    history: {
      ...history,
      raw: step.raw,
      head: history.head + 1,
      past: [...history.past, { raw: history.raw, words: step.words }],
      future: history.future.slice(0, -1),
    },
    entries: [beyond ? replaced(step.raw) : { kind: 'redo', edit: '' }],
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
