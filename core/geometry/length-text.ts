import { printedUnit, quantityText, type UnitSystem } from '../quantity/format-quantity.ts';

/** A length in m as text in the document's units. */
export type LengthText = (length: number) => string;

/** Lengths as an engineer reads them on a drawing: mm or in, four figures. */
export const lengthText =
  (units: UnitSystem): LengthText =>
  (length) =>
    quantityText(length, printedUnit('mm', units), 4);
