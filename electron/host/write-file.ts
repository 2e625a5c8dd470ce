import { open, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** A file could not be written; the old one, if any, is as it was. */
export class CannotWrite extends Error {
  override readonly name = 'CannotWrite';
  constructor(path: string, reason: string) {
    super(`Cannot write ${path}: ${reason}. The file there before, if any, is as it was. Free some space or choose another place.`);
  }
}

/** Writes a whole file or none of it: beside, synced, renamed, and the folder synced. Throws CannotWrite. */
export async function writeFileWhole(path: string, bytes: Uint8Array | string): Promise<void> {
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  try {
    const file = await open(beside, 'wx');
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, path);
    await syncFolder(dirname(path));
  } catch (error) {
    await rm(beside, { force: true });
    throw new CannotWrite(path, reasonOf(error));
  }
}

/** The rename itself must reach the disk. Some file systems cannot sync a folder; the file is complete all the same. */
async function syncFolder(path: string): Promise<void> {
  const folder = await open(path, 'r').catch(() => undefined);
  await folder?.sync().catch(() => undefined);
  await folder?.close();
}

const reasons: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EACCES: 'the folder may not be written to',
  EPERM: 'the folder may not be written to',
  EROFS: 'the disk is read-only',
  ENOENT: 'the folder does not exist',
  EISDIR: 'a folder is in its place',
  ENOTDIR: 'a part of the path is a file, not a folder',
  EEXIST: 'another run is writing it',
};

/** Node's error in words. */
export function reasonOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return reasons[code] ?? (error instanceof Error ? error.message : String(error));
}
