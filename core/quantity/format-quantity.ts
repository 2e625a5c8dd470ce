import { refusal } from '../refusal.ts';
import { unitReading } from './units.ts';

/** SI value expressed in a unit in mathjs words. */
export const inUnit = (si: number, unit: string): number => {
  const { factor, offset } = unitReading(unit);
  return (si - offset) / factor;
};

/** SI value of a number in a unit in mathjs words. */
export const fromUnit = (value: number, unit: string): number => {
  const { factor, offset } = unitReading(unit);
  return value * factor + offset;
};

/** A number with so many significant figures, without an exponent between 1e-4 and 1e7, thousands parted by thin spaces. Refuses what is not finite: no result is. */
export function significant(value: number, figures = 4): string {
  if (!Number.isFinite(value))
    throw refusal({
      what: `A value to be printed is ${value}`,
      mend: 'This is a fault of Stillplate, not of the document: nothing that depends on it is printed',
    });
  if (value === 0) return '0';
  const size = Math.floor(Math.log10(Math.abs(value)));
  if (size < -4 || size >= 7) {
    const [mantissa = '', exponent = ''] = value.toExponential(figures - 1).split('e');
    return `${minus(mantissa)}·10${superscript(Number(exponent))}`;
  }
  const rounded = Number(value.toPrecision(figures));
  const decimals = Math.max(0, figures - 1 - Math.floor(Math.log10(Math.abs(rounded))));
  const [whole = '', part] = rounded.toFixed(decimals).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+(?!\d))/g, whole.replace('-', '').length > 4 ? '\u202f' : '');
  return minus(part ? `${grouped}.${part}` : grouped);
}

/** A quantity for print: "12.35 kN". A pure number (unit `1`) has no unit text. */
export function formatQuantity(
  si: number,
  unit: string,
  figures = 4,
): { readonly number: string; readonly unit: string } {
  // A count is a whole number: eleven bolts are 11, not 11.00.
  if (unit === '1')
    return {
      number:
        Number.isInteger(si) && Math.abs(si) < 1e5
          ? significant(si, String(Math.abs(si)).length)
          : significant(si, figures),
      unit: '',
    };
  return { number: significant(inUnit(si, unit), figures), unit: unitText(unit) };
}

/** The same as one text. */
export const quantityText = (si: number, unit: string, figures = 4): string => {
  const { number, unit: text } = formatQuantity(si, unit, figures);
  return text ? `${number} ${text}` : number;
};

/** mathjs words as the trade writes them: "kN*m" → "kN·m", "mm^2" → "mm²". */
export const unitText = (unit: string): string =>
  unit
    .replace(/\*/g, '·')
    .replace(/\^(-?\d+)/g, (_, power: string) => superscript(Number(power)))
    .replace(/tonne/, 't')
    .replace(/lbm/, 'lb')
    .replace(/deg([CF])/, '°$1')
    .replace(/minute/, 'min');

const superscript = (n: number): string =>
  String(n).replace(/[-\d]/g, (c) => (c === '-' ? '⁻' : ('⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(c)] as string)));
const minus = (text: string): string => text.replace('-', '−');

/** Units of print in the two systems; the keys are the units that checks and quantities state. */
// prettier-ignore
const inch: Readonly<Record<string, string>> = {
  mm: 'in', m: 'ft', 'mm^2': 'in^2', 'cm^2': 'in^2', 'm^2': 'ft^2', 'mm^3': 'in^3', 'cm^3': 'in^3', 'm^3': 'ft^3', 'mm^4': 'in^4', 'cm^4': 'in^4', 'm^4': 'in^4',
  N: 'lbf', kN: 'lbf', 'N/m': 'lbf/ft', 'kN/m': 'lbf/ft', 'N/mm': 'lbf/in', 'kN*m': 'lbf*ft', 'N*m': 'lbf*ft', 'N*m/m': 'lbf*in/in', 'kN*m/m': 'lbf*in/in', 'N*mm/mm': 'lbf*in/in',
  MPa: 'ksi', kPa: 'psi', Pa: 'psi', GPa: 'ksi', kg: 'lbm', 'kg/m': 'lbm/ft', 'kg/m^3': 'lbm/ft^3', 'kg/m^2': 'lbm/ft^2', 'm^2/kg': 'ft^2/lbm', 'm/s': 'ft/s', 'm/s^2': 'ft/s^2', 'kg*m^2': 'lbm*ft^2', 'N*m^2': 'lbf*ft^2', 'kN*m^2': 'lbf*ft^2',
};

export type UnitSystem = 'metric' | 'inch';

/** The unit in which a stated unit is printed under a system. */
export const printedUnit = (unit: string, system: UnitSystem): string =>
  system === 'inch' ? (inch[unit] ?? unit) : unit;
