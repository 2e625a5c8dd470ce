import type { Box } from '../derive/box.ts';

/** The check note as a tree. Knows nothing of pages; the writer in electron/host sets it. */
export interface Note {
  readonly title: string;
  /** Printed large on the first page and small in each page's head, for example NOT ISSUED. */
  readonly stamp: string;
  readonly paper: 'A4' | 'letter';
  readonly titleBlock: readonly (readonly [label: string, value: string])[];
  readonly documentHash: string;
  /** The version alone, for example 0.1.0; the writer puts the program's name before it. */
  readonly programVersion: string;
  /** ISO date of the revision; no clock is read. */
  readonly date: string;
  readonly language: string;
  readonly sections: readonly Section[];
  readonly attachments: readonly Attachment[];
}

export interface Section {
  /** Numbered by the writer: 1, 1.1, … The first page's summary may ask for none. */
  readonly title: string;
  readonly numbered?: boolean;
  readonly startsPage?: boolean;
  readonly blocks: readonly Block[];
  readonly sections?: readonly Section[];
}

export type Block =
  | {
      readonly kind: 'paragraph';
      readonly text: string;
      readonly tone?: 'plain' | 'small' | 'caution' | 'loud';
      /** Stands on one page with what follows. */
      readonly keep?: true;
    }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly tone?: 'plain' | 'caution' | 'loud' }
  | Table
  | EquationBlock
  | Figure
  /** Boxes with a label and a line to write on: sign-off. `values`: what is known already, by role and field. */
  | {
      readonly kind: 'signOff';
      readonly roles: readonly string[];
      readonly fields: readonly string[];
      readonly values?: readonly Readonly<Record<string, string>>[];
    };

export interface Table {
  readonly kind: 'table';
  readonly caption: string;
  readonly columns: readonly {
    readonly title: string;
    readonly align?: 'left' | 'right';
    /** share of the width */ readonly width: number;
  }[];
  readonly rows: readonly (readonly Cell[])[];
  /** Rows to set loud (a fail, an unjudged line), by index. */
  readonly loud?: readonly number[];
}
/** A cell is text, or a symbol set as mathematics. */
export type Cell = string | { readonly box: Box };

/** One step: symbol = formula = numbers = result, with its meaning and an optional source at the margin. */
export interface EquationBlock {
  readonly kind: 'equation';
  readonly meaning: string;
  readonly left: Box;
  readonly formula?: Box;
  readonly substituted?: Box;
  readonly result: Box;
  /** Document and clause, in short, for the margin. */
  readonly source?: string;
  /** The same in one line of text, for readers that take no pictures and for copying. */
  readonly plain: string;
}

/** A vector figure in its own coordinates (y up), scaled to the width by the writer. */
export interface Figure {
  readonly kind: 'figure';
  readonly caption: string;
  /** Spoken description. */
  readonly alt: string;
  readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  /** Share of the text width to fill, at most; height is limited to the page. */
  readonly widthShare?: number;
  readonly shapes: readonly Shape[];
}
export type Pen = 'outline' | 'thin' | 'hidden' | 'centre' | 'accent' | 'none';
export type Fill = 'none' | 'panel' | 'tube' | 'section' | 'paper' | 'accent';
export type Shape =
  | {
      readonly kind: 'path';
      readonly rings: readonly (readonly (readonly [number, number])[])[];
      readonly closed: boolean;
      readonly pen: Pen;
      readonly fill?: Fill;
    }
  | {
      readonly kind: 'circle';
      readonly at: readonly [number, number];
      readonly radius: number;
      readonly pen: Pen;
      readonly fill?: Fill;
    }
  /** Baseline starts, is centred or ends at `at`. Size in points on paper; `turn` in degrees, counter-clockwise. */
  | {
      readonly kind: 'label';
      readonly at: readonly [number, number];
      readonly text: string;
      readonly size: number;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly turn?: number;
    }
  /**
   * Dimension line with its ends and its text. It stands off the two points by `offset` (in points on paper), away
   * from the middle of the figure's box; a negative offset leads towards the middle.
   */
  | {
      readonly kind: 'dimension';
      readonly from: readonly [number, number];
      readonly to: readonly [number, number];
      readonly offset: number;
      readonly text: string;
    }
  | {
      readonly kind: 'arrow';
      readonly from: readonly [number, number];
      readonly to: readonly [number, number];
      readonly pen: Pen;
    };

export interface Attachment {
  readonly name: string;
  readonly description: string;
  readonly mime: string;
  readonly bytes: Uint8Array;
  readonly relationship: 'Source' | 'Data' | 'Supplement';
}
