import { csvTable } from '../../quantity/csv-table.ts';
import type { SolverTable } from './solver-tables.ts';
import type { Structure } from '../../solve/structure/structure.ts';

/** A mode or a way of buckling to be listed: Hz, or times the loading; its shape, 6N. */
export interface ListedMotion {
  readonly group: string;
  readonly value: number;
  readonly shape: Float64Array;
}

/** Motions as files: one line each, and their shapes by node (largest shift 1; turns in rad for it). */
export function motionTables(
  { coordinates }: Structure,
  kind: 'modes' | 'buckling',
  motions: readonly ListedMotion[],
): SolverTable[] {
  const value = kind === 'modes' ? 'frequency [Hz]' : 'factor [1]';
  const number = new Map<string, number>();
  const numbered = motions.map((motion) => {
    const k = (number.get(motion.group) ?? 0) + 1;
    number.set(motion.group, k);
    return { ...motion, k };
  });
  const rows = function* (): Generator<(string | number)[]> {
    for (const { group, k, shape } of numbered)
      for (let n = 0; 3 * n < coordinates.length; n++)
        yield [group, k, n, ...coordinates.subarray(3 * n, 3 * n + 3), ...shape.subarray(6 * n, 6 * n + 6)];
  };
  return [
    { name: `${kind}.csv`, text: csvTable(['of', 'number', value], numbered.map(({ group, k, value: own }) => [group, k, own])) }, // prettier-ignore
    {
      name: `${kind}-shapes.csv`,
      text: csvTable(['of', 'number', 'node', 'x [m]', 'y [m]', 'z [m]', 'ux', 'uy', 'uz', 'rx', 'ry', 'rz'], rows()),
    },
  ];
}
