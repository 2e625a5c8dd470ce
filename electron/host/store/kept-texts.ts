import type { Database } from 'better-sqlite3';

/** Texts that are for all documents: rows added to the catalogue, and the window's settings. */
export const keptTextsOf = (db: Database) => ({
  listCatalogueAdditions: (_takes: object) =>
    db.prepare<[], { name: string; text: string }>('SELECT name, text FROM catalogue_additions ORDER BY name').all(),
  keepCatalogueAddition: ({ name, text, now }: { name: string; text: string; now: string }): null => {
    db.prepare('INSERT OR REPLACE INTO catalogue_additions VALUES (?, ?, ?)').run(name, text, now);
    return null;
  },
  dropCatalogueAddition: ({ name }: { name: string }): null => {
    db.prepare('DELETE FROM catalogue_additions WHERE name = ?').run(name);
    return null;
  },
  readSettings: (_takes: object) => ({
    text: db.prepare<[], string>("SELECT text FROM settings WHERE name = 'window'").pluck().get() ?? '{}',
  }),
  keepSettings: ({ text }: { text: string }): null => {
    db.prepare("INSERT OR REPLACE INTO settings VALUES ('window', ?)").run(text);
    return null;
  },
});
