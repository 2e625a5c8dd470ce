import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import PDFDocument from 'pdfkit';
import { compare } from '../../core/options/compare.ts';
import type { RawDocument } from '../../core/document/read-document.ts';
import type { PlateDocument } from '../../core/document/schema.ts';
import { checkNote } from '../../core/note/check-note.ts';
import { writeNote } from '../../electron/host/note/write-note.ts';
import { median } from './interleaved.ts';
import type { Measure } from './measure.ts';

/** The note from an appraisal that is at hand, over what pdfkit takes to set the same pages' bare text. */
export async function measuredNote(raw: RawDocument, document: PlateDocument): Promise<readonly Measure[]> {
  const comparison = compare(raw, document);
  const appraisal = comparison.appraisals[0]!;
  const note = () => writeNote(checkNote(raw, appraisal, comparison));
  const pages = textOf(await note());
  const font = readFileSync(
    createRequire(import.meta.url).resolve('@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf'),
  );
  const times: { note: number[]; bare: number[] } = { note: [], bare: [] };
  for (let round = -1; round < 7; round++) {
    const start = performance.now();
    await note();
    const between = performance.now();
    await bareText(pages, font);
    const end = performance.now();
    if (round < 0) continue;
    times.note.push(between - start);
    times.bare.push(end - between);
  }
  const milliseconds = median(times.note);
  const ratio = milliseconds / median(times.bare);
  return [
    {
      name: `note of the middle sample (${pages.length} pages), over pdfkit setting its bare text`,
      ratio,
      goal: 5,
      met: ratio <= 5,
      milliseconds,
    },
  ];
}

/** Lines of each page as poppler reads them. */
function textOf(bytes: Uint8Array): readonly (readonly string[])[] {
  const folder = mkdtempSync(join(tmpdir(), 'stillplate-bench-'));
  try {
    const file = join(folder, 'note.pdf');
    writeFileSync(file, bytes);
    const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8', maxBuffer: 1 << 28 });
    return text
      .split('\f')
      .slice(0, -1)
      .map((page) => page.split('\n').filter((line) => line.trim() !== ''));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** One embedded font, one line of text after the other: no tags, tables, equations, figures or attachments. */
function bareText(pages: readonly (readonly string[])[], font: Buffer): Promise<number> {
  const pdf = new PDFDocument({ autoFirstPage: false, size: 'A4', margin: 40 });
  const done = new Promise<number>((resolve, reject) => {
    let length = 0;
    pdf.on('data', (chunk: Buffer) => (length += chunk.length));
    pdf.on('end', () => resolve(length));
    pdf.on('error', reject);
  });
  pdf.registerFont('text', font);
  for (const lines of pages) {
    pdf.addPage().font('text').fontSize(9);
    lines.forEach((line, i) => pdf.text(line, 40, 40 + i * 11, { lineBreak: false }));
  }
  pdf.end();
  return done;
}
