import type { RawDocument } from '../document/read-document.ts';
import { Refusal } from '../refusal.ts';

/** Key of what was worked out of a document and an option; null where that option is gone from it. */
export function keyIfThere(
  key: (raw: RawDocument, from: string | null) => string,
  raw: RawDocument,
  from: string | null,
): string | null {
  try {
    return key(raw, from);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return null;
  }
}
