import type { Box } from '../../../core/derive/box.ts';
import type { EquationBlock } from '../../../core/note/note.ts';
import { lazily, type Desk } from './desk.ts';
import { house } from './house.ts';
import type { Piece } from './pages.ts';
import { setBox, type SetBox } from './set-box.ts';
import { setLines } from './set-lines.ts';
import { baselineOf, setText } from './set-text.ts';

const { maths, small } = house.type;
const indent = 14;
/** Left sides up to this width share one place of the equals sign in a run of equations. */
const commonLeft = 96;
const air = 5.5;
/** Goes on from the line above, under the formula and not under the equals sign. */
const hang = 12;

/**
 * A run of equations that follow one another: equals signs stand under one another through the run. Each is its
 * meaning in small type, then symbol = formula = numbers = result, on one line if that fits and on three if not.
 */
export function setEquations(desk: Desk, equations: readonly EquationBlock[]): Piece[] {
  const lefts = equations.map((equation) => setBox(desk.ink, equation.left, maths.size));
  const common = Math.max(0, ...lefts.map((left) => left.width).filter((width) => width <= commonLeft));
  return equations.flatMap((equation, i) => setEquation(desk, equation, lefts[i]!, common));
}

function setEquation(desk: Desk, equation: EquationBlock, left: SetBox, common: number): Piece[] {
  const { ink, column } = desk;
  const sides = [equation.formula, equation.substituted, equation.result].filter(
    (side): side is Box => side !== undefined,
  );
  const sign = setBox(ink, { kind: 'operator', text: '=' }, maths.size);
  const gap = 0.34 * maths.size;
  // A left side wider than the column is broken like any other line.
  const leftLines = setLines(ink, equation.left, maths.size, column.width - indent - hang);
  const own = leftLines.length > 1 || left.width > column.width * 0.45;
  const signAt = column.left + indent + (own ? hang : Math.max(left.width, common) + gap);
  const start = signAt + sign.width + gap;
  const room = column.right - start;

  interface Part {
    readonly set: SetBox;
    readonly x: number;
  }
  const lines: Part[][] = [];
  const joined: Box = {
    kind: 'row',
    boxes: sides.flatMap((side, i) => (i === 0 ? [side] : [{ kind: 'operator' as const, text: '=' }, side])),
  };
  const inOne = setBox(ink, joined, maths.size);
  const broken = inOne.width <= room ? [[inOne]] : sides.map((side) => setLines(ink, side, maths.size, room - hang));
  for (const side of broken)
    side.forEach((set, i) => lines.push(i === 0 ? [{ set: sign, x: signAt }, { set, x: start }] : [{ set, x: start + hang }])); // prettier-ignore
  if (own) lines.unshift(...leftLines.map((set) => [{ set, x: column.left + indent }]));
  else lines[0]?.unshift({ set: left, x: signAt - gap - left.width });

  const node = lazily(() => desk.under().branch('Formula', { alt: equation.plain }));
  return [
    ...meaningPieces(desk, equation),
    ...lines.map((parts, i): Piece => {
      const ascent = Math.max(0.72 * maths.size, ...parts.map((part) => part.set.ascent));
      const descent = Math.max(0.24 * maths.size, ...parts.map((part) => part.set.descent));
      return {
        height: ascent + descent,
        before: i === 0 ? 3 : air,
        keep: i < lines.length - 1,
        put(y) {
          ink.colour(house.ink);
          node().mark(() => parts.forEach((part) => part.set.put(part.x, y + ascent)));
        },
      };
    }),
  ];
}

/** The meaning at the left and, where the step has one, its source at the right margin. */
function meaningPieces(desk: Desk, { meaning, source }: EquationBlock): Piece[] {
  const { ink, column } = desk;
  const sourceLines = source ? setText(ink, source, 'text', small.size, column.width * 0.36) : [];
  const room = source ? column.width * 0.6 : column.width;
  const lines = meaning ? setText(ink, meaning, 'text', small.size, room) : [];
  const node = lazily(() => desk.under().branch('P'));
  const count = Math.max(lines.length, sourceLines.length, 0);
  if (count === 0) return [{ height: 0, before: 8, keep: true, put: () => undefined }];
  return Array.from({ length: count }, (_, i): Piece => ({
    height: small.leading,
    before: i === 0 ? 11 : 0,
    keep: true,
    put(y) {
      const baseline = baselineOf(y, small);
      ink.colour(house.quiet);
      node().mark(() => {
        if (lines[i]) ink.put(lines[i].word, column.left, baseline, small.size);
        const right = sourceLines[i];
        if (right) ink.put(right.word, column.right - right.width, baseline, small.size);
      });
    },
  }));
}
