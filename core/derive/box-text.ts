import type { Box } from './box.ts';
import { isThinSpace, startsWithMinus, tightness, tightnessOf } from './tightness.ts';

/** A box as one line of Unicode text; where the layout alone carried the order of operations, brackets do. */
export function boxText(box: Box): string {
  switch (box.kind) {
    case 'row':
      return box.boxes.map((part, i) => rowPart(part, box.boxes[i + 1])).join('');
    case 'symbol':
    case 'number':
      return box.text;
    case 'text':
      return isThinSpace(box) ? '·' : box.text.replaceAll('\u00a0', ' ');
    case 'operator':
      return box.text === ',' ? ', ' : ` ${box.text} `;
    case 'fraction':
      return `${numerator(box.over)}/${held(box.under, tightness.power)}`;
    case 'root':
      return `√${held(box.body, tightness.whole)}`;
    case 'script':
      return boxText(box.base) + (box.sub ? `_${boxText(box.sub)}` : '') + (box.sup ? raised(boxText(box.sup)) : '');
    case 'bracket':
      return box.shape === 'bar' ? `|${boxText(box.body)}|` : `(${boxText(box.body)})`;
    case 'cases':
      return `{${box.rows.map((row, i) => `${boxText(row.value)} ${i === box.rows.length - 1 ? '' : 'if '}${boxText(row.when)}`).join('; ')}}`;
  }
}

const held = (box: Box, least: number): string => (tightnessOf(box) < least ? `(${boxText(box)})` : boxText(box));

/** a/b·c would be read as a/(b·c) by some: a fraction before a factor is held together. */
function rowPart(part: Box, next: Box | undefined): string {
  const factor = next !== undefined && (isThinSpace(next) || (next.kind === 'operator' && next.text === '·'));
  return part.kind === 'fraction' && factor ? `(${boxText(part)})` : boxText(part);
}

/** Over a fraction: a sum, a sign, another fraction or a unit with a slash is held together. */
function numerator(over: Box): string {
  const slashed = (box: Box) => box.kind === 'fraction' || (box.kind === 'text' && box.text.includes('/'));
  const stacked = over.kind === 'row' ? over.boxes.some(slashed) : slashed(over);
  return tightnessOf(over) < tightness.product || startsWithMinus(over) || stacked
    ? `(${boxText(over)})`
    : boxText(over);
}

function raised(text: string): string {
  if (/^−?\d+$/.test(text)) return [...text].map((c) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(c)] ?? '⁻').join('');
  return /^[\p{L}\d.]+$/u.test(text) ? `^${text}` : `^(${text})`;
}
