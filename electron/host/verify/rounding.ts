import type { PageDifference } from './page-differences.ts';

/** What may stand before and after a number in a text. */
const number = /^([([“]*)([-−]?\d+(?:\.\d+)?)([\])”.,;:%]*)$/;

/**
 * Whether all that differs are numbers written alike, each by one unit of its last printed digit: what rounding makes of
 * a difference in the last bit. Read only where the arithmetic differs; where it does not, no digit may.
 */
export function isRounding({ printed, recomputed }: PageDifference): boolean {
  const [was, is] = [printed.split(' '), recomputed.split(' ')];
  return was.length === is.length && was.every((word, i) => word === is[i] || oneUnitApart(word, is[i]!));
}

function oneUnitApart(one: string, other: string): boolean {
  const [, before, a, after] = number.exec(one) ?? [];
  const [, sameBefore, b, sameAfter] = number.exec(other) ?? [];
  if (a === undefined || b === undefined || before !== sameBefore || after !== sameAfter) return false;
  const places = a.split('.')[1]?.length ?? 0;
  if (places !== (b.split('.')[1]?.length ?? 0)) return false;
  return Math.abs(unitsOf(a) - unitsOf(b)) === 1;
}

/** The number in units of its last digit: whole, so that no rounding of ours comes in. */
const unitsOf = (text: string): number => Number(text.replace('−', '-').replace('.', ''));
