/** Pull of the line and what the power take-off took. SI. */
export interface TakeOff {
  readonly mean: number;
  readonly least: number;
  readonly largest: number;
  /** Of the time that the line hangs slack: under a fiftieth of its mean pull. */
  readonly slack: number;
  /** Mean and largest of pull times speed of the stroke, W; null where the stroke is not recorded. */
  readonly power: number | null;
  readonly peakPower: number | null;
}

/** Forces of a record, N, and with the stroke's speed, m/s, the power taken: positive while the stroke grows under the pull. */
export function takeOffForces(force: Float64Array, rate: Float64Array | null): TakeOff {
  const n = force.length;
  const mean = force.reduce((sum, F) => sum + F, 0) / n;
  let [least, largest, slack, energy, peak] = [Infinity, -Infinity, 0, 0, -Infinity];
  force.forEach((F, i) => {
    if (F < least) least = F;
    if (F > largest) largest = F;
    if (F < mean / 50) slack++;
    const P = rate ? F * rate[i]! : 0;
    energy += P;
    if (P > peak) peak = P;
  });
  return { ...{ mean, least, largest }, slack: slack / n, power: rate && energy / n, peakPower: rate && peak };
}
