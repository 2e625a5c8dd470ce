import type { TextContent } from 'pdfjs-dist/types/src/display/api.js';

/** What the window says to the thread that reads a PDF and draws its pages. Pages count from 1. */
export type ToPages =
  | { readonly kind: 'open'; readonly bytes: Uint8Array }
  /** Asks for a page: one after another, so that reading does not outrun what the window lays. */
  | { readonly kind: 'read'; readonly page: number }
  /** The canvas that a page is drawn on, handed over for good. */
  | { readonly kind: 'sheet'; readonly page: number; readonly canvas: OffscreenCanvas }
  /** Draws a page so many pixels wide; 0 puts its picture away. */
  | { readonly kind: 'draw'; readonly page: number; readonly width: number };

/** What that thread says. */
export type FromPages =
  | { readonly kind: 'count'; readonly pages: number }
  /** A page, its size in points and the text on it. */
  | { readonly kind: 'page'; readonly page: number; readonly size: PageSize; readonly text: TextContent }
  | { readonly kind: 'drawn'; readonly page: number; readonly width: number }
  | { readonly kind: 'failed'; readonly why: string };

export interface PageSize {
  readonly pageWidth: number;
  readonly pageHeight: number;
  readonly pageX: number;
  readonly pageY: number;
}
