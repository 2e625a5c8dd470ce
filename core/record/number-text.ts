export type DecimalSign = '.' | ',';

const pattern: Readonly<Record<DecimalSign, RegExp>> = {
  '.': /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/,
  ',': /^[+-]?(\d+,?\d*|,\d+)([eE][+-]?\d+)?$/,
};

/** The number that a cell holds, or undefined for anything else; a typographic minus counts as a minus. */
export function numberOf(cell: string, sign: DecimalSign): number | undefined {
  const text = cell.trim().replace('\u2212', '-');
  if (!pattern[sign].test(text)) return undefined;
  const value = Number(sign === ',' ? text.replace(',', '.') : text);
  return Number.isFinite(value) ? value : undefined;
}
