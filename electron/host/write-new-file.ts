import { randomUUID } from 'node:crypto';
import { link, lstat, open, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { CannotWrite, reasonOf, writing } from './write-file.ts';

/**
 * Writes a file where there is none, whole or not at all, and never over another: written beside and synced, then given
 * its name by a link, which the system refuses where the name is taken, also by a file that appeared in between.
 * Gives false, with nothing changed, where the name is taken (a file, a folder, a link that leads nowhere).
 * A disk that knows no links gets the file at its name at once, opened only where none is. Throws CannotWrite.
 */
export async function writeNewFile(path: string, bytes: Uint8Array | string): Promise<boolean> {
  if (await isThere(path)) return false;
  const beside = join(dirname(path), `.stillplate-${randomUUID()}.part`);
  try {
    try {
      await writeAndSync(beside, bytes);
      await link(beside, path);
    } finally {
      await rm(beside, { force: true }).catch(() => undefined);
    }
    return true;
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return false;
    if (!noLinks.has(codeOf(error))) throw new CannotWrite(path, reasonOf(error, writing));
    return writeInPlace(path, bytes);
  }
}

async function writeInPlace(path: string, bytes: Uint8Array | string): Promise<boolean> {
  try {
    await writeAndSync(path, bytes);
    return true;
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return false;
    // It was opened where no file was: what stands there is our own half.
    await rm(path, { force: true }).catch(() => undefined);
    throw new CannotWrite(path, reasonOf(error, writing));
  }
}

async function writeAndSync(path: string, bytes: Uint8Array | string): Promise<void> {
  const file = await open(path, 'wx');
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
}

const isThere = (path: string): Promise<boolean> =>
  lstat(path).then(
    () => true,
    () => false,
  );

/** What a system says that cannot link. */
const noLinks = new Set(['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK', 'EXDEV']);
const codeOf = (error: unknown): string => (error instanceof Error && 'code' in error ? String(error.code) : '');
