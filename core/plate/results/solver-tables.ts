import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';
import type { BoltRange } from './bolt-ranges.ts';
import { fixingForces } from './fixing-forces.ts';
import { panelStress } from './panel-stress.ts';
import {
  boltsCsv,
  contactsCsv,
  nodesCsv,
  panelsCsv,
  rangesCsv,
  supportsCsv,
  tubesCsv,
  weldsCsv,
} from './solver-csv.ts';
import { tubeForces } from './tube-forces.ts';
import type { CsvUnits } from './unit-table.ts';

/** A file to write: its name and its text. */
export interface SolverTable {
  readonly name: string;
  readonly text: string;
}

/** All tables of a solved loading as files; a table without rows is left out. `stretched`: see `panelStress`. */
export function solverTables(
  plate: ReadyPlate,
  solved: SolvedLoading,
  units: CsvUnits,
  stretched?: ReadonlyMap<string, Float64Array>,
): SolverTable[] {
  const forces = fixingForces(plate, solved);
  const { panels, contacts } = plate.structure;
  const tables: readonly (readonly [name: string, rows: number, text: () => string])[] = [
    ['nodes', 1, () => nodesCsv(plate, solved, units)],
    ['tubes', 1, () => tubesCsv(tubeForces(plate, solved), units)],
    ['panels', panels.length, () => panelsCsv(plate, panelStress(plate, solved, stretched), units)],
    ['bolts', forces.bolts.length, () => boltsCsv(forces, units)],
    ['welds', forces.welds.length, () => weldsCsv(forces, units)],
    ['contacts', contacts.length, () => contactsCsv(plate, solved, units)],
    ['supports', forces.supports.length, () => supportsCsv(forces, units)],
  ];
  return tables.filter(([, rows]) => rows > 0).map(([name, , text]) => ({ name: `${name}.csv`, text: text() }));
}

/** Ranges of the bolts as a file to write; none where there are no bolts. */
export const rangeTables = (ranges: readonly BoltRange[], units: CsvUnits): SolverTable[] =>
  ranges.length > 0 ? [{ name: 'bolt-ranges.csv', text: rangesCsv(ranges, units) }] : [];
