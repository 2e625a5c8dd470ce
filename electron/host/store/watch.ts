import type { Database } from 'better-sqlite3';
import type { Tell } from './documents.ts';

interface Seen {
  readonly id: string;
  readonly head: number;
  readonly base: number;
  readonly writer: string;
  readonly changes: string;
  readonly revisions: number;
}

/**
 * Tells what other processes wrote: SQLite's `data_version` moves when another connection has committed, so one look
 * costs next to nothing. Ours is told where it is written; `look` is to be called now and then.
 */
export function watch(db: Database, tell: Tell): { look: () => void } {
  const all = db.prepare<[], Seen>(
    `SELECT id, head, base, writer, name || changed || coalesce(trashed, '') || coalesce(file_path, '') AS changes,
      (SELECT count(*) FROM revisions WHERE document = id) AS revisions FROM documents`,
  );
  const now = (): Map<string, Seen> => new Map(all.all().map((row) => [row.id, row]));
  const version = (): unknown => db.pragma('data_version', { simple: true });
  let seenVersion = version();
  let seen = now();
  return {
    look: () => {
      const at = version();
      if (at === seenVersion) return;
      seenVersion = at;
      const before = seen;
      seen = now();
      for (const row of seen.values()) {
        const old = before.get(row.id);
        if (old?.head !== row.head || old.changes !== row.changes || old.writer !== row.writer)
          tell({ kind: 'document-changed', id: row.id, head: row.head, writer: row.writer });
        if (old && row.revisions > old.revisions)
          tell({ kind: 'revision-saved', id: row.id, number: row.revisions, at: row.base });
      }
      for (const { id, head, writer } of before.values())
        if (!seen.has(id)) tell({ kind: 'document-changed', id, head, writer });
    },
  };
}
