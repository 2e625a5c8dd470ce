/** A name as its words and numbers: case, blanks, commas for decimal points, "×", "mm" and fractions spelled either
 *  way do not matter. "SHS 100 × 100 × 6,3 hot" and "shs100x100x6.3hot" give the same. */
export function spelling(name: string): readonly (string | number)[] {
  const tidy = name
    .toLowerCase()
    .replaceAll('×', 'x')
    .replaceAll(/(\d),(\d)/g, '$1.$2')
    .replaceAll(/["″]|\binch(es)?\b/g, ' in ');
  const parts = tidy.match(/\d+[- ]\d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?|\p{L}+/gu) ?? [];
  return parts.filter((part) => part !== 'x' && part !== 'mm').map((part) => (/^\d/.test(part) ? amount(part) : part));
}

/** True where two names are one row's: "S355 plate" and "s355 PLATE". */
export const sameSpelling = (a: string, b: string): boolean => spelling(a).join(' ') === spelling(b).join(' ');

function amount(part: string): number {
  const [whole, fraction] = part.includes('/') ? (/[- ]/.test(part) ? part.split(/[- ]/) : ['0', part]) : [part, '0/1'];
  const [above, below] = fraction!.split('/');
  return Number(whole) + Number(above) / Number(below);
}

/** How far two spellings are apart: 0 for the same. A part left out costs 1/4; two numbers cost the logarithm of their
 *  ratio, two words the share of letters to change, both at most 1. Least total over all alignments (Levenshtein). */
export function spellingDistance(a: readonly (string | number)[], b: readonly (string | number)[]): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j / 4);
  for (let i = 1; i <= a.length; i++) {
    const next = [i / 4];
    for (let j = 1; j <= b.length; j++)
      next.push(Math.min(row[j]! + 0.25, next[j - 1]! + 0.25, row[j - 1]! + partDistance(a[i - 1]!, b[j - 1]!)));
    row = next;
  }
  return row[b.length]!;
}

function partDistance(a: string | number, b: string | number): number {
  if (a === b) return 0;
  if (typeof a === 'number' && typeof b === 'number')
    return a > 0 && b > 0 ? Math.min(1, Math.abs(Math.log(a / b))) : 1;
  if (typeof a === 'string' && typeof b === 'string') return lettersToChange(a, b) / Math.max(a.length, b.length);
  return 1;
}

function lettersToChange(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++)
      next.push(Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)));
    row = next;
  }
  return row[b.length]!;
}
