/** A number out of a test with its 95 % interval. SI. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Of the noise alone; the interval may also carry a stated bound. */
  readonly standardError: number;
}
