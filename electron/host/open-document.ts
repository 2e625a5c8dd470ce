import { readDocument, readDocumentText, type RawDocument } from '../../core/document/read-document.ts';
import type { PlateDocument } from '../../core/document/schema.ts';
import { openText, type TextFile } from './open-text.ts';

export interface OpenedDocument {
  readonly raw: RawDocument;
  readonly document: PlateDocument;
  /** The file as it was read, for the note to carry. */
  readonly bytes: Uint8Array;
}

const documentFile: TextFile = {
  is: 'document',
  named: 'a .stillplate file',
  largest: 40_000_000,
  tooLarge: 'Check that this is a Stillplate document.',
};

/** Reads a document file. Refuses a file that is missing, a folder, too large, not UTF-8, or no valid document. */
export async function openDocument(path: string): Promise<OpenedDocument> {
  const { bytes, text } = await openText(path, documentFile);
  const raw = readDocumentText(text);
  return { raw, document: readDocument(raw), bytes };
}
