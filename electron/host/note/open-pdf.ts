import PDFDocument from 'pdfkit';
import { zlibSync } from 'fflate';
import type { Note } from '../../../core/note/note.ts';
import { refusal } from '../../../core/refusal.ts';
import { house } from './house.ts';
import { programName } from './program-name.ts';

type Pdf = PDFKit.PDFDocument;
/** The parts of a pdfkit object that its published types leave out. */
interface Reference {
  data: Record<string, unknown>;
  buffer: Uint8Array[];
  finalize(): void;
}

/**
 * An empty, tagged PDF 1.7 that asks for PDF/A-3a, has no page yet, and whose bytes depend on the note alone: dates
 * are the revision's, and streams are deflated by fflate, because the deflate inside Node differs by version and
 * processor.
 */
export function openPdf(note: Note): { pdf: Pdf; bytes: Promise<Uint8Array> } {
  const date = noteDate(note);
  const { width, height } = house.paper[note.paper];
  const pdf = new PDFDocument({
    autoFirstPage: false, bufferPages: true, compress: false, font: null as unknown as string,
    size: [width, height], margin: 0,
    pdfVersion: '1.7', tagged: true, lang: note.language, displayTitle: true, subset: 'PDF/A-3a',
    info: {
      Title: note.title, Subject: note.stamp, Keywords: note.documentHash,
      Creator: programName(note), Producer: 'pdfkit', CreationDate: date, ModDate: date,
    },
  }); // prettier-ignore
  deflateWithFflate(pdf);
  escapeMetadata(pdf);
  attach(pdf, note, date);
  const bytes = new Promise<Uint8Array>((resolve, reject) => {
    const chunks: Buffer[] = [];
    pdf.on('data', (chunk: Buffer) => chunks.push(chunk));
    pdf.on('end', () => resolve(new Uint8Array(Buffer.concat(chunks))));
    pdf.on('error', reject);
  });
  return { pdf, bytes };
}

function noteDate(note: Note): Date {
  // A time without a zone would be read in the machine's own zone: it is taken as UTC.
  const zoned = /T.*(Z|[+-]\d\d:?\d\d)$/.test(note.date) || !note.date.includes('T') ? note.date : `${note.date}Z`;
  const date = new Date(zoned);
  if (Number.isNaN(date.getTime()))
    throw refusal({
      what: `“${note.date}” is no date`,
      where: { field: 'date' },
      mend: 'Give the note an ISO date: 2026-03-14',
    });
  return date;
}

function deflateWithFflate(pdf: Pdf): void {
  const open = pdf as unknown as { ref(data?: Record<string, unknown>): Reference };
  const plainRef = open.ref.bind(pdf);
  open.ref = (data = {}) => {
    const reference = plainRef(data);
    const finalize = reference.finalize.bind(reference);
    reference.finalize = () => {
      // PDF/A wants the metadata readable without a decoder.
      if (reference.buffer.length > 0 && reference.data.Filter === undefined && reference.data.Type !== 'Metadata') {
        reference.buffer = [zlibSync(Buffer.concat(reference.buffer), { level: 6 })];
        reference.data.Filter = 'FlateDecode';
      }
      finalize();
    };
    return reference;
  };
}

/** pdfkit copies the title into the XMP packet as it stands; an ampersand there would break the XML. */
function escapeMetadata(pdf: Pdf): void {
  const open = pdf as unknown as { endMetadata(): void; info: Record<string, unknown> };
  const endMetadata = open.endMetadata.bind(pdf);
  open.endMetadata = () => {
    for (const [key, value] of Object.entries(open.info))
      if (typeof value === 'string') open.info[key] = xmlText(value);
    endMetadata();
  };
}

function xmlText(text: string): string {
  return text
    .replace(/[^\t\n\r\x20-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '\ufffd')
    .replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;'); // prettier-ignore
}

/** Key of the name tree is a number: pdfkit sorts the keys by the machine's language, digits sort alike in all. */
function attach(pdf: Pdf, note: Note, date: Date): void {
  const open = pdf as unknown as { file(bytes: Uint8Array, options: object): unknown };
  note.attachments.forEach((attachment, index) => {
    const reference = open.file(attachment.bytes, {
      name: attachment.name, description: attachment.description, type: attachment.mime,
      relationship: attachment.relationship, creationDate: date, modifiedDate: date, hidden: true,
    }); // prettier-ignore
    pdf.addNamedEmbeddedFile(String(index + 1).padStart(4, '0'), reference as never);
  });
}
