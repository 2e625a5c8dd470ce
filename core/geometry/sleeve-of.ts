import type { BoltedFixing } from '../document/schema.ts';

/** Bore and outside of a crush sleeve, m: as stated, else as the hole with a wall of a quarter of the bolt (common practice, no source). */
export const sleeveOf = (
  { sleeve }: Pick<BoltedFixing, 'sleeve'>,
  hole: number,
  bolt: number,
): { readonly bore: number; readonly outer: number } =>
  sleeve ? { bore: sleeve.bore.si, outer: sleeve.outer.si } : { bore: hole, outer: hole + bolt / 2 };
