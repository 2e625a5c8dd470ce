/**
 * Median of n numbers (of two middle ones, the smaller), n > 0: Hoare's selection, about 3n steps where sorting a million
 * readings takes most of the time of a small fit. The numbers come in another order back.
 * Source: Hoare, Algorithm 65: Find, Comm. ACM 4 (1961) 321 (from memory).
 */
export function median(values: Float64Array): number {
  const k = (values.length - 1) >> 1;
  let [low, high] = [0, values.length - 1];
  while (low < high) {
    const pivot = values[k]!;
    let [i, j] = [low, high];
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (pivot < values[j]!) j--;
      if (i > j) break;
      const own = values[i]!;
      values[i++] = values[j]!;
      values[j--] = own;
    }
    if (j < k) low = i;
    if (k < i) high = j;
  }
  return values[k]!;
}
