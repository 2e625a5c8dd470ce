import { Refusal } from '../refusal.ts';
import { readQuantity } from '../quantity/read-quantity.ts';
import { far } from './far.ts';
import type { StockPlate } from './rows.ts';
import { stockPlates } from './stock-plates.ts';
import { unlikeness } from './unlikeness.ts';

type Sheet = StockPlate['sheets'][number];

/** A plate's thickness beside a length that its id or title states, and its sheets beside the catalogue's nearest. */
export function stockPlateFindings(row: StockPlate): string[] {
  const stated = [row.id, row.title].flatMap(lengthsIn);
  const agrees = stated.some(({ si }) => Math.abs(row.thickness / si - 1) <= 0.05);
  const [first] = stated;
  const sheets = stockPlates.filter(({ series }) => series === row.series).flatMap((plate) => plate.sheets);
  return [
    ...(first && !agrees
      ? far(row.id, 'thickness', row.thickness, first.si, 0.05, `the ${first.text} of its name`, [1e-3, 'mm'])
      : []),
    ...row.sheets.flatMap((sheet) => sheetFindings(row.id, sheet, sheets)),
  ];
}

function sheetFindings(id: string, sheet: Sheet, sheets: readonly Sheet[]): string[] {
  const unlike = ({ width, length }: Sheet): number =>
    unlikeness([
      [sheet.width, width],
      [sheet.length, length],
    ]);
  const nearest = sheets.reduce((a, b) => (unlike(b) < unlike(a) ? b : a));
  return (['width', 'length'] as const).flatMap((side) => {
    const ratio = sheet[side] / nearest[side];
    return ratio > 2 || ratio < 0.5
      ? far(id, `${side} of a sheet`, sheet[side], nearest[side], 0, 'that of the nearest sheet of the catalogue', [
          1,
          'm',
        ])
      : [];
  });
}

/** Lengths that a text states, such as "14 mm" or "3/8 in". */
function lengthsIn(text: string): { text: string; si: number }[] {
  const found = text.match(/(?:\d+[ -])?\d+(?:[.,/]\d+)?\s*(?:mm|inches|inch|in|"|″)(?!\p{L})/giu) ?? [];
  return found.flatMap((words) => {
    try {
      return { text: words, si: readQuantity(words, 'length').si };
    } catch (error) {
      // A name is free text: what only looks like a length states none.
      if (error instanceof Refusal) return [];
      throw error;
    }
  });
}
