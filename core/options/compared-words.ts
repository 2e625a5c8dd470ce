import type { ComparedQuantity } from './compare.ts';

/** Title and unit of print of each compared quantity, for tables. */
export const comparedWords: Readonly<Record<ComparedQuantity, { readonly title: string; readonly unit: string }>> = {
  'mass.air': { title: 'Mass in air', unit: 'kg' },
  'mass.panels': { title: 'Panels', unit: 'kg' },
  'weight.submerged': { title: 'Weight in water', unit: 'kN' },
  'area.open': { title: 'Open area', unit: 'm^2' },
  'ratio.open': { title: 'Open part', unit: '1' },
  'cost.plateArea': { title: 'Plate', unit: 'm^2' },
  'cost.cutLength': { title: 'Cut length', unit: 'm' },
  'cost.holes': { title: 'Holes', unit: '1' },
  'cost.bolts': { title: 'Bolts', unit: '1' },
  'cost.weldLength': { title: 'Weld length', unit: 'm' },
  'cost.heaviestPanel': { title: 'Heaviest panel by hand', unit: 'kg' },
};
