import { readRecording, type Wanted } from '../record/read-recording.ts';
import { readTable } from '../record/read-table.ts';
import type { Recording } from '../record/record.ts';

/** Columns to take by number, from 1, where their names are not the usual ones. */
export interface TankColumns {
  readonly time?: number;
  readonly travel?: number;
  readonly force?: number;
}

/** Reads a tank test: time, travel (up is positive), and the pull of the line with the weight in water in it. */
export function tankRecord(text: string, columns: TankColumns = {}): Recording {
  const wanted = (name: 'travel' | 'force', alsoCalled: readonly string[], kind: Wanted['kind']): Wanted => ({
    ...{ name, alsoCalled, kind },
    ...(columns[name] === undefined ? {} : { column: columns[name] }),
  });
  return readRecording(
    readTable(text),
    [
      wanted('travel', ['displacement', 'position', 'stroke', 'heave', 'z', 'x'], 'length'),
      wanted('force', ['load', 'pull', 'tension', 'line force', 'f'], 'force'),
    ],
    columns.time,
  );
}
