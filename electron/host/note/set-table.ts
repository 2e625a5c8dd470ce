import type { Cell, Table } from '../../../core/note/note.ts';
import { refusal } from '../../../core/refusal.ts';
import { lazily, type Desk } from './desk.ts';
import { setCaption } from './set-caption.ts';
import type { Role } from './faces.ts';
import { house } from './house.ts';
import type { Piece } from './pages.ts';
import type { SetBox } from './set-box.ts';
import { setLines } from './set-lines.ts';
import { baselineOf, setText, type TextLine } from './set-text.ts';
import type { Branch } from './tree.ts';

const { cell: type, head: headType } = house.type;
const padX = 5;
const padY = 2.4;
/** Room for the bar of a loud row, left of the first column's text. */
const barRoom = 4;

interface Place {
  readonly left: number;
  readonly right: number;
  readonly align: 'left' | 'right';
}
interface SetCell {
  readonly lines: readonly TextLine[];
  readonly box?: SetBox;
}

/**
 * A table with its caption above, its head repeated on every page, and rows that are not divided. (A row taller
 * than a page is the one exception: its lines go on on the next page.) Refuses a row with more cells than columns.
 */
export function setTable(desk: Desk, table: Table): Piece[] {
  const { ink, column } = desk;
  const places = columnPlaces(table, column.left, column.width);
  const node = lazily(() => desk.under().branch('Table'));
  const name = `Table ${desk.number('Table')}`;
  const pieces: Piece[] = setCaption(desk, name, table.caption, node).map((piece, i, all) => ({
    ...piece, height: piece.height + (i === all.length - 1 ? 3 : 0), before: i === 0 ? 13 : 0, keep: true,
  })); // prettier-ignore

  const heads = table.columns.map((head, i) =>
    setText(ink, head.title, 'semibold', headType.size, widthOf(places[i]!)),
  );
  const headHeight = Math.max(1, ...heads.map((lines) => lines.length)) * headType.leading + 2 * padY + 1;
  const tall = headHeight > column.height * 0.4;
  if (tall)
    pieces.push(...rowPieces(desk, node, places, heads.map((lines) => ({ lines })), { loud: false, last: false, type: 'TH' })); // prettier-ignore
  else
    pieces.push({
      height: headHeight,
      keep: true,
      put: (y) => putHead(desk, places, heads, y, headHeight, node().branch('TR')),
    });
  const continued = setText(ink, `${name}, continued`, 'italic', headType.size, column.width);
  const repeat: Piece['repeat'] = tall ? undefined : {
    height: headType.leading + 2 + headHeight,
    put(y) {
      ink.artifact('Pagination', () => {
        ink.colour(house.quiet);
        ink.put(continued[0]!.word, column.left, baselineOf(y, headType), headType.size);
      });
      putHead(desk, places, heads, y + headType.leading + 2, headHeight);
    },
  }; // prettier-ignore

  const loud = new Set(table.loud);
  const last = table.rows.length - 1;
  if (last < 0) pieces.push(...emptyRow(desk, node));
  table.rows.forEach((row, r) => {
    if (row.length > places.length)
      throw refusal({
        what: `Row ${r + 1} of the table “${table.caption}” has ${row.length} cells for ${places.length} columns`,
        where: { table: table.caption, row: r + 1 }, mend: 'Give the table a column for each cell',
      }); // prettier-ignore
    const cells = row.map((cell, i) => setCell(desk, cell, roleOf(cell, loud.has(r)), widthOf(places[i]!)));
    const set = rowPieces(desk, node, places, cells, { loud: loud.has(r), last: r === last, type: 'TD' }, repeat);
    // No row stands alone at the foot of the head or at the top of the last page.
    const keep = last > 0 && (r === 0 || r === last - 1) && set.length === 1;
    pieces.push(...(keep ? set.map((piece) => ({ ...piece, keep })) : set));
  });
  return pieces;
}

/** In a loud row names, numbers and verdicts are bold; sentences keep the text face, so that they can be read. */
const roleOf = (cell: Cell, loud: boolean): Role =>
  loud && (typeof cell !== 'string' || cell.length <= 40) ? 'bold' : 'text';

function columnPlaces(table: Table, left: number, width: number): Place[] {
  const shares = table.columns.map((column) => (column.width > 0 && Number.isFinite(column.width) ? column.width : 0));
  const sum = shares.reduce((total, share) => total + share, 0);
  let x = left;
  return table.columns.map((column, i) => {
    const wide = sum > 0 ? (width * shares[i]!) / sum : width / table.columns.length;
    // The first column's text starts clear of the bar, the last one's ends at the margin.
    const place: Place = {
      left: x + (i === 0 ? barRoom + 3 : padX),
      right: x + wide - padX,
      align: column.align ?? 'left',
    };
    x += wide;
    return place;
  });
}

const widthOf = (place: Place): number => Math.max(place.right - place.left, 4);

