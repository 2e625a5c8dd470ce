import type { Result } from '../../../core/result.ts';

export interface ResultDifference {
  readonly what: string;
  readonly attached: string;
  readonly recomputed: string;
}

/** Relative difference that another version of the program, or another machine's arithmetic, may have: rounding. */
export const roundingTolerance = 1e-6;

/** Quantities and verdicts in which the attached results differ from those that come out anew. */
export function resultDifferences(attached: Result, now: Result, tolerance: number): readonly ResultDifference[] {
  const differences: ResultDifference[] = [];
  const compare = (what: string, was: unknown, is: unknown, scale = 0): void => {
    if (!alike(was, is, tolerance, scale)) differences.push({ what, attached: words(was), recomputed: words(is) });
  };
  for (const id of new Set([...Object.keys(attached.quantities), ...Object.keys(now.quantities)]))
    compare(`quantity ${id}`, attached.quantities[id]?.value, now.quantities[id]?.value);
  const rows = ({ checks }: Result) =>
    new Map(checks.map((row, i) => [`${row.id} at ${row.place}, ${row.loadCase ?? '-'}, ${row.direction ?? '-'}, row ${i + 1}`, row])); // prettier-ignore
  const [before, after] = [rows(attached), rows(now)];
  for (const key of new Set([...before.keys(), ...after.keys()]))
    for (const field of ['verdict', 'demand', 'capacity', 'utilisation'] as const)
      compare(`${field} of ${key}`, before.get(key)?.[field], after.get(key)?.[field], scaleOf(field, before.get(key)));
  return differences;
}

/** A demand is large or small beside its capacity: what cancels to a thousandth of it has fewer digits that count. */
function scaleOf(field: string, row: Result['checks'][number] | undefined): number {
  if (field === 'utilisation') return 1e-3;
  return field === 'demand' && typeof row?.capacity === 'number' ? 1e-3 * Math.abs(row.capacity) : 0;
}

function alike(was: unknown, is: unknown, tolerance: number, scale: number): boolean {
  if (typeof was !== 'number' || typeof is !== 'number') return was === is;
  return Math.abs(was - is) <= tolerance * Math.max(Math.abs(was), Math.abs(is), scale);
}

const words = (value: unknown): string => (value === undefined ? 'nothing' : String(value));
