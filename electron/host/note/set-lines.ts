import type { Box } from '../../../core/derive/box.ts';
import type { Ink } from './ink.ts';
import { flatRow, setBox, type SetBox } from './set-box.ts';

/**
 * Sets a formula on as few lines as fit into `width` points. Lines break before a sign between two terms. A term
 * that is wider than a line alone is laid open (a bracket term by term, a fraction as (over) / (under)), and what
 * still cannot be broken is set smaller: nothing runs off the page and nothing is cut.
 */
export function setLines(ink: Ink, box: Box, size: number, width: number): SetBox[] {
  const whole = setBox(ink, box, size);
  if (whole.width <= width) return [whole];
  const lines: Box[][] = [];
  let line: Box[] = [];
  const wide = (boxes: readonly Box[]): number => setBox(ink, row(boxes), size, lines.length > 0).width;
  const place = (term: readonly Box[], depth: number): void => {
    if (wide([...line, ...term]) <= width) {
      line.push(...term);
      return;
    }
    const opened = depth < 40 && wide(term) > width ? openWidest(ink, term, size) : undefined;
    if (opened) {
      for (const part of terms(opened)) place(part, depth + 1);
      return;
    }
    if (line.length > 0) lines.push(line);
    line = [...term];
  };
  for (const term of terms(flatRow(box))) place(term, 0);
  lines.push(line);
  return lines.map((boxes, i) => shrunk(ink, row(boxes), size, width, i > 0));
}

const row = (boxes: readonly Box[]): Box => ({ kind: 'row', boxes });

/** Cuts a flat row before each sign that stands between two terms, and after each comma. In a list of named arguments
 *  it cuts after the bracket that opens it and not between a name and its value. */
function terms(boxes: readonly Box[]): Box[][] {
  const found: Box[][] = [[]];
  const named = boxes.some(isComma) && boxes.some(isEquals);
  boxes.forEach((box, i) => {
    const last = boxes[i - 1];
    const sign = box.kind === 'operator' && !isComma(box) && !(named && isEquals(box));
    const between = sign && i > 0 && last?.kind !== 'operator' && !isOpening(last);
    const after = last !== undefined && (isComma(last) || (named && isOpening(last)));
    if ((between || after) && found.at(-1)!.length > 0) found.push([]);
    found.at(-1)!.push(box);
  });
  return found;
}

const isComma = (box: Box): boolean => box.kind === 'operator' && /^[,;]$/.test(box.text.trim());
const isEquals = (box: Box): boolean => box.kind === 'operator' && box.text.trim() === '=';
const isOpening = (box: Box | undefined): boolean => box?.kind === 'text' && (box.text === '(' || box.text === '|(');

/** The term with its widest box laid open by one level, or undefined when none can be. */
function openWidest(ink: Ink, term: readonly Box[], size: number): Box[] | undefined {
  const order = term
    .map((box, i) => ({ i, width: setBox(ink, box, size).width }))
    .sort((a, b) => b.width - a.width || a.i - b.i);
  for (const { i } of order) {
    const open = laidOpen(term[i]!);
    if (open) return [...term.slice(0, i), ...open, ...term.slice(i + 1)];
  }
  return undefined;
}

const paren = (text: '(' | ')'): Box => ({ kind: 'text', text });

function laidOpen(box: Box): readonly Box[] | undefined {
  switch (box.kind) {
    case 'row':
      return flatRow(box);
    case 'bracket':
      return box.shape === 'round' ? [paren('('), ...flatRow(box.body), paren(')')] : undefined;
    case 'fraction':
      return [...inParens(box.over), { kind: 'operator', text: '/' }, ...inParens(box.under)];
    case 'root':
      // √ of a long body is written with brackets instead of a bar.
      return flatRow(box.body).length > 1 ? [{ kind: 'text', text: '√' }, ...inParens(box.body)] : undefined;
    case 'script': {
      const base = laidOpen(box.base);
      if (!base) return undefined;
      const closed = base.at(-1);
      const wrapped = closed && isClosing(closed) ? base : [paren('('), ...base, paren(')')];
      return [...wrapped.slice(0, -1), { ...box, base: wrapped.at(-1)! }];
    }
    default:
      return undefined;
  }
}

const isClosing = (box: Box): boolean => box.kind === 'text' && box.text === ')';

function inParens(box: Box): readonly Box[] {
  const boxes = flatRow(box);
  return boxes.length === 1 && box.kind !== 'fraction' ? boxes : [paren('('), ...boxes, paren(')')];
}

function shrunk(ink: Ink, box: Box, size: number, width: number, continues: boolean): SetBox {
  const full = setBox(ink, box, size, continues);
  if (full.width <= width) return full;
  // Smallest sizes of scripts have a floor, so width is not quite in proportion: go down until it fits.
  for (let smaller = (size * width) / full.width; smaller > 1; smaller *= 0.96) {
    const set = setBox(ink, box, smaller, continues);
    if (set.width <= width) return set;
  }
  return asDrawing(ink, full, width);
}

/** A name of hundreds of letters: scaled as a drawing, the last resort. */
function asDrawing(ink: Ink, full: SetBox, width: number): SetBox {
  const scale = width / full.width;
  return {
    width,
    ascent: full.ascent * scale,
    descent: full.descent * scale,
    put(x, y) {
      ink.pdf.save();
      ink.pdf.translate(x, y).scale(scale);
      full.put(0, 0);
      ink.pdf.restore();
      ink.forget();
    },
  };
}