/** Head of the table; without a node of its own it is the repeated one, which a reader is not told again. */
function putHead(
  { ink, column }: Desk,
  places: readonly Place[],
  heads: readonly (readonly TextLine[])[],
  y: number,
  height: number,
  row?: Branch,
): void {
  ink.artifact('Layout', () => {
    ink.line(column.left, y, column.right, y, house.rule.firm);
    ink.line(column.left, y + height, column.right, y + height, house.rule.thin);
  });
  ink.colour(house.ink);
  const put = (i: number): void => {
    const place = places[i]!;
    // Heads of unequal length stand on one foot.
    const top = y + height - padY - heads[i]!.length * headType.leading;
    putCellLines(ink, heads[i]!, place, baselineOf(top, headType), headType);
  };
  if (row) {
    places.forEach((_, i) => row.branch('TH', { scope: 'Column' }).mark(() => put(i)));
    row.end();
  } else ink.artifact('Pagination', () => places.forEach((_, i) => put(i)));
}

function putCellLines(
  ink: Desk['ink'],
  lines: readonly TextLine[],
  place: Place,
  baseline: number,
  { size, leading }: typeof type | typeof headType,
): void {
  lines.forEach((line, i) => {
    if (line.word.runs.length > 0)
      ink.put(line.word, place.align === 'right' ? place.right - line.width : place.left, baseline + i * leading, size);
  });
}

function setCell({ ink }: Desk, cell: Cell, role: Role, width: number): SetCell {
  if (typeof cell === 'string') return { lines: setText(ink, cell, role, type.size, width) };
  const sets = setLines(ink, cell.box, type.size * 1.04, width);
  return { lines: [], box: sets.length === 1 ? sets[0]! : stacked(sets) };
}

/** A formula that needs several lines in its cell, as one box with the first line's baseline. */
function stacked(sets: readonly SetBox[]): SetBox {
  const air = 2.5;
  const baselines: number[] = [];
  let y = 0;
  sets.forEach((set, i) => {
    if (i > 0) y += sets[i - 1]!.descent + air + set.ascent;
    baselines.push(y);
  });
  return {
    width: Math.max(...sets.map((set) => set.width)),
    ascent: sets[0]!.ascent,
    descent: y + sets.at(-1)!.descent,
    put: (x, top) => sets.forEach((set, i) => set.put(x, top + baselines[i]!)),
  };
}

interface RowLook {
  readonly loud: boolean;
  readonly last: boolean;
  readonly type: 'TH' | 'TD';
}

function rowPieces(
  desk: Desk,
  node: () => Branch,
  places: readonly Place[],
  cells: readonly SetCell[],
  look: RowLook,
  repeat?: Piece['repeat'],
): Piece[] {
  const { ink, column } = desk;
  const most = Math.max(4, Math.floor((column.height - (repeat?.height ?? 0) - 4 * padY) / type.leading) - 2);
  const parts = Math.max(1, Math.ceil(Math.max(0, ...cells.map((cell) => cell.lines.length)) / most));
  const row = lazily(() => node().branch('TR'));
  const branches = cells.map(() =>
    lazily(() => row().branch(look.type, look.type === 'TH' ? { scope: 'Column' } : {})),
  );
  return Array.from({ length: parts }, (_, part) => {
    const lines = cells.map((cell) => cell.lines.slice(part * most, (part + 1) * most));
    const boxes = cells.map((cell) => (part === 0 ? cell.box : undefined));
    const rise = Math.max(type.leading / 2 + 0.33 * type.size, ...boxes.map((box) => (box ? box.ascent + 1 : 0)));
    const deep = Math.max(
      type.leading / 2 - 0.33 * type.size,
      ...lines.map((of) => (of.length > 0 ? (of.length - 0.5) * type.leading - 0.33 * type.size : 0)),
      ...boxes.map((box) => (box ? box.descent + 1 : 0)),
    );
    const height = rise + deep + 2 * padY;
    const end = part === parts - 1;
    return {
      height,
      ...(repeat && { repeat }),
      put(y: number) {
        ink.artifact('Layout', () => {
          const foot = y + height;
          if (end && look.last) ink.line(column.left, foot, column.right, foot, house.rule.firm);
          else if (end) ink.line(column.left, foot, column.right, foot, house.rule.hair, house.hair);
          if (look.loud) ink.line(column.left + 1.6, y + 1.2, column.left + 1.6, foot - 1.2, 3.2);
        });
        ink.colour(house.ink);
        cells.forEach((_, i) => {
          const place = places[i]!;
          const box = boxes[i];
          branches[i]!().mark(() => {
            if (box) box.put(place.align === 'right' ? place.right - box.width : place.left, y + padY + rise);
            putCellLines(ink, lines[i]!, place, y + padY + rise, type);
          });
        });
        if (end) row().end();
      },
    };
  });
}

function emptyRow(desk: Desk, node: () => Branch): Piece[] {
  const { ink, column } = desk;
  const height = type.leading + 2 * padY;
  return [
    {
      height,
      put(y) {
        ink.artifact('Layout', () => ink.line(column.left, y + height, column.right, y + height, house.rule.firm));
        ink.colour(house.quiet);
        node().branch('TR').branch('TD').mark(() => ink.text('No entries', 'italic', type.size, column.left + barRoom + 3, baselineOf(y + padY, type))); // prettier-ignore
      },
    },
  ];
}
