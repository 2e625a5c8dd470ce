import { readRecording, type Wanted } from '../record/read-recording.ts';
import { readTable, type Table } from '../record/read-table.ts';
import type { Recording } from '../record/record.ts';

/** Columns to take by number, from 1, where their names are not the usual ones. */
export interface TankColumns {
  readonly time?: number;
  readonly travel?: number;
  readonly force?: number;
}

/** Units to take whatever the header says. */
export interface TankUnits {
  readonly time?: string;
  readonly travel?: string;
  readonly force?: string;
}

/** Reads a tank test: time, travel (up is positive), and the pull of the line with the weight in water in it. */
export const tankRecord = (text: string, columns: TankColumns = {}): Recording =>
  recordOfTable(readTable(text), columns);

/** The same of a text that is taken apart already. */
export function recordOfTable(table: Table, columns: TankColumns = {}, units: TankUnits = {}): Recording {
  const wanted = (name: 'travel' | 'force', alsoCalled: readonly string[], kind: Wanted['kind']): Wanted => ({
    ...{ name, alsoCalled, kind },
    ...(columns[name] === undefined ? {} : { column: columns[name] }),
    ...(units[name] === undefined ? {} : { unit: units[name] }),
  });
  return readRecording(
    table,
    [
      wanted('travel', ['displacement', 'position', 'stroke', 'heave', 'z', 'x'], 'length'),
      wanted('force', ['load', 'pull', 'tension', 'line force', 'f'], 'force'),
    ],
    columns.time,
    units.time,
  );
}
