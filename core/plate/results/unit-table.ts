import { csvTable } from '../../quantity/csv-table.ts';
import { inUnit, printedUnit, type UnitSystem } from '../../quantity/format-quantity.ts';

/** Units of the columns: SI, or those of a document's system. */
export type CsvUnits = UnitSystem | 'SI';

/** SI unit and the one printed in the metric system. */
export type ColumnUnit = readonly [si: string, metric: string];

export interface Column<T> {
  readonly name: string;
  /** Left out for names and counts. */
  readonly unit?: ColumnUnit;
  readonly of: (row: T) => string | number;
}

export const length = ['m', 'mm'] as const;
export const turn = ['rad', 'rad'] as const;
export const force = ['N', 'N'] as const;
export const moment = ['N*m', 'N*m'] as const;
export const lineForce = ['N/m', 'N/m'] as const;
export const lineMoment = ['N*m/m', 'N*m/m'] as const;
export const stress = ['Pa', 'MPa'] as const;

/** The unit that a column is written in. */
export const writtenUnit = ([si, metric]: ColumnUnit, units: CsvUnits): string =>
  units === 'SI' ? si : printedUnit(metric, units);

/** A table with its units in the header, “rise [mm]”. */
export function unitTable<T>(columns: readonly Column<T>[], rows: Iterable<T>, units: CsvUnits): string {
  const printed = columns.map(({ unit }) => unit && writtenUnit(unit, units));
  const header = columns.map(({ name }, i) => (printed[i] ? `${name} [${printed[i]}]` : name));
  const lines = [...rows].map((row) =>
    columns.map(({ of }, i) => {
      const value = of(row);
      return printed[i] && typeof value === 'number' ? inUnit(value, printed[i]) : value;
    }),
  );
  return csvTable(header, lines);
}
