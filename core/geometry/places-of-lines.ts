import type { Catalogue } from '../catalogue/catalogue.ts';
import type { PlateDocument } from '../document/schema.ts';
import { typedLength } from '../quantity/typed-length.ts';
import { geometryOf } from './geometry-of.ts';

/** A bolt's place as it is written in a document. */
export interface WrittenPlace {
  readonly x: string;
  readonly y: string;
  readonly from: string;
}

/**
 * The bolts of a design as places, each from the nearer edges of the first panel that has it, to a micrometre (a
 * ten-thousandth of an inch): a list to begin with. Null where no panel has the design or it is not bolted.
 * Refuses what `geometryOf` refuses.
 */
export function placesOfLines(
  document: PlateDocument,
  catalogue: Catalogue,
  designName: string,
): readonly WrittenPlace[] | null {
  const panel = geometryOf(document, catalogue).panels.find((one) => one.designName === designName);
  if (!panel || panel.bolts.length === 0) return null;
  const { x0, y0, x1, y1 } = panel.outline;
  const written = (metres: number): string => typedLength(metres, document.units, { mm: 3, in: 4 });
  return panel.bolts.map(({ x, y }) => {
    const [highX, highY] = [x - x0 > x1 - x + 1e-9, y - y0 > y1 - y + 1e-9];
    return {
      x: written(highX ? x1 - x : x - x0),
      y: written(highY ? y1 - y : y - y0),
      from: `${highX ? 'high' : 'low'} x, ${highY ? 'high' : 'low'} y`,
    };
  });
}
