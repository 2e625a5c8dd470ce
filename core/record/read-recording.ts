import type { Kind } from '../quantity/kinds.ts';
import { kinds } from '../quantity/kinds.ts';
import { readUnitText, sameDimension, unitReading, type UnitReading } from '../quantity/units.ts';
import { refusal, type Refusal } from '../refusal.ts';
import { median } from './median.ts';
import { numberOf } from './number-text.ts';
import type { BadRow, Channel, Gap, Recording } from './record.ts';
import { separatorWords, type Column, type Table } from './read-table.ts';
import { secondsOf, timeFormOf } from './time-text.ts';

/** A channel that is looked for: names it may go by in a header, and what it measures. */
export interface Wanted {
  readonly name: string;
  readonly alsoCalled: readonly string[];
  readonly kind: Kind;
  /** Column to take whatever its name, from 1. */
  readonly column?: number;
  /** Unit to take, whatever the header says; without it that of the header, or the SI unit. */
  readonly unit?: string;
}

const timeNames = ['time', 't', 'clock', 'date', 'timestamp', 'seconds', 'utc'];

/**
 * Readings of a table as numbers. Channels are found by their names, or in the order wanted where the file has no header.
 * A row is kept out, with its reason, where a cell is empty or no number, where it has too few or too many cells, and where
 * its time does not come after the row before; a clock that passes midnight goes on. Gaps are stretches longer than one and
 * a half of the usual step.
 * Refuses a channel that cannot be found, a unit that does not fit it, and a file with fewer than three good rows.
 */
export function readRecording(
  table: Table,
  wanted: readonly Wanted[],
  timeColumn?: number,
  timeUnit?: string,
): Recording {
  const { columns, rows, decimal } = table;
  const at =
    timeColumn === undefined
      ? timeIndex(table)
      : placeOf({ name: 'time', alsoCalled: [], kind: 'time', column: timeColumn }, table, -1, 0);
  const places = wanted.map((one, i) => placeOf(one, table, at, i));
  const units = wanted.map((one, i) => unitOf(one, columns[places[i]!]!));
  const form = mostForm(table, at);
  const perTime = form === 'number' ? unitOfTime(columns[at]!, timeUnit).factor : 1;

  const time = new Float64Array(rows.length);
  const values = wanted.map(() => new Float64Array(rows.length));
  const bad: BadRow[] = [];
  let [kept, first, days, before] = [0, 0, 0, -Infinity];
  const own = new Float64Array(wanted.length);
  rows: for (let r = 0; r < rows.length; r++) {
    const row = rows.cells(r);
    const keepOut = (why: string): void => void bad.push({ line: rows.line(r), why });
    if (row.length !== columns.length) {
      keepOut(`has ${row.length} cells, the others ${columns.length}`);
      continue;
    }
    const told = secondsOf(row[at]!, form, decimal);
    if (told === undefined) {
      keepOut(`“${row[at]!.trim()}” is no time as the others are`);
      continue;
    }
    for (let i = 0; i < wanted.length; i++) {
      const cell = row[places[i]!]!;
      const value = numberOf(cell, decimal);
      if (value === undefined) {
        keepOut(
          cell.trim() === '' ? `${wanted[i]!.name} is empty` : `${wanted[i]!.name}: “${cell.trim()}” is no number`,
        );
        continue rows;
      }
      own[i] = value * units[i]!.factor + units[i]!.offset;
    }
    if (form === 'clock' && kept > 0 && told + days - before < -43_200) days += 86_400;
    const now = form === 'clock' ? told + days : told * perTime;
    if (now <= before) {
      keepOut(now === before ? 'tells the same time as the row before' : 'goes back in time');
      continue;
    }
    if (kept === 0) first = now;
    before = now;
    time[kept] = now - first;
    for (let i = 0; i < wanted.length; i++) values[i]![kept] = own[i]!;
    kept++;
  }
  if (kept < 3)
    throw refusal({
      what: `${kept} of ${rows.length} rows can be read${bad[0] ? `; line ${bad[0].line} ${bad[0].why}` : ''}`,
      where: { field: 'record' },
      mend: 'Give a row for each reading: time, then the channels, parted by one sign throughout.',
    });
  const times = time.subarray(0, kept);
  return {
    time: times,
    begins: form === 'date and time' ? first : null,
    channels: wanted.map(({ name }, i): Channel => ({
      name,
      typedUnit: columns[places[i]!]!.unit,
      values: values[i]!.subarray(0, kept),
    })),
    bad,
    gaps: gapsIn(times),
    readAs: [
      `cells parted by ${separatorWords(table.separator)}, decimal ${decimal === ',' ? 'comma' : 'point'}`,
      table.hasHeader ? 'names and units from the header' : 'no header: columns in the order expected',
      form === 'number' ? 'time as a number' : `time as ${form}`,
      ...wanted.map(
        ({ name, kind }, i) =>
          `${name} from “${columns[places[i]!]!.name}” in ${wanted[i]!.unit || columns[places[i]!]!.unit || kinds[kind].unit}`,
      ),
    ],
  };
}

