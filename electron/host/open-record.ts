import { readFile, stat } from 'node:fs/promises';
import { refusal } from '../../core/refusal.ts';
import { reading, reasonOf } from './write-file.ts';

/** Largest record that is read at once: some ten million rows. */
const largest = 200_000_000;

/** Text of a record's file. Refuses a file that is missing, a folder or device, too large, or not UTF-8. */
export async function openRecord(path: string): Promise<string> {
  const where = { file: path };
  try {
    const about = await stat(path);
    if (!about.isFile() && !about.isFIFO())
      throw refusal({
        what: about.isDirectory() ? 'This is a folder, not a record' : 'This is a device, not a record',
        where,
        mend: 'Name a .csv file with one stress on each row.',
      });
    if (about.size > largest)
      throw refusal({
        what: `The file has ${about.size} bytes, the limit is ${largest}`,
        where,
        mend: 'Cut the record into parts and add their damage.',
      });
    return new TextDecoder('utf-8', { fatal: true }).decode(await readFile(path));
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
