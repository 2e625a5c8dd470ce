import type { Box } from './box.ts';

/** A number as written, with a true minus; `1.2e-7` and `1.2·10⁻⁷` are both set with 10 raised to the exponent. */
export function numberBox(text: string): Box {
  const [, mantissa = text, exponent] = /^(.*?)(?:e|·10(?=[⁻⁰¹²³⁴-⁹]))(.+)$/.exec(text) ?? [];
  const number = (digits: string): Box => ({ kind: 'number', text: digits.replace('-', '−') });
  if (exponent === undefined) return number(mantissa);
  const power: Box = { kind: 'script', base: number('10'), sup: number(lowered(exponent).replace('+', '')) };
  return mantissa === '1' ? power : { kind: 'row', boxes: [number(mantissa), { kind: 'text', text: '·' }, power] };
}

const lowered = (text: string): string =>
  text.replace(/[⁻⁰¹²³⁴-⁹]/g, (c) => (c === '⁻' ? '-' : String('⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(c))));
