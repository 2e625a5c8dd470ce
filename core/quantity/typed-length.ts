import { inUnit } from './format-quantity.ts';

/** A length as an engineer types it, to `digits` after the point of a millimetre or an inch, zeros at the end left out. */
export function typedLength(
  metres: number,
  units: 'metric' | 'inch',
  digits: { readonly mm: number; readonly in: number },
): string {
  const unit = units === 'inch' ? 'in' : 'mm';
  return `${Number(inUnit(metres, unit).toFixed(digits[unit]))} ${unit}`;
}
