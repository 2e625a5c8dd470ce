import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Runs a test in a folder of its own, which is taken away afterwards. */
export async function inFolder<T>(test: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'stillplate-test-'));
  try {
    return await test(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
