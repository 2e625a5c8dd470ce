import type { Ink } from './ink.ts';
import { house } from './house.ts';

/** A piece of the note that is not divided: its height in points, and how to put it with its top at y. */
export interface Piece {
  readonly height: number;
  /** Space above it; falls away at the head of a page. */
  readonly before?: number;
  /** Stays on one page with the piece after it. */
  readonly keep?: boolean;
  /** What is repeated above it when it opens a page: a table's head. */
  readonly repeat?: { readonly height: number; put(y: number): void };
  readonly newPage?: boolean;
  put(y: number): void;
}

/** The column of type on a page. */
export interface Column {
  readonly left: number;
  readonly right: number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  readonly height: number;
}

export function columnOf(paper: keyof typeof house.paper): Column {
  const { width, height } = house.paper[paper];
  const { left, right, top, bottom } = house.margin;
  return {
    left,
    right: width - right,
    width: width - left - right,
    top,
    bottom: height - bottom,
    height: height - top - bottom,
  };
}

/** Fills pages with pieces from the top; pieces that keep together move to the next page together. */
export function fillPages(ink: Ink, pieces: readonly Piece[], column: Column): void {
  let y = column.top;
  let fresh = true;
  const turn = (): void => {
    ink.pdf.addPage();
    y = column.top;
    fresh = true;
  };
  turn();
  // The first page has no head above it: its text may stand higher.
  y -= house.firstPageRise;
  for (let i = 0; i < pieces.length;) {
    let end = i;
    while (pieces[end]!.keep && end + 1 < pieces.length && !pieces[end + 1]!.newPage) end++;
    const group = pieces.slice(i, end + 1);
    if (group[0]!.newPage && !fresh) turn();
    if (!fresh && y + extent(group) > column.bottom + slack) turn();
    for (const piece of group) {
      // Only a group taller than a page comes to this; it is then divided where the page ends.
      if (!fresh && y + (piece.before ?? 0) + piece.height > column.bottom + slack) turn();
      if (!fresh) y += piece.before ?? 0;
      else if (piece.repeat) {
        piece.repeat.put(y);
        y += piece.repeat.height;
      }
      piece.put(y);
      y += piece.height;
      fresh = false;
    }
    i = end + 1;
  }
}

/** Sums of tenths of points must not turn a page. */
const slack = 0.01;

function extent(group: readonly Piece[]): number {
  return group.reduce((sum, piece) => sum + (piece.before ?? 0) + piece.height, 0);
}
