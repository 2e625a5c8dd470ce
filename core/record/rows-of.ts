import { dsvFormat } from 'd3-dsv';

/** Rows of a text of readings; empty lines and those that begin with # are none. Taken apart when they are asked for. */
export interface Rows {
  readonly length: number;
  /** Cells of a row, as they are written. */
  readonly cells: (row: number) => readonly string[];
  /** Line of a row in the file, from 1. */
  readonly line: (row: number) => number;
  /** Cells of the first rows. */
  readonly first: (count: number) => readonly (readonly string[])[];
  /** The rows from one on. */
  readonly from: (row: number) => Rows;
}

/**
 * Rows of a text by its separator. A text without quoted cells is kept as it is, with where its lines begin: a million
 * rows as arrays of text would take ten times its room and, to be collected, more time than the fit. Quoted cells, and
 * lines that end in a carriage return alone, are left to the parser.
 */
export const rowsOf = (text: string, separator: string): Rows =>
  text.includes('"') || /\r(?!\n)/.test(text) ? parsedRows(text, separator) : plainRows(text, separator);

function plainRows(text: string, separator: string): Rows {
  let count = 1;
  for (let i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) count++;
  const [begins, ends, lines] = [new Uint32Array(count), new Uint32Array(count), new Uint32Array(count)];
  let [kept, begin] = [0, 0];
  for (let line = 1; line <= count; line++) {
    const next = line === count ? text.length : text.indexOf('\n', begin);
    const end = next > begin && text[next - 1] === '\r' ? next - 1 : next;
    if (isReading(text, begin, end, separator)) {
      [begins[kept], ends[kept], lines[kept]] = [begin, end, line];
      kept++;
    }
    begin = next + 1;
  }
  return rows(kept, (r) => text.slice(begins[r], ends[r]).split(separator), (r) => lines[r]!); // prettier-ignore
}

/** Whether a line is neither empty (one blank cell) nor a comment. */
function isReading(text: string, from: number, to: number, separator: string): boolean {
  let i = from;
  while (i < to && text[i] !== separator && text[i]!.trim() === '') i++;
  return i < to && text[i] !== '#';
}

function parsedRows(text: string, separator: string): Rows {
  const all: (readonly string[])[] = [];
  const lines: number[] = [];
  let line = 1;
  for (const row of dsvFormat(separator).parseRows(text)) {
    const isText = row.length > 1 || row[0]!.trim() !== '';
    if (isText && !row[0]!.trimStart().startsWith('#')) {
      all.push(row);
      lines.push(line);
    }
    // a quoted cell may run over lines
    line += 1 + row.reduce((sum, cell) => sum + (cell.split('\n').length - 1), 0);
  }
  return rows(all.length, (r) => all[r]!, (r) => lines[r]!); // prettier-ignore
}

function rows(length: number, cells: Rows['cells'], line: Rows['line']): Rows {
  return {
    ...{ length, cells, line },
    first: (count) => Array.from({ length: Math.min(count, length) }, (_, r) => cells(r)),
    from: (row) => rows(length - row, (r) => cells(r + row), (r) => line(r + row)), // prettier-ignore
  };
}
