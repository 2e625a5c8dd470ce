import type { StockPlate } from './rows.ts';

/** The stock plates beside a thickness that nobody keeps: the next thinner and thicker of a series, where there are any. */
export interface StockBeside {
  readonly thinner: StockPlate | undefined;
  readonly thicker: StockPlate | undefined;
}

/** A nominal inch thickness is often written in mm to two places: 4.76 mm is 3/16 in. */
const rounding = 1e-3;

/** Null where a plate of either series has the thickness (m), to a part in a thousand; else its neighbours in the series. */
export function stockBeside(
  thickness: number,
  series: StockPlate['series'],
  plates: readonly StockPlate[],
): StockBeside | null {
  if (plates.some((plate) => Math.abs(plate.thickness / thickness - 1) <= rounding)) return null;
  const kept = plates.filter((plate) => plate.series === series).sort((a, b) => a.thickness - b.thickness);
  return {
    thinner: kept.filter((plate) => plate.thickness < thickness).at(-1),
    thicker: kept.find((plate) => plate.thickness > thickness),
  };
}
