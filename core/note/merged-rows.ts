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
    rows: merged.map(({ cells, names }) => cells.map((cell, i) => (i === column ? listed(names) : cell))),
    loud: merged.flatMap(({ loud }, i) => (loud ? [i] : [])),
  };
}

/** "bay A1, bay A6, plate" → "bays A1, A6; plate": a first word that several share is said once. */
function listed(names: readonly string[]): string {
  const groups = new Map<string, string[]>();
  for (const name of names) {
    const [, word = '', rest = name] = /^(.+) (\S+)$/.exec(name) ?? [];
    groups.set(word, [...(groups.get(word) ?? []), rest]);
  }
  return [...groups]
    .map(([word, of]) => (word === '' ? of.join(', ') : `${word}${of.length > 1 ? 's' : ''} ${of.join(', ')}`))
    .join(groups.size > 1 ? '; ' : ', ');
}
