import type { Box } from '../../../core/derive/box.ts';
import type { Role } from './faces.ts';
import type { Ink } from './ink.ts';

/** A box with its size in points, ready to be put on the page with its left end and baseline at (x, y), y down. */
export interface SetBox {
  readonly width: number;
  readonly ascent: number;
  readonly descent: number;
  put(x: number, y: number): void;
}

/**
 * Sets an equation with the glyphs of the embedded faces. Signs that grow (roots, tall brackets, the brace of a
 * choice) are paths with their character unseen behind them, so that a copied formula keeps them.
 * Proportions follow common practice of mathematical typesetting, no source.
 */
export function setBox(ink: Ink, box: Box, size: number, continues = false): SetBox {
  return set({ ink, size, level: 0, continues }, box);
}

interface Setting {
  readonly ink: Ink;
  readonly size: number;
  /** How deep in scripts or fractions: spaces shrink with it. */
  readonly level: number;
  /** This row goes on from a line before it, so its first sign stands between two terms. */
  readonly continues: boolean;
}

/** Half height of a minus sign above the baseline, and the thickness of rules, in parts of the size. */
const axis = 0.29;
const ruleWidth = 0.048;

function set(at: Setting, box: Box): SetBox {
  switch (box.kind) {
    case 'symbol':
      return setLetters(at, box.text, 'symbol');
    case 'text':
      return setLetters(at, box.text, 'upright');
    case 'number':
      return setLetters(at, box.text.replace(/^-/, '−'), 'upright');
    case 'operator':
      return setLetters(at, operatorText(box.text), 'upright');
    case 'row':
      return setRow(at, flatRow(box));
    case 'fraction':
      return setFraction(at, box);
    case 'root':
      return setRoot(at, box.body);
    case 'script':
      return setScript(at, box);
    case 'bracket':
      return setBracket(at, box);
    case 'cases':
      return setCases(at, box);
  }
}

/** The boxes of a row, rows within it laid open. */
export function flatRow(box: Box): readonly Box[] {
  return box.kind === 'row' ? box.boxes.flatMap(flatRow) : [box];
}

/** What an operator prints as: a real minus, a raised dot. */
const operatorText = (text: string): string => {
  const bare = text.trim();
  return bare === '-' ? '−' : bare === '*' ? '·' : bare;
};

function setLetters({ ink, size }: Setting, text: string, role: Role): SetBox {
  const word = ink.word(text, role);
  const { above, below } = ink.reach(word);
  return {
    width: word.width * size,
    ascent: above * size,
    descent: below * size,
    put: (x, y) => ink.put(word, x, y, size),
  };
}

type Class =
  | 'relation'
  | 'binary'
  | 'product'
  | 'solidus'
  | 'comma'
  | 'unary'
  | 'word'
  | 'open'
  | 'close'
  | 'number'
  | 'letters'
  | 'tall'
  | 'bracket';

/** How a box behaves in a row. `unary` where a sign has no term before it. */
function classOf(box: Box, before: Class | undefined): Class {
  switch (box.kind) {
    case 'operator': {
      const text = operatorText(box.text);
      if (text === ',' || text === ';') return 'comma';
      if (/^[\p{L}]/u.test(text)) return 'word';
      if (/^[=<>≤≥≈≠≪≫≡→∝∈]/u.test(text)) return 'relation';
      const needsTerm =
        before === undefined ||
        ['relation', 'binary', 'product', 'solidus', 'comma', 'unary', 'open', 'word'].includes(before);
      if (needsTerm && /^[−+±∓∑∏√∂Δ¬]$/u.test(text)) return 'unary';
      if (text === '/') return 'solidus';
      return /^[·×*∙⋅]$/u.test(text) ? 'product' : 'binary';
    }
    case 'text':
      if (box.text === '(' || box.text === '|(') return 'open';
      if (box.text === ')') return 'close';
      if (/^[−+±√]$/u.test(box.text)) return 'unary';
      return /^\s*[\p{L}°%µ]/u.test(box.text) ? 'letters' : 'number';
    case 'number':
      return 'number';
    case 'fraction':
    case 'root':
    case 'cases':
      return 'tall';
    case 'bracket':
      return 'bracket';
    case 'script': {
      const base = classOf(box.base, before);
      return base === 'close'
        ? 'close'
        : base === 'letters'
          ? 'letters'
          : base === 'number'
            ? 'number'
            : base === 'bracket'
              ? 'bracket'
              : 'tall';
    }
    case 'symbol':
    case 'row':
      return 'tall';
  }
}

