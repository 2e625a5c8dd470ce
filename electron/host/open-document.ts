import { readFile, stat } from 'node:fs/promises';
import { readDocument, readDocumentText, type RawDocument } from '../../core/document/read-document.ts';
import type { PlateDocument } from '../../core/document/schema.ts';
import { refusal } from '../../core/refusal.ts';
import { reading, reasonOf } from './write-file.ts';

export interface OpenedDocument {
  readonly raw: RawDocument;
  readonly document: PlateDocument;
  /** The file as it was read, for the note to carry. */
  readonly bytes: Uint8Array;
}

/** Reads a document file. Refuses a file that is missing, a folder, too large, not UTF-8, or no valid document. */
export async function openDocument(path: string): Promise<OpenedDocument> {
  const { bytes, text } = await fileAt(path);
  const raw = readDocumentText(text);
  return { raw, document: readDocument(raw), bytes };
}

async function fileAt(path: string): Promise<{ bytes: Uint8Array; text: string }> {
  const where = { file: path };
  try {
    const about = await stat(path);
    if (about.isDirectory())
      throw refusal({ what: 'This is a folder, not a document', where, mend: 'Name a .stillplate file in it.' });
    // A pipe may be read; a device may never end.
    if (!about.isFile() && !about.isFIFO())
      throw refusal({ what: 'This is a device, not a document', where, mend: 'Name a .stillplate file.' });
    if (about.size > 40_000_000)
      throw refusal({
        what: `The file has ${about.size} bytes, the limit is 40,000,000`,
        where,
        mend: 'Check that this is a Stillplate document.',
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
