import { drawnLength } from './geometry/drawn-length.ts';
import { printedUnit, quantityText, unitText, type UnitSystem } from './quantity/format-quantity.ts';

/** Quantities as the note prints them, in the document's system of units. Units are stated in metric mathjs words. */
export interface Print {
  /** "12.35 kN" */
  readonly quantity: (si: number, unit: string, figures?: number) => string;
  /** A length as drawings give it, with its unit: "46 mm", "2.25 in". */
  readonly length: (si: number) => string;
  /** The same without its unit. */
  readonly drawn: (si: number) => string;
  /** "kN", for a column's head. */
  readonly unit: (unit: string) => string;
}

export const printIn = (system: UnitSystem): Print => ({
  quantity: (si, unit, figures = 4) => quantityText(si, printedUnit(unit, system), figures),
  drawn: drawnLength(system),
  length: (si) => `${drawnLength(system)(si)} ${unitText(printedUnit('mm', system))}`,
  unit: (unit) => unitText(printedUnit(unit, system)),
});
