import { csvTable } from '../../quantity/csv-table.ts';
import { inUnit, printedUnit } from '../../quantity/format-quantity.ts';
import type { LargePlate } from '../large-panel.ts';
import type { MeshStudy } from '../mesh-study.ts';
import type { ShownLoading } from '../solve-cases.ts';
import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';
import { jointSpread } from './joint-spread.ts';
import type { CsvUnits } from './solver-csv.ts';
import { solverTables, type SolverTable } from './solver-tables.ts';

/** All tables of a loading as it is shown: its own, and where the joints' stiffness has a range, those at both ends of it
 *  (“joints-low-nodes.csv”) with what it moves most side by side (“joint-ends.csv”). */
export function shownTables({ plate, solved, joints }: ShownLoading, units: CsvUnits): SolverTable[] {
  const own = solverTables(plate, solved, units);
  if (joints.length === 0) return own;
  const { head, number } = inUnits(units);
  const rows = [['as stated', jointSpread('low', plate, solved)] as const, ...joints.map(({ end, ...at }) => [end, jointSpread(end, at.plate, at.solved)] as const)]; // prettier-ignore
  return [
    ...own,
    {
      name: 'joint-ends.csv',
      text: csvTable(
        ['joints', head('largest deflection', 'm'), head('tube moment', 'N*m'), head('bolt pull', 'N'), head('bolt shear', 'N'), head('weld', 'N/m'), 'settled'], // prettier-ignore
        rows.map(([end, { deflection, moment, pull, shear, weld, settled }]) => [end, number(deflection, 'm'), number(moment, 'N*m'), number(pull, 'N'), number(shear, 'N'), number(weld, 'N/m'), settled ? 1 : 0]), // prettier-ignore
      ),
    },
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
  const { head, number } = inUnits(units);
  const value = (quantity: 'deflection' | 'bolt' | 'weld', of: 'extrapolated' | 'order'): number | null =>
    convergence.find((one) => one.quantity === quantity)![of];
  const limit = (quantity: 'deflection' | 'bolt' | 'weld', unit: string): number | string => {
    const found = value(quantity, 'extrapolated');
    return found === null || !Number.isFinite(found) ? '' : number(found, unit);
  };
  return {
    name: 'mesh-study.csv',
    text: csvTable(
      ['of', head('widest cell', 'm'), 'unknowns', head('deflection', 'm'), head('bolt', 'N'), head('weld', 'N/m'), 'stress error [1]'], // prettier-ignore
      [
        ...meshes.map(({ size, cell, unknowns, deflection, bolt, weld, stressError }) => [size === chosen ? 'chosen mesh' : 'mesh', number(cell, 'm'), unknowns, number(deflection, 'm'), number(bolt, 'N'), number(weld, 'N/m'), stressError]), // prettier-ignore
        ['extrapolated', '', '', limit('deflection', 'm'), limit('bolt', 'N'), limit('weld', 'N/m'), ''],
        ['observed order', '', '', ...(['deflection', 'bolt', 'weld'] as const).map((one) => value(one, 'order') ?? ''), ''], // prettier-ignore
      ],
    ),
  };
}

/** Heads and numbers in the units that are asked for. */
function inUnits(units: CsvUnits) {
  const metric: Readonly<Record<string, string>> = { m: 'mm', N: 'N', 'N/m': 'N/m', 'N*m': 'N*m' };
  const unit = (si: string): string => (units === 'SI' ? si : printedUnit(metric[si]!, units));
  return {
    head: (name: string, si: string): string => `${name} [${unit(si)}]`,
    number: (value: number, si: string): number => inUnit(value, unit(si)),
  };
}
