/** A curve through points (x rising) by cubics whose slopes are limited so that it never overshoots between them.
 *  x, y: equal lengths, at least 3. Gives the value at x inside the points; outside is the caller's to refuse.
 *  Source: F. N. Fritsch & J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300 (slopes by weighted harmonic means). */
export function monotoneCubic(x: readonly number[], y: readonly number[]): (at: number) => number {
  const last = x.length - 1;
  const h = x.slice(1).map((end, i) => end - x[i]!);
  const rise = h.map((step, i) => (y[i + 1]! - y[i]!) / step);
  const slope = x.map((_, i) => {
    if (i === 0) return endSlope(h[0]!, h[1]!, rise[0]!, rise[1]!);
    if (i === last) return endSlope(h[last - 1]!, h[last - 2]!, rise[last - 1]!, rise[last - 2]!);
    const [before, after] = [rise[i - 1]!, rise[i]!];
    if (before * after <= 0) return 0;
    const [w1, w2] = [2 * h[i]! + h[i - 1]!, h[i]! + 2 * h[i - 1]!];
    return (w1 + w2) / (w1 / before + w2 / after);
  });
  return (at) => {
    let i = x.findIndex((start, k) => k < last && at <= x[k + 1]! && at >= start);
    if (i < 0) i = at < x[0]! ? 0 : last - 1;
    const s = (at - x[i]!) / h[i]!;
    const [p, m] = [y[i]!, slope[i]! * h[i]!];
    const [q, n] = [y[i + 1]!, slope[i + 1]! * h[i]!];
    return p + s * (m + s * (3 * (q - p) - 2 * m - n + s * (2 * (p - q) + m + n)));
  };
}

/** Three-point slope at an end, kept to the direction of the first step. */
function endSlope(h0: number, h1: number, rise0: number, rise1: number): number {
  const slope = ((2 * h0 + h1) * rise0 - h0 * rise1) / (h0 + h1);
  return slope * rise0 <= 0 ? 0 : slope;
}
