import { readFile, stat } from 'node:fs/promises';
import { refusal } from '../../core/refusal.ts';
import { reading, reasonOf } from '../host/write-file.ts';

/** Bytes of a file that is no text: a note, a certificate. Refuses one that is missing, a folder, or larger than `most`. */
export async function openBytes(path: string, most = 100_000_000): Promise<Uint8Array> {
  const where = { file: path };
  try {
    const about = await stat(path);
    if (!about.isFile()) throw refusal({ what: 'This is no file', where, mend: 'Name a file.' });
    if (about.size > most)
      throw refusal({ what: `The file has ${about.size} bytes, the limit is ${most}`, where, mend: 'Check the name.' });
    return new Uint8Array(await readFile(path));
  } catch (error) {
    if (!(error instanceof Error && 'code' in error)) throw error;
    const what =
      error.code === 'ENOENT' ? 'There is no such file' : `The file cannot be read: ${reasonOf(error, reading)}`;
    throw refusal({ what, where, mend: 'Check the name and the folder.' });
  }
}
