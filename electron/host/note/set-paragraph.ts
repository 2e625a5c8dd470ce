import type { Block } from '../../../core/note/note.ts';
import { lazily, type Desk } from './desk.ts';
import type { Role } from './faces.ts';
import { house, type TypeSize } from './house.ts';
import type { Piece } from './pages.ts';
import { baselineOf, setBalanced } from './set-text.ts';

type Paragraph = Extract<Block, { kind: 'paragraph' }>;
type List = Extract<Block, { kind: 'list' }>;
type Tone = NonNullable<Paragraph['tone']>;

/** Lines of running text are kept to a length that the eye follows back. */
const measure = 432;
const looks: Readonly<
  Record<Tone, { role: Role; type: TypeSize; colour: string; bar: number; indent: number; barColour: string }>
> = {
  plain: { role: 'text', type: house.type.plain, colour: house.ink, bar: 0, indent: 0, barColour: house.ink },
  small: { role: 'text', type: house.type.small, colour: house.quiet, bar: 0, indent: 0, barColour: house.ink },
  caution: { role: 'text', type: house.type.plain, colour: house.ink, bar: 1.2, indent: 11, barColour: house.accent },
  loud: { role: 'semibold', type: house.type.plain, colour: house.ink, bar: 3.4, indent: 11, barColour: house.ink },
};

/** A paragraph, a piece a line; the first two and the last two lines stay together, and the last with what follows where it says so. */
export function setParagraph(desk: Desk, { text, tone = 'plain', keep }: Paragraph): Piece[] {
  const { ink, column } = desk;
  const look = looks[tone];
  const lines = setBalanced(ink, text, look.role, look.type.size, Math.min(measure, column.width) - look.indent, 0.88);
  const node = lazily(() => desk.under().branch('P'));
  return lines.map((line, i) => ({
    height: look.type.leading,
    before: i === 0 ? 7 : 0,
    keep: i < lines.length - 1 ? i === 0 || i === lines.length - 2 : keep === true,
    put(y) {
      bar(desk, look, y);
      ink.colour(look.colour);
      node().mark(() => ink.put(line.word, column.left + look.indent, baselineOf(y, look.type), look.type.size));
    },
  }));
}

/** A list; each item hangs from its dash. */
export function setList(desk: Desk, { items, tone = 'plain' }: List): Piece[] {
  const { ink, column } = desk;
  const look = looks[tone];
  const hang = 13;
  const left = column.left + look.indent;
  const list = lazily(() => desk.under().branch('L'));
  return items.flatMap((item, n) => {
    const lines = setBalanced(
      ink,
      item,
      look.role,
      look.type.size,
      Math.min(measure, column.width) - look.indent - hang,
      0.88,
    );
    const node = lazily(() => list().branch('LI'));
    const body = lazily(() => node().branch('LBody'));
    return lines.map((line, i) => ({
      height: look.type.leading,
      before: i > 0 ? 0 : n === 0 ? 7 : 3,
      keep: i < lines.length - 1 && (i === 0 || i === lines.length - 2),
      put(y: number) {
        bar(desk, look, i === 0 && n > 0 ? y - 3 : y, y + look.type.leading);
        ink.colour(look.colour);
        const baseline = baselineOf(y, look.type);
        if (i === 0)
          node()
            .branch('Lbl')
            .mark(() => ink.text('–', look.role, look.type.size, left, baseline));
        body().mark(() => ink.put(line.word, left + hang, baseline, look.type.size));
      },
    }));
  });
}

function bar({ ink, column }: Desk, look: (typeof looks)[Tone], y: number, end = y + look.type.leading): void {
  if (look.bar === 0) return;
  ink.artifact('Layout', () => {
    const x = column.left + look.bar / 2;
    ink.line(x, Math.max(y, column.top), x, end, look.bar, look.barColour);
  });
}
