import { refusal } from '../refusal.ts';

/** A bar of stock and what is cut from it, m. */
export interface Bar {
  readonly cuts: readonly { readonly id: string; readonly length: number }[];
  readonly rest: number;
}

/**
 * Cuts lengths from bars of stock: the longest first, each from the first bar that still has it; `kerf` is lost at each cut.
 * First fit by falling length needs at most 11/9 of the fewest bars and two thirds of one more (Johnson 1973; Dósa 2007, from
 * memory). Refuses a length over the stock's: it would need a butt weld, which the checks do not know.
 */
export function cutLengths(
  pieces: readonly { readonly id: string; readonly length: number }[],
  stock: number,
  kerf: number,
): readonly Bar[] {
  const bars: { cuts: { id: string; length: number }[]; rest: number }[] = [];
  for (const piece of [...pieces].sort((a, b) => b.length - a.length)) {
    if (piece.length > stock)
      throw refusal({
        what: `Tube piece ${piece.id} of ${(1000 * piece.length).toFixed(0)} mm is longer than the stock of ${(1000 * stock).toFixed(0)} mm`,
        where: { option: '--tube-stock' },
        mend: 'Give a longer stock length; a joint in the tube would be a weld that no check here knows.',
      });
    let bar = bars.find(({ rest }) => rest >= piece.length);
    if (!bar) bars.push((bar = { cuts: [], rest: stock }));
    bar.cuts.push({ id: piece.id, length: piece.length });
    bar.rest = Math.max(0, bar.rest - piece.length - kerf);
  }
  return bars;
}
