import { refusal, type Refusal } from '../../../core/refusal.ts';

const kept = 'Nothing was changed; what was kept before is as it was.';

/** What a code of SQLite says to the user, by its first part (https://sqlite.org/rescode.html). */
const words: Readonly<Record<string, { readonly what: string; readonly mend: string }>> = {
  FULL: { what: 'The disk of the data folder is full', mend: `Free some space, then try again. ${kept}` },
  BUSY: {
    what: 'Another program has held the store for ten seconds',
    mend: `Try again; close other windows of Stillplate if it stays so. ${kept}`,
  },
  LOCKED: { what: 'The store is in use', mend: `Try again. ${kept}` },
  READONLY: {
    what: 'The data folder may only be read',
    mend: `Allow writing to it, or set STILLPLATE_DATA to another folder. ${kept}`,
  },
  PERM: { what: 'The data folder may not be used by this user', mend: 'Set STILLPLATE_DATA to another folder.' },
  CANTOPEN: {
    what: 'The store in the data folder cannot be opened',
    mend: 'Check that the folder is there and may be written to, or set STILLPLATE_DATA to another.',
  },
  IOERR: {
    what: 'The disk or network drive of the data folder does not answer as it should',
    mend: `Check the drive, then try again. ${kept}`,
  },
  CORRUPT: {
    what: 'The store is damaged',
    mend: 'Save your documents as files, then start Stillplate again: it sets the damaged store aside, whole.',
  },
  NOTADB: { what: 'The store is no database', mend: 'Start Stillplate again: it sets the file aside, whole.' },
  TOOBIG: { what: 'This is more than the store takes at once', mend: `Divide it. ${kept}` },
  NOMEM: { what: 'There is not enough memory', mend: `Close something, then try again. ${kept}` },
};

export const sqliteCode = (error: unknown): string =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' && error.code.startsWith('SQLITE_')
    ? error.code.slice('SQLITE_'.length)
    : '';

/** A fault of SQLite in words; any other error, and a fault that is ours, as they are. */
export function sqliteInWords(error: unknown): unknown {
  const found = words[sqliteCode(error).split('_')[0]!];
  return found ? (refusal(found) satisfies Refusal) : error;
}
