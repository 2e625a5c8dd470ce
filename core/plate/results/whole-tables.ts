import { csvTable } from '../../quantity/csv-table.ts';
import { inUnit } from '../../quantity/format-quantity.ts';
import type { LargePlate } from '../large-panel.ts';
import type { MeshStudy } from '../mesh-study.ts';
import type { ShownLoading } from '../solve-cases.ts';
import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';
import { jointSpread } from './joint-spread.ts';
import { solverTables, type SolverTable } from './solver-tables.ts';
import { force, length, lineForce, moment, unitTable, writtenUnit, type Column, type ColumnUnit, type CsvUnits } from './unit-table.ts'; // prettier-ignore

/** All tables of a loading as it is shown: its own, and where the joints' stiffness has a range, those at both ends of it
 *  (“joints-low-nodes.csv”) with what it moves most side by side (“joint-ends.csv”). */
export function shownTables({ plate, solved, joints }: ShownLoading, units: CsvUnits): SolverTable[] {
  const own = solverTables(plate, solved, units);
  if (joints.length === 0) return own;
  const spreads = [
    { joints: 'as stated', ...jointSpread('low', plate, solved) },
    ...joints.map(({ end, ...at }) => ({ joints: end, ...jointSpread(end, at.plate, at.solved) })),
  ];
  const columns: Column<(typeof spreads)[number]>[] = [
    { name: 'joints', of: (row) => row.joints },
    { name: 'largest deflection', unit: length, of: ({ deflection }) => deflection },
    { name: 'tube moment', unit: moment, of: (row) => row.moment },
    { name: 'bolt pull', unit: force, of: ({ pull }) => pull },
    { name: 'bolt shear', unit: force, of: ({ shear }) => shear },
    { name: 'weld', unit: lineForce, of: ({ weld }) => weld },
    { name: 'settled', of: ({ settled }) => (settled ? 1 : 0) },
  ];
  return [
    ...own,
    { name: 'joint-ends.csv', text: unitTable(columns, spreads, units) },
    ...joints.flatMap(({ end, ...at }) =>
      solverTables(at.plate, at.solved, units).map(({ name, text }) => ({ name: `joints-${end}-${name}`, text })),
    ),
  ];
}

/** A loading with the panels that deflect far in their places. */
export interface LargeLoading extends LargePlate {
  readonly of: SolvedLoading;
}

/** Dips of all panels that deflect far, over their thickness; “converged” is 1, else the dip is unknown. */
export const largeTable = (found: readonly LargeLoading[]): SolverTable => ({
  name: 'large-deflection.csv',
  text: csvTable(
    ['load case', 'loading', 'panel', 'linear dip over thickness [1]', 'dip over thickness [1]', 'converged', 'part of the load balanced [1]'], // prettier-ignore
    found.flatMap(
      ({ of: { situation, loading }, panels }) =>
      panels.map(({ id, linear, large, converged, reached }) => [situation.id, loading, id, linear, large ?? '', converged ? 1 : 0, reached]), // prettier-ignore
    ),
  ),
});

/** All tables of such a loading: panels that deflect far with the forces of their stretch. */
export const largeTables = (plate: ReadyPlate, { solved, panels }: LargePlate, units: CsvUnits): SolverTable[] =>
  solverTables(plate, solved, units, new Map(panels.map(({ id, cells }) => [id, cells])));

/** A mesh study: a line for each mesh, then what it goes towards and in which order; empty where steps go to and fro. */
export function studyTable({ meshes, convergence, chosen }: MeshStudy, units: CsvUnits): SolverTable {
  const head = (name: string, unit: ColumnUnit): string => `${name} [${writtenUnit(unit, units)}]`;
  const number = (si: number, unit: ColumnUnit): number => inUnit(si, writtenUnit(unit, units));
  const value = (quantity: 'deflection' | 'bolt' | 'weld', of: 'extrapolated' | 'order'): number | null =>
    convergence.find((one) => one.quantity === quantity)![of];
  const limit = (quantity: 'deflection' | 'bolt' | 'weld', unit: ColumnUnit): number | string => {
    const found = value(quantity, 'extrapolated');
    return found === null || !Number.isFinite(found) ? '' : number(found, unit);
  };
  return {
    name: 'mesh-study.csv',
    text: csvTable(
      ['of', head('widest cell', length), 'unknowns', head('deflection', length), head('bolt', force), head('weld', lineForce), 'stress error [1]'], // prettier-ignore
      [
        ...meshes.map(({ size, cell, unknowns, deflection, bolt, weld, stressError }) => [size === chosen ? 'chosen mesh' : 'mesh', number(cell, length), unknowns, number(deflection, length), number(bolt, force), number(weld, lineForce), stressError]), // prettier-ignore
        ['extrapolated', '', '', limit('deflection', length), limit('bolt', force), limit('weld', lineForce), ''],
        ['observed order', '', '', ...(['deflection', 'bolt', 'weld'] as const).map((one) => value(one, 'order') ?? ''), ''], // prettier-ignore
      ],
    ),
  };
}