const around: Partial<Record<Class, number>> = { relation: 0.3, binary: 0.24, product: 0.16, solidus: 0.1, word: 0.3 };

/** Space between two neighbours in parts of the size. */
function gap(left: Class, right: Class): number {
  if (left === 'unary') return 0;
  if (left === 'comma') return 0.22;
  if (right === 'comma' || left === 'open' || right === 'close') return 0;
  const sign = Math.max(around[left] ?? 0, around[right] ?? 0);
  if (sign > 0) return sign;
  if (right === 'unary') return 0.1;
  if (right === 'letters') return 0.17;
  if (left === 'letters') return right === 'bracket' || right === 'open' ? 0.02 : 0.17;
  return right === 'bracket' || right === 'open' ? 0.06 : 0.1;
}

function setRow(at: Setting, boxes: readonly Box[]): SetBox {
  const parts: { set: SetBox; x: number }[] = [];
  let x = 0;
  let ascent = 0;
  let descent = 0;
  // In a script the spaces shrink with the letters and again by half.
  const em = at.size * (at.level >= 2 ? 0.5 : 1);
  let before: Class | undefined = at.continues ? 'tall' : undefined;
  boxes.forEach((box, i) => {
    const now = classOf(box, before);
    if (i > 0) {
      const tight = /^\s|^[°%′″]/u.test(startText(box)) || /\s$/u.test(startText(boxes[i - 1]!));
      if (!tight) x += gap(before!, now) * em;
    }
    const part = set({ ...at, continues: false }, box);
    parts.push({ set: part, x });
    x += part.width;
    ascent = Math.max(ascent, part.ascent);
    descent = Math.max(descent, part.descent);
    before = now;
  });
  return { width: x, ascent, descent, put: (left, y) => parts.forEach((part) => part.set.put(left + part.x, y)) };
}

const startText = (box: Box): string => (box.kind === 'text' || box.kind === 'number' ? box.text : '');

function setFraction(at: Setting, { over, under }: { over: Box; under: Box }): SetBox {
  const { size, ink } = at;
  const inner = {
    ...at,
    size: at.level === 0 ? size * 0.96 : Math.max(size * 0.84, 6),
    level: at.level + 1,
    continues: false,
  };
  const top = set(inner, over);
  const bottom = set(inner, under);
  const side = 0.12 * size;
  const air = 0.17 * size;
  const thick = ruleWidth * size;
  const bar = axis * size;
  const width = Math.max(top.width, bottom.width) + 2 * side + 0.16 * size;
  const topShift = bar + thick / 2 + air + top.descent;
  const bottomShift = -bar + thick / 2 + air + Math.max(bottom.ascent, 0.62 * inner.size);
  return {
    width,
    ascent: topShift + Math.max(top.ascent, 0.6 * inner.size),
    descent: bottomShift + bottom.descent,
    put(x, y) {
      top.put(x + (width - top.width) / 2, y - topShift);
      ink.line(x + side, y - bar, x + width - side, y - bar, thick);
      bottom.put(x + (width - bottom.width) / 2, y + bottomShift);
    },
  };
}

