import { fromUnit } from '../quantity/format-quantity.ts';

/** Largest side of a hollow section, and the least hole at each end of it where there is one such hole, mm. */
const holes = [
  [15, 8], [20, 10], [30, 12], [40, 14], [50, 16], [60, 20], [80, 20], [100, 25], [120, 30], [160, 40], [200, 50],
] as const; // prettier-ignore

/**
 * Least diameter of the one hole at each end of a hollow section of so large a side (or diameter) that is to be dipped in molten zinc,
 * m from m. Null above 200 mm, where the table ends: the galvaniser says.
 * Source: EN ISO 14713-2, table of vent holes for hollow sections, from memory.
 */
export function galvanisingHole(side: number): number | null {
  const row = holes.find(([largest]) => side <= largest * fromUnit(1, 'mm') * (1 + 1e-9));
  return row ? row[1] * fromUnit(1, 'mm') : null;
}

/** Area of two faces that lie on each other above which what is shut in between them can burst out of the bath, m². Source: ASTM A385, from memory. */
export const lapWithoutVent = 103e-4;
