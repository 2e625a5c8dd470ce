import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { Refusal } from '../../core/refusal.ts';

/** The refusal that a document meets; fails when it is accepted or when anything but a refusal is thrown. */
export function refused(document: string | object): Refusal {
  try {
    readDocument(readDocumentText(typeof document === 'string' ? document : JSON.stringify(document)));
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
  throw new Error('The document was accepted');
}