function setScript(at: Setting, { base, sub, sup }: { base: Box; sub?: Box; sup?: Box }): SetBox {
  // The square of F_t has its exponent above the index, not behind it.
  if (base.kind === 'script' && ((!sub && !base.sup) || (!sup && !base.sub)))
    return setScript(at, { ...base, sub: sub ?? base.sub, sup: sup ?? base.sup });
  const { size } = at;
  const inner = { ...at, size: Math.max(size * 0.72, 5.4), level: Math.max(2, at.level + 1), continues: false };
  const body = set({ ...at, continues: false }, base);
  const low = sub && set(inner, sub);
  const high = sup && set(inner, sup);
  const tall = base.kind !== 'symbol' && base.kind !== 'text' && base.kind !== 'number';
  const lean = base.kind === 'symbol' ? 0.06 * size : 0.02 * size;
  let up = high ? Math.max(0.38 * size, high.descent + 0.32 * size, tall ? body.ascent - 0.5 * inner.size : 0) : 0;
  let down = low ? Math.max(0.17 * size, low.ascent - 0.42 * size, tall ? body.descent + 0.05 * size : 0) : 0;
  if (low && high) {
    const clash = 0.1 * size - (up - high.descent + down - low.ascent);
    if (clash > 0) {
      up += clash / 2;
      down += clash / 2;
    }
  }
  const subLean = base.kind === 'symbol' ? 0.01 * size : 0.02 * size;
  return {
    width: body.width + Math.max(low ? low.width + subLean : 0, high ? high.width + lean : 0) + 0.05 * size,
    ascent: Math.max(body.ascent, high ? up + high.ascent : 0),
    descent: Math.max(body.descent, low ? down + low.descent : 0),
    put(x, y) {
      body.put(x, y);
      low?.put(x + body.width + subLean, y + down);
      high?.put(x + body.width + lean, y - up);
    },
  };
}

function setRoot(at: Setting, inside: Box): SetBox {
  const { ink, size } = at;
  const body = set({ ...at, continues: false }, inside);
  const thick = ruleWidth * size;
  const air = 0.14 * size;
  const ascent = Math.max(body.ascent, 0.6 * size) + air + thick;
  const descent = Math.max(body.descent, 0.04 * size) + 0.04 * size;
  const hook = 0.58 * size;
  const tail = 0.06 * size;
  return {
    width: hook + body.width + tail + 0.08 * size,
    ascent: ascent + 0.04 * size,
    descent,
    put(x, y) {
      const high = y - ascent + thick / 2;
      const low = y + descent;
      ink.unseen('√', x, y, size);
      const knee = Math.min(low - 0.42 * size, low - 0.4 * (low - high));
      ink.pdf.save();
      ink.pdf.lineJoin('miter').lineCap('butt');
      ink.pdf.moveTo(x + 0.05 * size, knee + 0.1 * size).lineTo(x + 0.15 * size, knee + 0.03 * size).lineWidth(thick).stroke('#000000'); // prettier-ignore
      ink.pdf.moveTo(x + 0.14 * size, knee + 0.03 * size).lineTo(x + 0.3 * size, low - 0.05 * size).lineWidth(thick * 2).stroke('#000000'); // prettier-ignore
      ink.pdf.moveTo(x + 0.29 * size, low).lineTo(x + hook - 0.06 * size, high).lineTo(x + hook + body.width + tail, high).lineWidth(thick).stroke('#000000'); // prettier-ignore
      ink.pdf.restore();
      ink.forget();
      body.put(x + hook, y);
    },
  };
}

function setBracket(at: Setting, { body: inside, shape }: { body: Box; shape: 'round' | 'bar' }): SetBox {
  const { ink, size } = at;
  const body = set({ ...at, continues: false }, inside);
  const half = Math.max(body.ascent - axis * size, body.descent + axis * size, 0.5 * size);
  const grown = half > 0.62 * size;
  const high = (axis + 0.04) * size + half;
  const deep = half + 0.04 * size - axis * size;
  if (shape === 'bar') {
    const side = 0.2 * size;
    return {
      width: body.width + 2 * side,
      ascent: high,
      descent: deep,
      put(x, y) {
        for (const at of [x + side / 2, x + 1.5 * side + body.width]) {
          ink.unseen('|', at, y, size);
          ink.line(at, y - high, at, y + deep, ruleWidth * size);
          if (at < x + side) body.put(x + side, y);
        }
      },
    };
  }
  if (!grown) {
    const open = setLetters(at, '(', 'upright');
    const close = setLetters(at, ')', 'upright');
    return {
      width: open.width + body.width + close.width,
      ascent: Math.max(open.ascent, body.ascent),
      descent: Math.max(open.descent, body.descent),
      put(x, y) {
        open.put(x, y);
        body.put(x + open.width, y);
        close.put(x + open.width + body.width, y);
      },
    };
  }
  const wide = Math.min(0.36 + 0.05 * (half / size), 0.6) * size;
  return {
    width: body.width + 2 * wide,
    ascent: high,
    descent: deep,
    put(x, y) {
      ink.unseen('(', x, y, size);
      arc(ink, x + wide * 0.9, x + wide * 0.22, y - high, y + deep, size);
      body.put(x + wide, y);
      const end = x + 2 * wide + body.width;
      ink.unseen(')', end - wide, y, size);
      arc(ink, end - wide * 0.9, end - wide * 0.22, y - high, y + deep, size);
    },
  };
}