/** Usual step of a record, s: the median (of two middle ones, the smaller). */
export function usualStep(time: Float64Array): number {
  const steps = new Float64Array(time.length - 1);
  for (let i = 0; i < steps.length; i++) steps[i] = time[i + 1]! - time[i]!;
  return median(steps);
}

function gapsIn(time: Float64Array): Gap[] {
  const widest = 1.5 * usualStep(time);
  const gaps: Gap[] = [];
  for (let i = 1; i < time.length; i++)
    if (time[i]! - time[i - 1]! > widest) gaps.push({ from: time[i - 1]!, to: time[i]! });
  return gaps;
}

function timeIndex(table: Table): number {
  const named = table.columns.findIndex(({ name }) => timeNames.includes(name.toLowerCase()));
  if (named >= 0 || table.hasHeader) {
    if (named >= 0) return named;
    const starts = table.columns.findIndex(({ name }) => /^(time|clock|date)/i.test(name));
    if (starts >= 0) return starts;
    throw missing('time', table, timeNames);
  }
  return 0;
}

function placeOf({ name, alsoCalled, column }: Wanted, table: Table, time: number, order: number): number {
  const { columns, hasHeader } = table;
  if (column !== undefined) {
    if (column >= 1 && column <= columns.length) return column - 1;
    throw refusal({
      what: `There is no column ${column}: the file has ${columns.length}`,
      where: { field: name },
      mend: `Give a column from 1 to ${columns.length}.`,
    });
  }
  const all = [name, ...alsoCalled];
  if (!hasHeader) {
    const free = columns.map((_, i) => i).filter((i) => i !== time);
    const place = free[order];
    if (place !== undefined) return place;
    throw missing(name, table, all);
  }
  const exact = columns.findIndex((own) => all.includes(own.name.toLowerCase()));
  const starts = exact >= 0 ? exact : columns.findIndex((own) => all.some((word) => word.length > 2 && own.name.toLowerCase().startsWith(word))); // prettier-ignore
  if (starts >= 0) return starts;
  throw missing(name, table, all);
}

function missing(name: string, { columns, hasHeader }: Table, all: readonly string[]): Refusal {
  return refusal({
    what: hasHeader
      ? `No column is called ${name}: the header has ${columns.map((own) => `“${own.name}”`).join(', ')}`
      : `The file has ${columns.length} columns and no header, there is none for ${name}`,
    where: { field: name },
    mend: `Name the column ${all.slice(0, 3).join(' or ')} in the first line, or say which column it is.`,
  });
}

function unitOf({ name, kind, unit }: Wanted, column: Column): UnitReading {
  const typed = unit || column.unit || kinds[kind].unit;
  const read = readUnitText(typed);
  if ('unit' in read) {
    const reading = unitReading(read.unit);
    if (sameDimension(reading.dimensions, unitReading(kinds[kind].unit).dimensions)) return reading;
    throw refusal({
      what: `“${typed}” is no unit of ${kinds[kind].word.replace(/^an? /, '')}`,
      where: { field: name },
      mend: `Head the column with a unit such as that of ${kinds[kind].example}.`,
    });
  }
  throw refusal({
    what:
      'ambiguous' in read
        ? `“${typed}” can mean more than one thing: ${read.meanings}`
        : `The unit “${typed}” is not known`,
    where: { field: name },
    mend: `Head the column with a unit such as that of ${kinds[kind].example}.`,
  });
}

const unitOfTime = (column: Column, unit: string | undefined): UnitReading =>
  unitOf({ name: 'time', alsoCalled: [], kind: 'time', ...(unit === undefined ? {} : { unit }) }, column);

function mostForm({ rows, decimal }: Table, at: number): 'number' | 'clock' | 'date and time' {
  const counts = { number: 0, clock: 0, 'date and time': 0 };
  for (const row of rows.first(100)) {
    const form = timeFormOf(row[at] ?? '', decimal);
    if (form) counts[form]++;
  }
  const forms = ['number', 'clock', 'date and time'] as const;
  return forms.reduce((best, form) => (counts[form] > counts[best] ? form : best));
}
