import { catalogueWith } from '../catalogue/catalogue.ts';
import { valuesTyped } from '../document/row-like.ts';
import { valueText } from '../note/own-row-table.ts';
import type { UnitSystem } from '../quantity/format-quantity.ts';
import { sourceText } from '../result.ts';
import type { EngineCalls } from './messages.ts';

/** So many rows are read at a time: fifteen hundred sections are nobody's reading. */
const most = 40;

/** Built-in rows of a kind whose id or title has every word of a text, in words; and how many there are in all. */
export function catalogueRows(
  { kind, find }: EngineCalls['catalogueRows']['takes'],
  units: UnitSystem,
): EngineCalls['catalogueRows']['gives'] {
  const words = find.toLowerCase().split(/\s+/);
  const found = catalogueWith()
    .list(kind)
    .filter((row) => words.every((word) => `${row.id} ${row.title}`.toLowerCase().includes(word)));
  return {
    found: found.length,
    rows: found.slice(0, most).map((row) => ({
      id: row.id,
      title: row.title,
      values: valueText(valuesTyped(kind, row, units)),
      source: row.source ? sourceText(row.source) : 'no source',
    })),
  };
}

/** "M12 own", "M12 own 2": the first such id that no row of the document has. */
export function freeRowId(id: string, taken: readonly unknown[]): string {
  for (let n = 1; ; n++) {
    const free = n === 1 ? `${id} own` : `${id} own ${n}`;
    if (!taken.includes(free)) return free;
  }
}
