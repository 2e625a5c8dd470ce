import { refusal } from '../refusal.ts';

/** A rectangle to be cut so many times. m. */
export interface Piece {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly count: number;
}

export interface Laid {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly turned: boolean;
}

export interface Sheet {
  readonly pieces: readonly Laid[];
}

interface Stock {
  readonly width: number;
  readonly height: number;
}

/**
 * Lays rectangles on stock sheets by shelves: the tallest first, each on the first shelf (of the first sheet) that still has
 * room, turned by a quarter where only so it fits, else on a new shelf; `gap` between pieces and to the sheet's edge. Once
 * with every piece lying on its longer side, once upright: the fewer sheets are kept.
 * Simple and stated: first fit by falling height, at most 1.7 times the best height plus one shelf (Coffman, Garey, Johnson &
 * Tarjan 1980, from memory); a nesting program of the shop's may waste less. Refuses a piece larger than the sheet.
 */
export function nestPlates(pieces: readonly Piece[], stock: Stock, gap: number): readonly Sheet[] {
  const [lain, stood] = [laid(pieces, lying, stock, gap), laid(pieces, upright, stock, gap)];
  return stood.length < lain.length ? stood : lain;
}

function laid(pieces: readonly Piece[], first: (piece: Piece) => Way, stock: Stock, gap: number): readonly Sheet[] {
  const [W, H] = [stock.width - 2 * gap, stock.height - 2 * gap];
  const fits = ({ width, height }: Way): boolean => width <= W && height <= H;
  const all = pieces
    .flatMap((piece) => Array.from({ length: piece.count }, () => [first(piece), turned(first(piece))].filter(fits)))
    .sort(([a], [b]) => (b?.height ?? Infinity) - (a?.height ?? Infinity) || (b?.width ?? 0) - (a?.width ?? 0));
  const sheets: OpenSheet[] = [];
  for (const ways of all) {
    if (ways.length === 0) throw tooLarge(pieces, stock, fits);
    if (ways.some((way) => sheets.some((sheet) => place(sheet, way)))) continue;
    const sheet: OpenSheet = { shelves: [], pieces: [] };
    sheets.push(sheet);
    place(sheet, ways[0]!);
  }
  return sheets.map((sheet) => ({ pieces: sheet.pieces }));

  /** Puts a piece on the sheet, or tells that there is no room. */
  function place(sheet: OpenSheet, way: Way): boolean {
    for (const shelf of sheet.shelves)
      if (way.height <= shelf.height && shelf.used + way.width <= W) {
        sheet.pieces.push({ ...way, x: gap + shelf.used, y: gap + shelf.y });
        shelf.used += way.width + gap;
        return true;
      }
    const last = sheet.shelves.at(-1);
    const y = last ? last.y + last.height + gap : 0;
    if (y + way.height > H) return false;
    sheet.shelves.push({ y, height: way.height, used: way.width + gap });
    sheet.pieces.push({ ...way, x: gap, y: gap + y });
    return true;
  }
}

interface OpenSheet {
  readonly shelves: { readonly y: number; readonly height: number; used: number }[];
  readonly pieces: Laid[];
}

function tooLarge(pieces: readonly Piece[], stock: Stock, fits: (way: Way) => boolean) {
  const piece = pieces.find((one) => !fits(lying(one)) && !fits(upright(one)))!;
  return refusal({
    what: `Part ${piece.id} (${mm(piece.width)} × ${mm(piece.height)} mm) is larger than a stock sheet of ${mm(stock.width)} × ${mm(stock.height)} mm`,
    where: { option: '--stock' },
    mend: 'Give a larger stock sheet, or split the panel.',
  });
}

interface Way {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly turned: boolean;
}

/** On its longer side, so that shelves are low; and on its shorter. */
const lying = ({ id, width, height }: Piece): Way =>
  width >= height ? { id, width, height, turned: false } : { id, width: height, height: width, turned: true };
const upright = (piece: Piece): Way => turned(lying(piece));
const turned = (way: Way): Way => ({ id: way.id, width: way.height, height: way.width, turned: !way.turned });
const mm = (metres: number): string => (1000 * metres).toFixed(0);
