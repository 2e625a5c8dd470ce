import { refusal } from '../../../core/refusal.ts';

/** A PDF's objects as text, newest version of each; enough of the format for files that Stillplate wrote or signed. */
export interface PdfObjects {
  readonly size: number;
  readonly root: number;
  /** Entries of the trailer that an update repeats: /Info and /ID. */
  readonly kept: string;
  readonly newestXref: number;
  /** The dictionary of an object that is no stream, with its brackets. */
  dictionary(number: number): string;
  /** Object numbers of the pages in order. */
  readonly pages: readonly number[];
}

const notOurs = (what: string) =>
  refusal({ what: `The PDF cannot be signed here: ${what}`, mend: 'Sign the note as Stillplate wrote it.' });

/** Reads cross-reference tables and trailers, newest first. Refuses compressed tables, and tables that point nowhere. */
export function pdfObjects(bytes: Uint8Array): PdfObjects {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).toString('latin1');
  const newest = Number(/startxref\s+(\d+)\s+%%EOF\s*$/.exec(text.slice(-2048))?.[1] ?? NaN);
  const offsets = new Map<number, number>();
  const trailers: string[] = [];
  const seen = new Set<number>();
  for (let at = newest; !Number.isNaN(at);) {
    if (seen.has(at)) throw notOurs('its cross-reference tables go in a circle');
    seen.add(at);
    const end = text.indexOf('startxref', at);
    if (!text.startsWith('xref', at) || end < 0) throw notOurs('it has no plain cross-reference table');
    const [table = '', trailer = ''] = text.slice(at + 4, end).split('trailer');
    readTable(table, offsets);
    trailers.push(trailer);
    at = Number(/\/Prev\s+(\d+)/.exec(trailer)?.[1] ?? NaN);
  }
  const [trailer] = trailers;
  if (trailer === undefined) throw notOurs('it does not end as a PDF does');
  const numberAfter = (name: string, of: string): number => {
    const found = new RegExp(`/${name}\\s+(\\d+)`).exec(of);
    if (!found) throw notOurs(`it has no /${name}`);
    return Number(found[1]);
  };
  const dictionary = (number: number): string => {
    const at = offsets.get(number) ?? -1;
    const head = `${number} 0 obj`;
    const end = text.indexOf('endobj', at);
    if (at < 0 || end < 0 || !text.startsWith(head, at))
      throw notOurs(`its object ${number} is not where its table says`);
    const body = text.slice(at + head.length, end).trim();
    if (!body.startsWith('<<') || !body.endsWith('>>')) throw notOurs(`its object ${number} is no dictionary`);
    return body;
  };
  const root = numberAfter('Root', trailer);
  const kids = /\/Kids\s*\[([^\]]*)\]/.exec(dictionary(numberAfter('Pages', dictionary(root))))?.[1] ?? '';
  return {
    size: numberAfter('Size', trailer),
    root,
    kept: [/\/Info\s+\d+ 0 R/, /\/ID\s*\[[^\]]*\]/].map((entry) => entry.exec(trailer)?.[0] ?? '').join('\n'),
    newestXref: newest,
    dictionary,
    pages: [...kids.matchAll(/(\d+) 0 R/g)].map(([, number]) => Number(number)),
  };
}

/** Sections of a table: first number and count, then lines of 20 bytes. What a newer table said stays. */
function readTable(table: string, offsets: Map<number, number>): void {
  let next = 0;
  for (const line of table.split(/[\r\n]+/)) {
    const section = /^\s*(\d+) (\d+)\s*$/.exec(line);
    if (section) next = Number(section[1]);
    const entry = /^\s*(\d{10}) \d{5} ([nf])/.exec(line);
    if (!entry) continue;
    if (entry[2] === 'n' && !offsets.has(next)) offsets.set(next, Number(entry[1]));
    next += 1;
  }
}
