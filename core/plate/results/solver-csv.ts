import { shellStress } from '../../solve/elements/shell-stress.ts';
import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';
import type { BoltRange } from './bolt-ranges.ts';
import type { FixingForces } from './fixing-forces.ts';
import { levelled } from './levelled.ts';
import type { PanelStress } from './panel-stress.ts';
import type { TubeForces } from './tube-forces.ts';
import { force, length, lineForce, lineMoment, moment, stress, turn, unitTable, type Column, type CsvUnits } from './unit-table.ts'; // prettier-ignore

/** Displacements of all nodes, from where deflections are told. */
export function nodesCsv(plate: ReadyPlate, solved: SolvedLoading, units: CsvUnits): string {
  const { coordinates, tubes, panels } = plate.structure;
  const u = levelled(plate, solved);
  const part: string[] = Array.from({ length: coordinates.length / 3 }, () => '');
  for (const { id, nodes } of tubes) for (const n of nodes) part[n] = part[n] ? `${part[n]} and ${id}` : `tube ${id}`;
  for (const { id, nodes } of panels) for (const n of nodes) if (n >= 0) part[n] = `panel ${id}`;
  const columns: Column<number>[] = [
    { name: 'node', of: (n) => n },
    { name: 'part', of: (n) => part[n]! },
    ...['x', 'y', 'z'].map((name, k): Column<number> => ({ name, unit: length, of: (n) => coordinates[3 * n + k]! })),
    ...['ux', 'uy', 'uz'].map((name, k): Column<number> => ({ name, unit: length, of: (n) => u[6 * n + k]! })),
    ...['rx', 'ry', 'rz'].map((name, k): Column<number> => ({ name, unit: turn, of: (n) => u[6 * n + 3 + k]! })),
  ];
  return unitTable(columns, part.keys(), units);
}

/** Forces and stresses along all tubes. Signs as in `TubeForces`. */
export function tubesCsv(tubes: readonly TubeForces[], units: CsvUnits): string {
  type Row = readonly [TubeForces, number];
  const rows = tubes.flatMap((tube) => Array.from(tube.at, (_, i): Row => [tube, i]));
  const column = (name: string, unit: Column<Row>['unit'], key: 'at' | keyof TubeForces['largest']): Column<Row> => ({
    name,
    ...(unit ? { unit } : {}),
    of: ([tube, i]) => tube[key][i]!,
  });
  return unitTable<Row>(
    [
      { name: 'tube', of: ([{ id }]) => id },
      column('along', length, 'at'),
      column('N', force, 'N'),
      column('Vy', force, 'Vy'),
      column('Vz', force, 'Vz'),
      column('T', moment, 'T'),
      column('My', moment, 'My'),
      column('Mz', moment, 'Mz'),
      column('rise', length, 'rise'),
      column('normal stress', stress, 'normal'),
      column('von Mises at the far fibre', stress, 'fibre'),
      column('von Mises at the neutral axis', stress, 'axis'),
    ],
    rows,
    units,
  );
}

/** Forces per width and stresses of all panels at their nodes. Signs as in `PanelStress`; `hot`: 1 where stress is no measure. */
export function panelsCsv(
  { structure: { coordinates } }: ReadyPlate,
  panels: readonly PanelStress[],
  units: CsvUnits,
): string {
  type Row = readonly [PanelStress, number];
  const rows = panels.flatMap((panel) => Array.from(panel.nodes, (_, i): Row => [panel, i]));
  const place = (name: string, k: number): Column<Row> => ({
    name,
    unit: length,
    of: ([{ nodes }, i]) => coordinates[3 * nodes[i]! + k]!,
  });
  const forces = ['Nx', 'Ny', 'Nxy', 'Mx', 'My', 'Mxy'].map((name, k): Column<Row> => ({
    name,
    unit: k < 3 ? lineForce : lineMoment,
    of: ([panel, i]) => panel.forces[6 * i + k]!,
  })); // prettier-ignore
  const on = (side: 'top' | 'bottom'): Column<Row>[] => {
    const at = ([{ forces: own, thickness }, i]: Row) => shellStress(own.subarray(6 * i, 6 * i + 6), thickness, side);
    return [
      { name: `von Mises ${side}`, unit: stress, of: (row) => at(row).vonMises },
      { name: `larger principal ${side}`, unit: stress, of: (row) => at(row).largest },
      { name: `lesser principal ${side}`, unit: stress, of: (row) => at(row).least },
      { name: `angle of the larger from x ${side}`, unit: turn, of: (row) => at(row).angle },
    ];
  };
  return unitTable<Row>(
    [
      { name: 'panel', of: ([{ id }]) => id },
      place('x', 0),
      place('y', 1),
      ...forces,
      ...on('top'),
      ...on('bottom'),
      { name: 'hot', of: ([{ hot }, i]) => hot[i]! },
    ],
    rows,
    units,
  );
}