/** One tall round bracket as a filled crescent between its tips (x) and its belly, thin at the tips. */
function arc(ink: Ink, tip: number, belly: number, top: number, bottom: number, size: number): void {
  const toward = Math.sign(tip - belly);
  const reach = (bottom - top) * 0.28;
  const outer = belly - (tip - belly) * 0.33;
  const inner = outer + toward * size * 0.1;
  const hair = toward * size * 0.035;
  ink.colour('#000000');
  ink.pdf
    .moveTo(tip, top)
    .bezierCurveTo(outer, top + reach, outer, bottom - reach, tip, bottom)
    .lineTo(tip + hair, bottom)
    .bezierCurveTo(inner, bottom - reach, inner, top + reach, tip + hair, top)
    .fill();
}

function setCases(at: Setting, { rows }: { rows: readonly { value: Box; when: Box }[] }): SetBox {
  const { ink, size } = at;
  const lines = rows.map(({ value, when }, i) => ({
    value: set({ ...at, continues: false }, value),
    when: set({ ...at, continues: false }, condition(when, i === rows.length - 1)),
  }));
  const valueWidth = Math.max(0, ...lines.map((line) => line.value.width));
  const whenWidth = Math.max(0, ...lines.map((line) => line.when.width));
  const brace = 0.7 * size;
  const between = 1.2 * size;
  const air = 0.34 * size;
  const heights = lines.map(({ value, when }) => ({
    above: Math.max(value.ascent, when.ascent, 0.7 * size),
    below: Math.max(value.descent, when.descent, 0.2 * size),
  }));
  const total =
    heights.reduce((sum, height) => sum + height.above + height.below, 0) + air * Math.max(0, rows.length - 1);
  const ascent = total / 2 + axis * size;
  const descent = total - ascent;
  return {
    width: brace + valueWidth + between + whenWidth + 0.1 * size,
    ascent,
    descent: Math.max(descent, 0),
    put(x, y) {
      ink.unseen('{', x, y, size);
      drawBrace(ink, x + 0.08 * size, y - ascent, y + descent, size);
      let baseline = y - ascent;
      lines.forEach((line, i) => {
        baseline += heights[i]!.above;
        line.value.put(x + brace, baseline);
        line.when.put(x + brace + valueWidth + between, baseline);
        baseline += heights[i]!.below + air;
      });
    },
  };
}

/** The condition with the word it needs; the last row stands for everything else. */
function condition(when: Box, last: boolean): Box {
  const boxes = flatRow(when);
  if (boxes.length === 0) return { kind: 'text', text: last ? 'otherwise' : '' };
  if (boxes[0]!.kind === 'text' && /^(if|for|when|otherwise|else)\b/.test(boxes[0]!.text.trim())) return when;
  return { kind: 'row', boxes: [{ kind: 'text', text: 'if ' }, ...boxes] };
}

function drawBrace(ink: Ink, x: number, top: number, bottom: number, size: number): void {
  const middle = (top + bottom) / 2;
  const wide = 0.36 * size;
  const spine = x + wide * 0.5;
  const bend = Math.min(0.4 * size, (bottom - top) / 4);
  ink.pdf
    .moveTo(x + wide, top)
    .bezierCurveTo(spine, top, spine, top + bend * 0.3, spine, top + bend)
    .lineTo(spine, middle - bend)
    .bezierCurveTo(spine, middle - bend * 0.3, spine, middle, x, middle)
    .bezierCurveTo(spine, middle, spine, middle + bend * 0.3, spine, middle + bend)
    .lineTo(spine, bottom - bend)
    .bezierCurveTo(spine, bottom - bend * 0.3, spine, bottom, x + wide, bottom)
    .lineWidth(ruleWidth * 1.3 * size)
    .stroke('#000000');
}
