export type DecimalSign = '.' | ',';

const pattern: Readonly<Record<DecimalSign, RegExp>> = {
  '.': /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/,
  ',': /^[+-]?(\d+,?\d*|,\d+)([eE][+-]?\d+)?$/,
};

/** The number that a cell holds, or undefined for anything else; a typographic minus counts as a minus. */
export function numberOf(cell: string, sign: DecimalSign): number | undefined {
  // most cells of a million are plain decimals, which need no pattern
  if (sign === '.' && isPlain(cell)) return Number(cell);
  const text = cell.trim().replace('\u2212', '-');
  if (!pattern[sign].test(text)) return undefined;
  const value = Number(sign === ',' ? text.replace(',', '.') : text);
  return Number.isFinite(value) ? value : undefined;
}

/** Digits with at most one point among them, after at most one minus. */
function isPlain(cell: string): boolean {
  let [digits, points] = [0, 0];
  for (let i = cell.charCodeAt(0) === minus ? 1 : 0; i < cell.length; i++) {
    const code = cell.charCodeAt(i);
    if (code >= zero && code <= nine) digits++;
    else if (code === point) points++;
    else return false;
  }
  return digits > 0 && points <= 1 && cell.length < 300;
}
const [minus, point, zero, nine] = [0x2d, 0x2e, 0x30, 0x39];
