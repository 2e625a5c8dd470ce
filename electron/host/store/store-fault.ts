import { Refusal } from '../../../core/refusal.ts';
import { sqliteInWords } from './sqlite-words.ts';

/** Why there is no store, from what opening it threw. */
export function storeFault(thrown: unknown): { readonly what: string; readonly mend: string } {
  const error = sqliteInWords(thrown);
  if (error instanceof Refusal) return { what: error.what, mend: error.mend };
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const message = error instanceof Error ? error.message.split('\n')[0]! : String(error);
  const without = 'Until then documents are not kept; save them as files.';
  if (/NODE_MODULE_VERSION|different Node\.js version/.test(String((error as Error).message)))
    return {
      what: 'SQLite on this machine was built for another version of Node or Electron',
      mend: `Run “npm rebuild better-sqlite3” with the Node that starts Stillplate (for Electron: see “SQLite in Electron” in DEVELOPERS.md). ${without}`,
    };
  if (code.endsWith('MODULE_NOT_FOUND') || code === 'ERR_DLOPEN_FAILED' || /bindings file/.test(message))
    return {
      what: 'SQLite (the package better-sqlite3) is not installed here, so there is no store',
      mend: `Run “npm install” again where a compiler or the network is at hand. ${without}`,
    };
  if (['EACCES', 'EPERM', 'EROFS'].includes(code))
    return { what: 'The data folder may not be written to', mend: `Set STILLPLATE_DATA to another folder. ${without}` };
  if (code === 'ENOSPC' || code === 'EDQUOT')
    return { what: 'The disk of the data folder is full', mend: `Free some space, then start again. ${without}` };
  if (['ENOTDIR', 'EEXIST', 'ENOENT'].includes(code))
    return {
      what: 'The data folder cannot be made: a file is in its place, or its drive is not there',
      mend: `Set STILLPLATE_DATA to another folder. ${without}`,
    };
  return { what: `The store cannot be opened: ${message}`, mend: `Report this, please. ${without}` };
}
