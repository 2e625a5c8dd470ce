import { leastSquares } from '../tank/least-squares.ts';
import { lagBetween } from './lag-between.ts';

/** How fast a second clock runs away from the first, as a part: a second on it is 1 + `rate` seconds on the first's. */
export interface ClockRate {
  readonly rate: number;
  /** What its first reading then comes later by, s. */
  readonly late: number;
  readonly standardError: number;
  /** Stretches that told it. */
  readonly stretches: number;
}

/** A stretch, s: some twenty waves; and how far the clocks may lie apart in a stretch from what its neighbour says, s. */
const [shortest, reach] = [150, 1];
/** A stretch less alike than this, and fewer stretches than that, tell nothing. */
const [leastAlike, fewest] = [0.5, 5];
const mostStretches = 400;

/**
 * Runs-away of y's clock from x's, two records of one thing, each dt s apart; `late`: what y's first reading comes later by,
 * about. The lag of each stretch of y is followed from the likest one outward, and a straight line is laid through the lags by
 * least squares:  lag_k = c + rate · t_k.  A lag that is the same all along (a plate that follows late) moves c alone.
 * Null where fewer than five stretches are alike. Error: `standardError`, from how the lags lie about the line.
 */
export function clockRate(x: Float64Array, y: Float64Array, dt: number, late: number): ClockRate | null {
  const seconds = y.length * dt;
  const n = Math.round(Math.max(shortest, seconds / mostStretches) / dt);
  const count = Math.floor(y.length / n);
  const edge = Math.ceil((2 * reach) / dt) + 2;
  /** Lag of stretch k beyond `about` s, or null where x does not reach or the two are not alike. */
  const lagOf = (k: number, about: number): { readonly late: number; readonly alike: number } | null => {
    const from = k * n + Math.round(about / dt) - edge;
    if (from < 0 || from + n + 2 * edge > x.length) return null;
    const own = y.subarray(k * n, (k + 1) * n);
    const mean = own.reduce((sum, value) => sum + value, 0) / n;
    // nil about it: each lag then sums over all of the stretch
    const amid = new Float64Array(n + 2 * edge);
    own.forEach((value, i) => (amid[edge + i] = value - mean));
    const { late: lag, alike } = lagBetween(x.subarray(from, from + n + 2 * edge), amid, dt, 2 * reach);
    return alike < leastAlike ? null : { late: Math.round(about / dt) * dt - lag, alike };
  };
  const found = Array.from({ length: count }, (_, k) => lagOf(k, late));
  const best = found.reduce((top, one, k) => (one && one.alike > (found[top]?.alike ?? 0) ? k : top), 0);
  if (!found[best]) return null;
  const [t, lag]: [number[], number[]] = [[(best + 0.5) * n * dt], [found[best].late]];
  for (const way of [1, -1])
    for (let [k, about] = [best + way, found[best].late]; k >= 0 && k < count; k += way) {
      const own = lagOf(k, about);
      if (!own) continue;
      t.push((k + 0.5) * n * dt);
      lag.push(own.late);
      about = own.late;
    }
  if (t.length < fewest) return null;
  const middle = t.reduce((sum, one) => sum + one, 0) / t.length;
  const { theta, residual, inverse } = leastSquares([new Float64Array(t.length).fill(1), Float64Array.from(t, (one) => one - middle)], Float64Array.from(lag)); // prettier-ignore
  const variance = residual.reduce((sum, e) => sum + e * e, 0) / (t.length - 2);
  const [atMiddle, rate] = theta as unknown as readonly [number, number];
  return {
    rate,
    late: atMiddle - rate * middle,
    standardError: Math.sqrt(variance * inverse[3]!),
    stretches: t.length,
  };
}
