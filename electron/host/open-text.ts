import { readFile, stat } from 'node:fs/promises';
import { refusal } from '../../core/refusal.ts';
import { reading, reasonOf } from './write-file.ts';

/** What a file should be, for the words of a refusal. */
export interface TextFile {
  /** "document", "record", "plan". */
  readonly is: string;
  /** "a .stillplate file". */
  readonly named: string;
  /** Bytes that are read at most, and what to do with more. */
  readonly largest: number;
  readonly tooLarge: string;
}

/** Bytes and text of a file. Refuses a file that is missing, a folder or device, too large, or not UTF-8. */
export async function openText(
  path: string,
  { is, named, largest, tooLarge }: TextFile,
): Promise<{ readonly bytes: Uint8Array; readonly text: string }> {
  const where = { file: path };
  try {
    const about = await stat(path);
    if (about.isDirectory())
      throw refusal({ what: `This is a folder, not a ${is}`, where, mend: `Name ${named} in it.` });
    // A pipe may be read; a device may never end.
    if (!about.isFile() && !about.isFIFO())
      throw refusal({ what: `This is a device, not a ${is}`, where, mend: `Name ${named}.` });
    if (about.size > largest)
      throw refusal({
        what: `The file has ${about.size} bytes, the limit is ${String(largest).replace(/\B(?=(\d{3})+$)/g, ',')}`,
        where,
        mend: tooLarge,
      });
    const bytes = new Uint8Array(await readFile(path));
    return { bytes, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch (error) {
    if (!(error instanceof Error && 'code' in error)) throw error;
    if (error.code === 'ERR_ENCODING_INVALID_ENCODED_DATA')
      throw refusal({ what: 'The file is not UTF-8 text', where, mend: 'Save it as UTF-8; nothing was changed.' });
    throw refusal({
      what: error.code === 'ENOENT' ? 'There is no such file' : `The file cannot be read: ${reasonOf(error, reading)}`,
      where,
      mend: 'Check the name and the folder.',
    });
  }
}
