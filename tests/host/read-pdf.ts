import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A word on a page, in points from the page's upper left corner. */
export interface Word {
  readonly page: number;
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}
type PdfObject = Readonly<Record<string, unknown>>;

/** What independent programs (poppler, qpdf) read out of a PDF. */
export interface PdfReading {
  readonly pages: readonly string[];
  readonly words: readonly Word[];
  readonly info: string;
  readonly metadata: string;
  readonly fonts: readonly { readonly name: string; readonly embedded: boolean; readonly unicode: boolean }[];
  readonly attachments: ReadonlyMap<string, Uint8Array>;
  /** All that qpdf --check has to say. */
  readonly check: string;
  readonly objects: readonly PdfObject[];
}

/** Reads a PDF with poppler and qpdf; throws, and does not skip, where they are not installed. */
export function readPdf(bytes: Uint8Array): PdfReading {
  const folder = mkdtempSync(join(tmpdir(), 'note-'));
  try {
    const file = join(folder, 'note.pdf');
    writeFileSync(file, bytes);
    const saved = join(folder, 'attachments');
    mkdirSync(saved);
    if (!run('pdfdetach', ['-list', file]).startsWith('0 ')) run('pdfdetach', ['-saveall', '-o', saved, file]);
    const json = JSON.parse(run('qpdf', ['--json', file])) as { qpdf: [unknown, Record<string, { value?: unknown; stream?: { dict: unknown } }>] };
    return {
      pages: run('pdftotext', ['-layout', file, '-']).split('\f').slice(0, -1),
      words: wordsOf(run('pdftotext', ['-bbox', file, '-'])),
      info: run('pdfinfo', [file]),
      metadata: run('pdfinfo', ['-meta', file]),
      fonts: run('pdffonts', [file]).trimEnd().split('\n').slice(2).map(fontOf),
      attachments: new Map(readdirSync(saved).map((name) => [name, new Uint8Array(readFileSync(join(saved, name)))])),
      check: run('qpdf', ['--check', file]),
      objects: Object.values(json.qpdf[1]).map((object) => object.value ?? object.stream?.dict).filter((value): value is PdfObject => typeof value === 'object' && value !== null && !Array.isArray(value)),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
} // prettier-ignore

/** Runs one of the readers; a warning on its error output is an error here. */
function run(program: string, args: readonly string[]): string {
  try {
    return execFileSync(program, args, { encoding: 'utf8', maxBuffer: 1 << 30, stdio: ['ignore', 'pipe', 'pipe'] });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT')
      throw new Error(
        `${program} is not installed, and without it the note cannot be checked. On Debian: apt-get install poppler-utils qpdf`,
      );
    throw error;
  }
}

function wordsOf(xml: string): Word[] {
  const words: Word[] = [];
  let page = 0;
  for (const line of xml.split('\n')) {
    if (line.includes('<page ')) page++;
    const found = /<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*)<\/word>/.exec(line);
    if (found) {
      const [left, top, right, bottom] = found.slice(1, 5).map(Number) as [number, number, number, number];
      words.push({ page, text: plain(found[5]!), left, top, right, bottom });
    }
  }
  return words;
}

const plain = (xml: string): string =>
  xml
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&');

function fontOf(line: string) {
  const [, name = line, embedded, , unicode] = /^(\S+) .* (yes|no) +(yes|no) +(yes|no) +\d+ +\d+$/.exec(line) ?? [];
  return { name, embedded: embedded === 'yes', unicode: unicode === 'yes' };
}
