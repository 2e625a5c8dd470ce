import { dsvFormat } from 'd3-dsv';
import { refusal } from '../refusal.ts';
import { numberOf, type DecimalSign } from './number-text.ts';
import { rowsOf, type Rows } from './rows-of.ts';
import { timeFormOf } from './time-text.ts';

export interface Column {
  readonly name: string;
  /** As the header writes it, empty where it gives none. */
  readonly unit: string;
}

/** Rows of text of a file of readings, before any of it is taken for a number. */
export interface Table {
  readonly separator: string;
  readonly decimal: DecimalSign;
  readonly hasHeader: boolean;
  readonly columns: readonly Column[];
  readonly rows: Rows;
}

const separators = ['\t', ';', '|', ','] as const;
const names: Readonly<Record<string, string>> = { '\t': 'tab', ';': 'semicolon', '|': 'bar', ',': 'comma' };
export const separatorWords = (separator: string): string => names[separator] ?? separator;

/**
 * Takes a text of readings apart: separator, decimal sign, header and units are found, never asked for.
 * Lines that are empty or begin with # are passed over. The separator is the one that parts the first hundred rows into
 * the same number of cells most often; where none does, the file has one column.
 * Refuses a text without rows.
 */
export function readTable(text: string): Table {
  const plain = text.replace(/^\uFEFF/, '');
  const separator = separatorOf(plain);
  const rows = rowsOf(plain, separator);
  if (rows.length === 0)
    throw refusal({
      what: 'The file has no rows',
      where: { field: 'record' },
      mend: 'Give a file with one reading a line, such as “0.1,0.25,1200”.',
    });
  const decimal = separator === ',' ? '.' : decimalOf(rows.first(100));
  let first = 0;
  while (first < rows.length && !rows.cells(first).some((cell) => timeFormOf(cell, decimal) !== undefined)) first++;
  const head = rows.first(first);
  const body = rows.from(first);
  const width = mostCommon(body.first(100).map((row) => row.length)) ?? head[0]!.length;
  // of several lines above the readings, those as wide as the readings name the columns; the last of them may give units
  const titles = head.filter((row) => row.length === width);
  const unitsOnly = titles.length > 1 ? titles.at(-1)! : null;
  const named = unitsOnly ? titles.at(-2)! : titles.at(-1);
  const columns = Array.from({ length: width }, (_, i): Column => {
    const own = titleParts(named?.[i] ?? '');
    return {
      name: own.name || `column ${i + 1}`,
      unit:
        own.unit ||
        (unitsOnly ? (titleParts(`(${unitsOnly[i]!.trim().replace(/^[([]|[)\]]$/g, '')})`).unit ?? '') : ''),
    };
  });
  return {
    separator,
    decimal,
    hasHeader: named !== undefined,
    columns,
    rows: body,
  };
}

/** “travel (mm)”, “force [kN]” or “time, s” in name and unit. */
function titleParts(title: string): Column {
  const match = /^(.*?)\s*(?:\(([^()]*)\)|\[([^[\]]*)\]|,\s*(\S+))\s*$/.exec(title.trim());
  return match
    ? { name: match[1]!.trim(), unit: (match[2] ?? match[3] ?? match[4] ?? '').trim() }
    : { name: title.trim(), unit: '' };
}

function separatorOf(text: string): string {
  const sample = text
    .slice(0, 20_000)
    .split(/\r?\n/)
    .filter((line) => line.trim() !== '' && !line.startsWith('#'))
    .slice(0, 100);
  let [best, most] = [',', 0];
  for (const separator of separators) {
    const counts = sample.map((line) => dsvFormat(separator).parseRows(line)[0]?.length ?? 0);
    const width = mostCommon(counts.filter((count) => count > 1));
    if (width === undefined) continue;
    const like = counts.filter((count) => count === width).length;
    if (like > most) [best, most] = [separator, like];
  }
  return best;
}

/** A comma is the decimal sign where cells hold numbers with a comma and none with a point. */
function decimalOf(rows: readonly (readonly string[])[]): DecimalSign {
  const cells = rows.flat();
  const commas = cells.filter((cell) => cell.includes(',') && numberOf(cell, ',') !== undefined).length;
  const points = cells.filter((cell) => cell.includes('.') && numberOf(cell, '.') !== undefined).length;
  return commas > points ? ',' : '.';
}

function mostCommon(values: readonly number[]): number | undefined {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0];
}
