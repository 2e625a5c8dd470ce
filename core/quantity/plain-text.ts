/**
 * A quantity's text with its typographic signs as a keyboard has them, so that what is printed or pasted is read:
 * "−3 mm" → "-3 mm", "12 350 N" → "12350 N", "1.200·10⁷ N" → "1.200e7 N", "1½ in" → "1 1/2 in", 5′ 3″ → 5' 3".
 * A blank parts thousands only where it stands before each group of three digits (ISO 80000-1, 7.3.1, from memory).
 */
export const plainText = (typed: string): string =>
  typed
    .replace(/[\u00a0\u2009\u202f]/g, ' ')
    .replace(/[−‐‑–]/g, '-')
    .replace(/⁄/g, '/')
    .replace(/[′’]/g, "'")
    .replace(/[″”]|''/g, '"')
    .replace(
      /(\d)?([¼½¾⅛⅜⅝⅞])/g,
      (_, whole: string | undefined, sign: string) => `${whole ? `${whole} ` : ''}${fractions[sign]}`,
    )
    .replace(
      /[·×]10([⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)/g,
      (_, power: string) => `e${[...power].map((c) => (c === '⁻' ? '-' : '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(c))).join('')}`,
    )
    .trim()
    .replace(/^[-+]?\d{1,3}(?: \d{3})+(?![\d/ ]*\/)(?!\d)/, (groups) => groups.replace(/ /g, ''));

const fractions: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};
