import type { Catalogue } from '../catalogue/catalogue.ts';
import { stockBeside } from '../catalogue/stock-beside.ts';
import type { Finding } from '../finding.ts';
import type { Quantity } from '../quantity/kinds.ts';
import type { PlateDocument } from './schema.ts';

/**
 * Plates of a thickness that no merchant keeps: each panel design that a panel is of, and the eyes. The document's own
 * stock counts. Metals only: plastics and laminates are made to thickness, and the stock lists are of metal plate.
 */
export function stockFindings(document: PlateDocument, catalogue: Catalogue): readonly Finding[] {
  const { designs, panels, grid, units } = document;
  const used = new Set(Object.values(panels));
  const plates: readonly (readonly [place: string, plate: { material: string; thickness: Quantity }])[] = [
    ...Object.entries(designs)
      .filter(([name]) => used.has(name))
      .map(([name, design]) => [`designs.${name}.thickness`, design] as const),
    ['grid.suspension.eye.thickness', grid.suspension.eye],
    ...(grid.padEyes ? ([['grid.padEyes.eye.thickness', grid.padEyes.eye]] as const) : []),
  ];
  return plates.flatMap(([place, { material, thickness }]) => {
    const { family } = catalogue.material(material);
    if (family === 'thermoplastic' || family === 'laminate') return [];
    const beside = stockBeside(thickness.si, units === 'inch' ? 'inch' : 'metric', catalogue.stockPlates);
    if (!beside) return [];
    const { thinner, thicker } = beside;
    const kept =
      thinner && thicker
        ? `${thinner.id} or ${thicker.id}`
        : thinner
          ? `the thickest is ${thinner.id}`
          : `the thinnest is ${thicker?.id}`;
    return {
      id: 'thickness-off-stock',
      place,
      text: `${thickness.typed} is no stock thickness: ${kept}`,
      mend: 'Take a thickness that merchants keep, or add the plate that you can get to the document’s own rows ("stockPlates" of its catalogue).',
    };
  });
}
