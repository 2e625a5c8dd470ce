import { refusal } from '../../../core/refusal.ts';

/** A note as it was printed and what it carries. */
export interface ReadNote {
  /** Words of each page, in the order of the page's content. */
  readonly pages: readonly (readonly string[])[];
  readonly attachments: ReadonlyMap<string, Uint8Array>;
}

const largest = 100_000_000;

/** Reads a PDF's pages and attachments; scripts in it are never run. Refuses what is no PDF, is locked, or is too large. */
export async function readNote(bytes: Uint8Array): Promise<ReadNote> {
  if (bytes.length > largest)
    throw refusal({ what: `The file has ${bytes.length} bytes, the limit is ${largest}`, mend: 'Check that this is a note.' }); // prettier-ignore
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  // The reader takes the bytes over, so it gets a copy.
  const task = getDocument({ data: bytes.slice(), isEvalSupported: false, useSystemFonts: false, verbosity: 0 });
  try {
    const pdf = await task.promise;
    const held = ((await pdf.getAttachments()) ?? {}) as Record<string, { filename: string; content: Uint8Array }>;
    const pages: string[][] = [];
    for (let n = 1; n <= pdf.numPages; n++) {
      const { items } = await (await pdf.getPage(n)).getTextContent();
      const text = items.map((item) => ('str' in item ? `${item.str}${item.hasEOL ? '\n' : ''}` : '')).join('');
      pages.push(text.split(/\s+/).filter(Boolean));
    }
    return { pages, attachments: new Map(Object.values(held).map(({ filename, content }) => [filename, content])) };
  } catch (error) {
    throw refusal({
      what: `The file cannot be read as PDF: ${error instanceof Error ? error.message : String(error)}`,
      mend: 'Name a note that Stillplate wrote.',
    });
  } finally {
    await task.destroy();
  }
}
