import { createHash } from 'node:crypto';
import { readFile, stat } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import type { ChosenFile, WrittenFile } from '../../core/host/host-schema.ts';
import { refusal } from '../../core/refusal.ts';
import type { Mirror } from './store/documents.ts';
import { CannotWrite, writeFileWhole } from './write-file.ts';

/** Files of the user. The page knows each by a handle and its name, never by its path. */
export interface DocumentFiles {
  /** Reads a file that the user chose and gives it a handle. Refuses one that cannot be read as text. */
  readonly choose: (path: string) => Promise<ChosenFile>;
  /** The file of a handle as it was when it was read. */
  readonly chosen: (handle: string) => Mirror;
  /** Writes a file, whole or not at all. Gives what it is now. */
  readonly write: (path: string, content: Uint8Array | string) => Promise<{ mirror: Mirror; file: WrittenFile }>;
  /** Writes over a file unless it was changed since `mirror` was taken: then its text. Refuses a file that may only be read. */
  readonly writeOver: (
    mirror: Mirror,
    text: string,
    force: boolean,
  ) => Promise<{ mirror: Mirror; file: WrittenFile } | { changed: string }>;
  /** Path of a file written before, by its name. */
  readonly writtenAt: (name: string) => string;
}

const largest = 40_000_000;

export function documentFiles(newId: () => string): DocumentFiles {
  const handles = new Map<string, Mirror>();
  const written = new Map<string, string>();

  async function write(path: string, content: Uint8Array | string) {
    const name = nameOf(path);
    await requireWritable(path);
    try {
      await writeFileWhole(path, content);
    } catch (error) {
      if (!(error instanceof CannotWrite)) throw error;
      throw refusal({
        what: `“${name}” cannot be written: ${reasonIn(error.message, writing, path)}`,
        where: { file: name },
        mend: 'The file there before, if any, is as it was. Choose another place, or mend this and save again.',
      });
    }
    written.set(name, path);
    const { mtimeMs } = await stat(path);
    return {
      mirror: { path, hash: hashOf(content), changed: mtimeMs },
      file: { name, folder: nameOf(dirname(path)) },
    };
  }

  return {
    choose: async (path) => {
      const { bytes, changed, readOnly } = await read(path);
      const handle = newId();
      handles.set(handle, { path, hash: hashOf(bytes), changed });
      return { handle, name: nameOf(path), text: textOf(bytes, nameOf(path)), readOnly };
    },
    chosen: (handle) => {
      const mirror = handles.get(handle);
      if (mirror) return mirror;
      throw refusal({ what: 'This file is not known any more', where: { handle }, mend: 'Choose the file again.' });
    },
    write,
    writeOver: async (mirror, text, force) => {
      const there = await stat(mirror.path).catch(() => null);
      // A file that was moved or taken away is written anew; a folder that is gone says so when writing.
      if (there && !force) {
        const { bytes } = await read(mirror.path);
        if (hashOf(bytes) !== mirror.hash) return { changed: textOf(bytes, nameOf(mirror.path)) };
      }
      return write(mirror.path, text);
    },
    writtenAt: (name) => {
      const path = written.get(name);
      if (path !== undefined) return path;
      throw refusal({
        what: `“${name}” was not written by this window`,
        where: { file: name },
        mend: 'Save it again.',
      });
    },
  };
}

const nameOf = (path: string): string => basename(path).slice(0, 400);
const hashOf = (content: Uint8Array | string): string => createHash('sha256').update(content).digest('hex');

async function read(path: string): Promise<{ bytes: Uint8Array; changed: number; readOnly: boolean }> {
  const name = nameOf(path);
  const refused = (what: string, mend = 'Choose another file.') => refusal({ what, where: { file: name }, mend });
  try {
    const about = await stat(path);
    if (!about.isFile()) throw refused(`“${name}” is a folder or a device, not a file`);
    if (about.size > largest) throw refused(`“${name}” has ${about.size} bytes, the limit is ${largest}`, 'Check that this is a Stillplate document.'); // prettier-ignore
    return { bytes: await readFile(path), changed: about.mtimeMs, readOnly: isReadOnly(about.mode) };
  } catch (error) {
    if (!(error instanceof Error && 'code' in error)) throw error;
    throw refused(`“${name}” cannot be read: ${reasonIn(String(error.code), reading, path)}`, 'Check the file and its drive, then try again.'); // prettier-ignore
  }
}

function textOf(bytes: Uint8Array, name: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw refusal({
      what: `“${name}” is not UTF-8 text`,
      where: { file: name },
      mend: 'Save it as UTF-8; nothing was changed.',
    });
  }
}

/** Nobody may write it: the mark of a file that shall stay as it is. Writing beside and renaming would pass over it. */
const isReadOnly = (mode: number): boolean => (mode & 0o222) === 0;

async function requireWritable(path: string): Promise<void> {
  const about = await stat(path).catch(() => null);
  if (!about?.isFile() || !isReadOnly(about.mode)) return;
  throw refusal({
    what: `“${nameOf(path)}” is marked read-only`,
    where: { file: nameOf(path) },
    mend: 'Save under another name, or take the mark off the file. The document is kept in the store.',
  });
}

const drive: Readonly<Record<string, string>> = {
  EIO: 'the disk or network drive does not answer as it should',
  ESTALE: 'the network drive was cut off; it must be connected anew',
  ETIMEDOUT: 'the network drive does not answer',
  EHOSTDOWN: 'the network drive does not answer',
  EHOSTUNREACH: 'the network drive cannot be reached',
  ENETDOWN: 'the network is down',
  ENETUNREACH: 'the network drive cannot be reached',
  ENOTCONN: 'the network drive is not connected',
  ENODEV: 'the drive is no longer there',
  ENXIO: 'the drive is no longer there',
};
const writing: Readonly<Record<string, string>> = {
  ...drive,
  EBUSY: 'another program holds it open',
  ETXTBSY: 'another program holds it open',
  EAGAIN: 'another program has locked it',
};
const reading: Readonly<Record<string, string>> = {
  ...drive,
  ENOENT: 'it is no longer there',
  EACCES: 'it may not be read by this user',
  EPERM: 'it may not be read by this user',
  EBUSY: 'another program has locked it',
};

/** The reason for which there are words, else what the system said, without the path: the page gets none. */
function reasonIn(message: string, words: Readonly<Record<string, string>>, path: string): string {
  const code = /\bE[A-Z]{2,}\b/.exec(message)?.[0] ?? '';
  return words[code] ?? message.replace(`Cannot write ${path}: `, '').split('. ')[0]!.replaceAll(dirname(path), '…');
}
