import type { Box } from './box.ts';

/** How tightly the parts of a box hold together as it is read, loosest first. */
export const tightness = { choice: 0, or: 1, and: 2, relation: 3, sum: 4, product: 5, power: 6, whole: 7 } as const;

/**
 * How tightly a box holds together: what stands beside it may need to bracket it. A fraction, a signed number and a
 * number with its unit count as products; a root or a power as a power.
 */
export function tightnessOf(box: Box): number {
  switch (box.kind) {
    case 'symbol':
    case 'text':
    case 'operator':
    case 'bracket':
      return tightness.whole;
    case 'number':
      return startsWithMinus(box) ? tightness.product : tightness.whole;
    case 'fraction':
      return tightness.product;
    case 'root':
      return tightness.power;
    case 'script':
      return box.sup ? tightness.power : tightness.whole;
    case 'cases':
      return tightness.choice;
    case 'row':
      return Math.min(...box.boxes.map(tightnessOf), ...box.boxes.map(operatorTightness), rowTightness(box.boxes));
  }
}

/** Whether a minus is the first thing read in the box (that of a fraction's numerator stands apart). */
export function startsWithMinus(box: Box): boolean {
  if (box.kind === 'row') return box.boxes[0] !== undefined && startsWithMinus(box.boxes[0]);
  return (box.kind === 'text' || box.kind === 'number') && /^[-−]/.test(box.text);
}

/** The space that stands for a product of letters. */
export const thinSpace = { kind: 'text', text: '\u2009' } as const satisfies Box;
export const isThinSpace = (box: Box): boolean => box.kind === 'text' && box.text === thinSpace.text;

function operatorTightness(box: Box): number {
  if (isThinSpace(box)) return tightness.product;
  if (box.kind !== 'operator') return tightness.whole;
  switch (box.text) {
    case 'or':
      return tightness.or;
    case 'and':
      return tightness.and;
    case '+':
    case '−':
      return tightness.sum;
    case '·':
      return tightness.product;
    default:
      return tightness.relation;
  }
}

function rowTightness(boxes: readonly Box[]): number {
  const [first, second] = boxes;
  const signed = first !== undefined && startsWithMinus(first);
  const withUnit = second?.kind === 'text' && boxes.some(({ kind }) => kind === 'number');
  return signed || withUnit ? tightness.product : tightness.whole;
}
