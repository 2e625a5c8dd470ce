/** One ratio of the benchmark. A goal of null: reported, nothing asked. */
export interface Measure {
  readonly name: string;
  readonly ratio: number;
  readonly goal: number | null;
  readonly met: boolean | null;
  /** What the numerator took, for reading; times of different machines are not compared. */
  readonly milliseconds?: number;
}
