/** A coefficient with what it may be. */
export interface Spread {
  readonly low: number;
  readonly best: number;
  readonly high: number;
}
