import { listedNames } from './listed-names.ts';
import type { Cell } from './note.ts';

/**
 * Rows that differ only in one cell, set as one row whose cell lists them: twelve equal bays take one line.
 * Order: that of the first of each. `loud` keeps with its row.
 */
export function mergedRows(
  rows: readonly { readonly cells: readonly string[]; readonly loud: boolean }[],
  column: number,
): { readonly rows: readonly (readonly Cell[])[]; readonly loud: readonly number[] } {
  const groups = new Map<string, { cells: string[]; names: string[]; loud: boolean }>();
  for (const { cells, loud } of rows) {
    const key = JSON.stringify([cells.filter((_, i) => i !== column), loud]);
    const group = groups.get(key);
    if (group) group.names.push(cells[column] as string);
    else groups.set(key, { cells: [...cells], names: [cells[column] as string], loud });
  }
  const merged = [...groups.values()];
  return {
    rows: merged.map(({ cells, names }) => cells.map((cell, i) => (i === column ? listedNames(names) : cell))),
    loud: merged.flatMap(({ loud }, i) => (loud ? [i] : [])),
  };
}
