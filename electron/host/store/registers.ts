import type { Database } from 'better-sqlite3';
import { readRegister } from '../../../core/issue/register.ts';
import { refusal } from '../../../core/refusal.ts';
import { requireDocument, requireKept } from './documents.ts';

/** The register of each document's notes: one text that only ever grows. */
export function registersOf(db: Database) {
  const textOf = (id: string): string | null =>
    db.prepare<[string], string>('SELECT text FROM registers WHERE document = ?').pluck().get(id) ?? null;
  const keep = db.transaction(({ id, text, now }: { id: string; text: string; now: string }): null => {
    requireKept(db, id);
    const { events } = readRegister(text);
    const kept = textOf(id);
    const before = kept === null ? [] : readRegister(kept).events;
    // Each hash stands for all entries up to it.
    if (before.length > 0 && events[before.length - 1]?.hash !== before.at(-1)!.hash)
      throw refusal({
        what: 'The register that is kept has entries which this one lacks',
        where: { document: id },
        mend: 'Another window took a step meanwhile, or the file is of another document: look at the register as it is now. Nothing was changed.',
      });
    db.prepare('INSERT INTO registers VALUES (?, ?, ?) ON CONFLICT (document) DO UPDATE SET changed = excluded.changed, text = excluded.text').run(id, now, text); // prettier-ignore
    return null;
  }).immediate;
  return {
    readRegister: ({ id }: { id: string }): { text: string | null } => {
      requireDocument(db, id);
      return { text: textOf(id) };
    },
    keepRegister: (takes: Parameters<typeof keep>[0]) => keep(takes),
  };
}
