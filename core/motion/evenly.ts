/** Readings at even times `from`, `from` + dt, …, straight between their neighbours; beyond the ends, as the end. time: increasing. */
export function evenly(time: Float64Array, values: Float64Array, from: number, dt: number, n: number): Float64Array {
  const last = time.length - 1;
  let next = 0;
  return Float64Array.from({ length: n }, (_, i) => {
    const t = from + i * dt;
    while (next < last && time[next]! < t) next++;
    if (next === 0) return values[0]!;
    const [a, b] = [time[next - 1]!, time[next]!];
    return values[next - 1]! + Math.min(1, (t - a) / (b - a)) * (values[next]! - values[next - 1]!);
  });
}

/** Places from … to (exclusive) of the longest run of readings with no step wider than `widest`. */
export function longestStretch(time: Float64Array, widest: number): readonly [number, number] {
  let [best, from]: [readonly [number, number], number] = [[0, 0], 0];
  for (let i = 1; i <= time.length; i++) {
    if (i < time.length && time[i]! - time[i - 1]! <= widest) continue;
    if (i - from > best[1] - best[0]) best = [from, i];
    from = i;
  }
  return best;
}
