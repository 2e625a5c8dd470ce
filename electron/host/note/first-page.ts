import type { Note } from '../../../core/note/note.ts';
import { lazily, type Desk } from './desk.ts';
import { house } from './house.ts';
import type { Piece } from './pages.ts';
import { programName } from './program-name.ts';
import { setParagraph } from './set-paragraph.ts';
import { baselineOf, setBalanced, setText, type TextLine } from './set-text.ts';

const { cell, furniture, title: titleType } = house.type;
const stampSize = 26;
/** Width kept for the labels of the title block, beside their values. */
const labelWidth = 66;

/** The head of the first page: the stamp in its frame, the title, the title block, and what could not be printed. */
export function firstPage(desk: Desk, note: Note, unprintable: readonly string[]): Piece[] {
  return [
    ...(note.stamp.trim() === '' ? [] : [stampPiece(desk, note.stamp)]),
    ...titlePieces(desk, note.title),
    ...blockPieces(desk, blockRows(note)),
    ...(unprintable.length === 0 ? [] : setParagraph(desk, { kind: 'paragraph', tone: 'caution', text: `These characters could not be printed: ${unprintable.join(', ')}. A box (□) stands in their place.` })), // prettier-ignore
  ];
}

/** Framed across the page: it cannot be overlooked, cannot cover a line of text, and prints in black. */
function stampPiece({ ink, column, under }: Desk, stamp: string): Piece {
  const height = stampSize * 1.5;
  const spaced = Math.min(
    stampSize,
    (stampSize * (column.width - 40)) / Math.max(1, ink.width(stamp, 'bold', stampSize)),
  );
  return {
    height: height + 12,
    keep: true,
    put(y) {
      ink.artifact('Layout', () => {
        ink.pdf
          .rect(column.left + 0.8, y + 0.8, column.width - 1.6, height - 1.6)
          .lineWidth(1.6)
          .stroke(house.ink);
        ink.pdf
          .rect(column.left + 4, y + 4, column.width - 8, height - 8)
          .lineWidth(0.4)
          .stroke(house.ink);
      });
      ink.colour(house.ink);
      const baseline = y + height / 2 + 0.33 * spaced;
      under().branch('P').mark(() => ink.text(stamp, 'bold', spaced, column.left + column.width / 2, baseline, 'middle')); // prettier-ignore
    },
  };
}

function titlePieces({ ink, column, under }: Desk, title: string): Piece[] {
  const lines = setBalanced(ink, title, 'bold', titleType.size, column.width, 0.6);
  const node = lazily(() => under().branch('H1'));
  return lines.map((line, i) => ({
    height: titleType.leading + (i === lines.length - 1 ? 10 : 0),
    keep: true,
    put(y) {
      ink.colour(house.ink);
      node().mark(() => ink.put(line.word, column.left, baselineOf(y, titleType), titleType.size));
    },
  }));
}

/** What the note's own title block does not say already: which document, which program, which day. */
function blockRows(note: Note): readonly (readonly [string, string])[] {
  const said = (value: string): boolean => note.titleBlock.some(([, text]) => text.includes(value));
  const own = [
    ['Date (UTC)', note.date],
    ['Program', programName(note)],
    ['Document hash', note.documentHash],
  ] as const;
  return [...note.titleBlock, ...own.filter(([, value]) => value !== '' && !said(value))];
}

interface BlockCell {
  readonly label: string;
  readonly lines: readonly TextLine[];
  readonly wide: boolean;
}

/** Label beside value, two to a row; what is long has a row of its own. */
function blockPieces({ ink, column, under }: Desk, rows: readonly (readonly [string, string])[]): Piece[] {
  const half = column.width / 2;
  const cells = rows.map(([label, value]): BlockCell => {
    const wide = ink.width(value, 'text', cell.size + 1) > half - labelWidth - 14 || value.includes('\n');
    return {
      label,
      wide,
      lines: setText(ink, value, 'text', cell.size + 1, (wide ? column.width : half) - labelWidth - 14),
    };
  });
  const paired: BlockCell[][] = [];
  for (const next of cells) {
    const last = paired.at(-1);
    if (last?.length === 1 && !last[0]!.wide && !next.wide) last.push(next);
    else paired.push([next]);
  }
  const table = lazily(() => under().branch('Table'));
  const leading = cell.leading + 1;
  return paired.map((inRow, r) => {
    const height = Math.max(...inRow.map(({ lines }) => lines.length)) * leading + 5;
    return {
      height,
      keep: r < paired.length - 1,
      put(y: number) {
        const foot = y + height;
        ink.artifact('Layout', () => {
          if (r === 0) ink.line(column.left, y, column.right, y, house.rule.firm);
          const last = r === paired.length - 1;
          ink.line(
            column.left,
            foot,
            column.right,
            foot,
            last ? house.rule.firm : house.rule.hair,
            last ? house.ink : house.hair,
          );
          if (inRow.length === 2)
            ink.line(column.left + half, y + 3, column.left + half, foot - 3, house.rule.hair, house.hair);
        });
        const row = table().branch('TR');
        inRow.forEach(({ label, lines }, i) => {
          const left = column.left + i * half + (i === 0 ? 0 : 9);
          ink.colour(house.quiet);
          row.branch('TH', { scope: 'Row' }).mark(() => ink.text(label, 'text', furniture.size, left, y + 11));
          ink.colour(house.ink);
          row
            .branch('TD')
            .mark(() =>
              lines.forEach((line, n) => ink.put(line.word, left + labelWidth, y + 11 + n * leading, cell.size + 1)),
            );
        });
      },
    };
  });
}
