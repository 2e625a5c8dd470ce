/** Points of a curve for a picture. */
export interface Curve {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/**
 * A curve of n readings as at most 2 · `columns` points that look the same on paper: of each column of readings, in their
 * order, the lowest and the highest, so that no spike is lost. x: increasing; `from`, `to`: places, `to` exclusive.
 */
export function thinned(x: Float64Array, y: Float64Array, columns: number, from = 0, to = x.length): Curve {
  const n = to - from;
  if (n <= 2 * columns) return { x: [...x.subarray(from, to)], y: [...y.subarray(from, to)] };
  const kept: number[] = [];
  for (let c = 0; c < columns; c++) {
    const [first, past] = [from + Math.floor((c * n) / columns), from + Math.floor(((c + 1) * n) / columns)];
    let [low, high] = [first, first];
    for (let i = first; i < past; i++) {
      if (y[i]! < y[low]!) low = i;
      if (y[i]! > y[high]!) high = i;
    }
    if (low === high) kept.push(low);
    else kept.push(Math.min(low, high), Math.max(low, high));
  }
  return { x: kept.map((i) => x[i]!), y: kept.map((i) => y[i]!) };
}