/** Forces in bolts. Signs as in `BoltForce`. */
export const boltsCsv = ({ bolts }: FixingForces, units: CsvUnits): string =>
  unitTable(
    [
      { name: 'bolt', of: ({ id }) => id },
      { name: 'panel', of: ({ panel }) => panel },
      { name: 'tube', of: ({ tube }) => tube },
      { name: 'x', unit: length, of: ({ x }) => x },
      { name: 'y', unit: length, of: ({ y }) => y },
      { name: 'pull', unit: force, of: ({ pull }) => pull },
      { name: 'shear x', unit: force, of: ({ shearX }) => shearX },
      { name: 'shear y', unit: force, of: ({ shearY }) => shearY },
      { name: 'shear', unit: force, of: ({ shear }) => shear },
      { name: 'bending', unit: moment, of: ({ bending }) => bending },
      { name: 'torsion', unit: moment, of: ({ torsion }) => torsion },
    ],
    bolts,
    units,
  );

/** What turning the load round does to bolts. Signs as in `BoltRange`; `parts`: 1 where the faces part. */
export const rangesCsv = (ranges: readonly BoltRange[], units: CsvUnits): string =>
  unitTable(
    [
      { name: 'bolt', of: ({ id }) => id },
      { name: 'panel', of: ({ panel }) => panel },
      { name: 'largest tension', unit: force, of: ({ most }) => most },
      { name: 'least tension', unit: force, of: ({ least }) => least },
      { name: 'range of tension', unit: force, of: ({ range }) => range },
      { name: 'range of shear', unit: force, of: ({ shearRange }) => shearRange },
      { name: 'parts', of: ({ parts }) => (parts ? 1 : 0) },
    ],
    ranges,
    units,
  );

/** Forces per length in welds. Signs as in `WeldForce`. */
export const weldsCsv = ({ welds }: FixingForces, units: CsvUnits): string =>
  unitTable(
    [
      { name: 'weld', of: ({ id }) => id },
      { name: 'panel', of: ({ panel }) => panel },
      { name: 'tube', of: ({ tube }) => tube },
      { name: 'x', unit: length, of: ({ x }) => x },
      { name: 'y', unit: length, of: ({ y }) => y },
      { name: 'length', unit: length, of: (weld) => weld.length },
      { name: 'along', unit: lineForce, of: ({ along }) => along },
      { name: 'across', unit: lineForce, of: ({ across }) => across },
      { name: 'pull', unit: lineForce, of: ({ pull }) => pull },
      { name: 'resultant', unit: lineForce, of: ({ resultant }) => resultant },
      { name: 'opening moment', unit: lineMoment, of: ({ opening }) => opening },
    ],
    welds,
    units,
  );

/** Contact at each point of each panel on each tube: force, area, and whether it is closed. */
export function contactsCsv({ structure }: ReadyPlate, { answer }: SolvedLoading, units: CsvUnits): string {
  const { contacts, panels, tubes, coordinates } = structure;
  return unitTable<number>(
    [
      { name: 'panel', of: (i) => panels[contacts[i]!.panel]!.id },
      { name: 'tube', of: (i) => tubes[contacts[i]!.tube]!.id },
      { name: 'x', unit: length, of: (i) => coordinates[3 * contacts[i]!.nodes[0]]! },
      { name: 'y', unit: length, of: (i) => coordinates[3 * contacts[i]!.nodes[0] + 1]! },
      { name: 'area', unit: ['m^2', 'mm^2'], of: (i) => contacts[i]!.area },
      { name: 'closed', of: (i) => answer.closed[i]! },
      { name: 'force', unit: force, of: (i) => answer.pressing[i]! },
      { name: 'pressure', unit: stress, of: (i) => answer.pressing[i]! / contacts[i]!.area },
    ],
    contacts.keys(),
    units,
  );
}

/** Forces of supports on the plate. Signs as in `SupportForce`. */
export const supportsCsv = ({ supports }: FixingForces, units: CsvUnits): string =>
  unitTable(
    [
      { name: 'support', of: ({ id }) => id },
      { name: 'state', of: ({ state }) => state },
      { name: 'vertical', unit: force, of: ({ vertical }) => vertical },
      { name: 'along its line', unit: force, of: ({ along }) => along },
      { name: 'x', unit: force, of: ({ inPlan }) => inPlan[0] },
      { name: 'y', unit: force, of: ({ inPlan }) => inPlan[1] },
    ],
    supports,
    units,
  );
