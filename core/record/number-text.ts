export type DecimalSign = '.' | ',';

const pattern: Readonly<Record<DecimalSign, RegExp>> = {
  '.': /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/,
  ',': /^[+-]?(\d+,?\d*|,\d+)([eE][+-]?\d+)?$/,
};

/** The number that a cell holds, or undefined for anything else; a typographic minus counts as a minus. */
export function numberOf(cell: string, sign: DecimalSign): number | undefined {
  const plain = plainDecimal(cell, sign);
  if (plain !== undefined) return plain;
  const text = cell.trim().replace('\u2212', '-');
  if (!pattern[sign].test(text)) return undefined;
  const value = Number(sign === ',' ? text.replace(',', '.') : text);
  return Number.isFinite(value) ? value : undefined;
}

/**
 * Most cells of a million: up to fifteen digits with at most one decimal sign among them, after at most one minus. Digits
 * and power of ten are exact in a double, so that their one division is rounded as the language itself rounds the text.
 * Source: Clinger, How to read floating point numbers accurately, PLDI 1990 (from memory).
 */
function plainDecimal(cell: string, sign: DecimalSign): number | undefined {
  const n = cell.length;
  if (n > 17) return undefined;
  const point = sign === '.' ? 0x2e : 0x2c;
  const negative = cell.charCodeAt(0) === 0x2d;
  let [value, digits, decimals] = [0, 0, -1];
  for (let i = negative ? 1 : 0; i < n; i++) {
    const digit = cell.charCodeAt(i) - 0x30;
    if (digit >= 0 && digit <= 9) {
      value = 10 * value + digit;
      digits++;
      if (decimals >= 0) decimals++;
    } else if (digit + 0x30 === point && decimals < 0) decimals = 0;
    else return undefined;
  }
  if (digits === 0 || digits > 15) return undefined;
  const size = decimals > 0 ? value / powers[decimals]! : value;
  return negative ? -size : size;
}
const powers = Array.from({ length: 16 }, (_, i) => Number(`1e${i}`));
