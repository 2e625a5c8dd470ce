import { boltClassFindings } from './bolt-class-findings.ts';
import { boltSizeFindings } from './bolt-size-findings.ts';
import { materialFindings } from './material-findings.ts';
import type { Bolt, BoltClass, HollowSection, Material, StockPlate, WeldMetal } from './rows.ts';
import { sectionFindings } from './section-findings.ts';
import { stockPlateFindings } from './stock-plate-findings.ts';
import { weldMetalFindings } from './weld-metal-findings.ts';

/** A row of the user's own that the catalogue has an opinion on. */
export type ComparableRow =
  | { readonly kind: 'material'; readonly row: Material }
  | { readonly kind: 'section'; readonly row: HollowSection }
  | { readonly kind: 'bolt'; readonly row: Bolt }
  | { readonly kind: 'boltClass'; readonly row: BoltClass }
  | { readonly kind: 'weldMetal'; readonly row: WeldMetal }
  | { readonly kind: 'stockPlate'; readonly row: StockPlate };

/** Findings about a user's row that lies far from what the catalogue would say; empty when it does not.
 *    material: modulus, density or a strength more than 15 % from the grade that its id or title names, or else from the
 *      nearest of its family; yield strength more than 5 % from a strength in ksi or MPa that its id or title states
 *    section: a property more than 1 % from the one computed from its own height, width, wall and radii; a size more than
 *      50 % from the nearest section of the catalogue, a radius from the usual one of its process
 *    bolt: tensile area more than 1 % from π/4 (d − 0.9382 P)² of ISO 898-1, or π/4 (d − 0.9743 P)² of ASME B1.1; head,
 *      nut or washer more than 25 %, a hole more than 10 %, from the nearest bolt of its series in proportion to the diameter
 *    bolt class: a strength or hardness more than 15 % from the class that its name gives, or else from the nearest of its
 *      family; a nominal stress so, in proportion to the ultimate strength; a shear factor more than 21 %
 *    weld metal: strength more than 15 % from the nearest of its family
 *    stock plate: thickness more than 5 % from the one that its id or title states; a sheet more than twice or less than
 *      half of the nearest sheet of the catalogue
 *  The limits are ours: wide enough for real differences, narrow enough for a slip of unit or digit. */
export function comparedWithNearest(own: ComparableRow): readonly string[] {
  switch (own.kind) {
    case 'material':
      return materialFindings(own.row);
    case 'section':
      return sectionFindings(own.row);
    case 'bolt':
      return boltSizeFindings(own.row);
    case 'boltClass':
      return boltClassFindings(own.row);
    case 'weldMetal':
      return weldMetalFindings(own.row);
    case 'stockPlate':
      return stockPlateFindings(own.row);
  }
}
