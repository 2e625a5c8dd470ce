import { randomUUID } from 'node:crypto';
import { open, realpath, rename, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** A file could not be written; the old one, if any, is as it was. */
export class CannotWrite extends Error {
  override readonly name = 'CannotWrite';
  constructor(path: string, reason: string) {
    super(
      `Cannot write ${path}: ${reason}. The file there before, if any, is as it was. Free some space or choose another place.`,
    );
  }
}

/**
 * Writes a whole file or none of it: beside, synced, renamed, and the folder synced. A link keeps pointing where it
 * did, an old file keeps its permissions. Throws CannotWrite, also for a folder or a device in the file's place.
 */
export async function writeFileWhole(path: string, bytes: Uint8Array | string): Promise<void> {
  let beside: string | undefined;
  try {
    const target = await realpath(path).catch(() => path);
    const old = await stat(target).catch(() => undefined);
    if (old?.isDirectory()) throw new CannotWrite(path, 'a folder is in its place');
    if (old && !old.isFile()) throw new CannotWrite(path, 'a device is in its place, not a file');
    beside = join(dirname(target), `.stillplate-${randomUUID()}.part`);
    const file = await open(beside, 'wx', old ? old.mode & 0o777 : 0o666);
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, target);
    await syncFolder(dirname(target));
  } catch (error) {
    // What went wrong first is what must be told; a part that cannot be taken away is no fault of the document's.
    if (beside) await rm(beside, { force: true }).catch(() => undefined);
    throw error instanceof CannotWrite ? error : new CannotWrite(path, reasonOf(error, writing));
  }
}

/** The rename itself must reach the disk. Some file systems cannot sync a folder; the file is complete all the same. */
async function syncFolder(path: string): Promise<void> {
  const folder = await open(path, 'r').catch(() => undefined);
  await folder?.sync().catch(() => undefined);
  await folder?.close();
}

type Reasons = Readonly<Record<string, string>>;

const anyway: Reasons = {
  ENOENT: 'the folder does not exist',
  ENOTDIR: 'a part of the path is a file, not a folder',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'the links of the path go in a circle',
};
/** Words for what keeps a file from being written. */
export const writing: Reasons = {
  ...anyway,
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk is full for this user',
  EFBIG: 'the file is larger than the system allows',
  EACCES: 'the folder may not be written to',
  EPERM: 'the folder may not be written to',
  EROFS: 'the disk is read-only',
  EISDIR: 'a folder is in its place',
};
/** Words for what keeps a file from being read. */
export const reading: Reasons = {
  ...anyway,
  EACCES: 'it may not be read by this user',
  EPERM: 'it may not be read by this user',
  EIO: 'the disk cannot be read',
};

/** Node's error in words. */
export function reasonOf(error: unknown, reasons: Reasons): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return (
    (Object.hasOwn(reasons, code) ? reasons[code] : undefined) ??
    (error instanceof Error ? error.message : String(error))
  );
}
