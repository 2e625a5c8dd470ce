import { inUnit, significant, type UnitSystem } from '../quantity/format-quantity.ts';
import type { LengthText } from './length-text.ts';

/** Unit that a drawing's dimensions are in; it stands once, in the caption. */
export const drawnUnit = (units: UnitSystem): string => (units === 'inch' ? 'inches' : 'mm');

/** A dimension as a drawing writes it, without its unit and without idle zeros: whole tenths of a millimetre, whole thousandths of an inch. */
export function drawnLength(units: UnitSystem): LengthText {
  const [unit, decimals] = units === 'inch' ? ['in', 3] : ['mm', 1];
  return (length) => {
    const value = Number(inUnit(length, unit).toFixed(decimals));
    const figures = value === 0 ? 1 : Math.max(1, Math.floor(Math.log10(Math.abs(value))) + 1 + decimals);
    return significant(value, figures).replace(/\.(\d*?)0+$/, (_, kept: string) => (kept ? `.${kept}` : ''));
  };
}
