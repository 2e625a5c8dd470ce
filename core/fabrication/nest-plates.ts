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

/**
 * Lays rectangles on stock sheets by shelves: the tallest first, each on the first shelf (of the first sheet) that still has
 * room, turned by a quarter where only so it fits, else on a new shelf; `gap` between pieces and to the sheet's edge.
 * Simple and stated: first fit by falling height, at most 1.7 times the best height plus one shelf (Coffman, Garey, Johnson &
 * Tarjan 1980, from memory); a nesting program of the shop's may waste less. Refuses a piece larger than the sheet.
 */
export function nestPlates(
  pieces: readonly Piece[],
  stock: { readonly width: number; readonly height: number },
  gap: number,
): readonly Sheet[] {
  const [W, H] = [stock.width - 2 * gap, stock.height - 2 * gap];
  const all = pieces
    .flatMap((piece) => Array.from({ length: piece.count }, () => lying(piece)))
    .sort((a, b) => b.height - a.height || b.width - a.width);
  const sheets: { shelves: { y: number; height: number; used: number }[]; pieces: Laid[] }[] = [];
  for (const piece of all) {
    const ways = [piece, upright(piece)].filter(({ width, height }) => width <= W && height <= H);
    if (ways.length === 0)
      throw refusal({
        what: `Part ${piece.id} (${mm(piece.width)} × ${mm(piece.height)} mm) is larger than a stock sheet of ${mm(stock.width)} × ${mm(stock.height)} mm`,
        where: { option: '--stock' },
        mend: 'Give a larger stock sheet, or split the panel.',
      });
    if (!ways.some((way) => sheets.some((sheet) => place(sheet, way)))) {
      const sheet = { shelves: [], pieces: [] };
      sheets.push(sheet);
      if (!ways.some((way) => place(sheet, way))) throw new Error('an empty sheet takes every piece that fits it');
    }
  }
  return sheets.map((sheet) => ({ pieces: sheet.pieces }));

  function place(sheet: (typeof sheets)[number], { id, width, height, turned }: Way): boolean {
    for (const shelf of sheet.shelves)
      if (height <= shelf.height && shelf.used + width <= W) {
        sheet.pieces.push({ id, x: gap + shelf.used, y: gap + shelf.y, width, height, turned });
        shelf.used += width + gap;
        return true;
      }
    const last = sheet.shelves.at(-1);
    const y = last ? last.y + last.height + gap : 0;
    if (y + height > H) return false;
    sheet.shelves.push({ y, height, used: width + gap });
    sheet.pieces.push({ id, x: gap, y: gap + y, width, height, turned });
    return true;
  }
}

interface Way {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly turned: boolean;
}

/** On its longer side, so that shelves are low. */
const lying = ({ id, width, height }: Piece): Way =>
  width >= height ? { id, width, height, turned: false } : { id, width: height, height: width, turned: true };
const upright = ({ id, width, height, turned }: Way): Way => ({ id, width: height, height: width, turned: !turned });
const mm = (metres: number): string => (1000 * metres).toFixed(0);
