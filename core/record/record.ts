/** One column of a record, in SI. */
export interface Channel {
  readonly name: string;
  /** The unit as its header gives it. */
  readonly typedUnit: string;
  readonly values: Float64Array;
}

/** A row that was kept out, and why. `line` counts from 1 in the file. */
export interface BadRow {
  readonly line: number;
  readonly why: string;
}

/** A stretch without readings, s from the first reading. */
export interface Gap {
  readonly from: number;
  readonly to: number;
}

/** What a file of readings says: time in s from the first reading, increasing, and channels of the same length. */
export interface Recording {
  readonly time: Float64Array;
  /** Date and time of the first reading, s since 1970; null where the file tells no date. */
  readonly begins: number | null;
  readonly channels: readonly Channel[];
  readonly bad: readonly BadRow[];
  readonly gaps: readonly Gap[];
  /** How the file was understood, in words: separator, decimal sign, header, form of time. */
  readonly readAs: readonly string[];
}
