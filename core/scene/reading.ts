/** Numbers laid over the plate, one quantity at a time. */
export interface Reading {
  readonly id: string;
  readonly title: string;
  /** Unit of print in mathjs words, "1" for a pure number; values are SI. */
  readonly unit: string;
  /** Which load case, in words. */
  readonly loadCase: string;
  /** By part id; null where it cannot be judged. Parts that are not listed have no such value. */
  readonly values: ReadonlyMap<string, number | null>;
  /** Parts whose checks fail or cannot be judged; the rest pass. */
  readonly verdicts: ReadonlyMap<string, 'fails' | 'cannot be judged'>;
  /** What gives the value, by part id: the check and its situation. */
  readonly reasons: ReadonlyMap<string, string>;
  /** The value that must not be exceeded, SI. */
  readonly limit?: number;
  /** What the reading does not show, a sentence. */
  readonly remark?: string;
}
