/** Lines of a panel's lattice: m, ascending. Every place of `exact` gets a line; places of `near` get one unless it would
 *  stand closer than `least` to another (a sliver helps nothing); gaps wider than `size` are parted into equal steps. */
export function latticeLines(
  exact: readonly number[],
  near: readonly number[],
  { size, least }: { readonly size: number; readonly least: number },
): Float64Array {
  const fixed = distinct(exact, touch);
  const [low, high] = [fixed[0]!, fixed.at(-1)!];
  const lines = [...fixed];
  for (const place of distinct(near, touch))
    if (place > low && place < high && lines.every((line) => Math.abs(line - place) >= least)) lines.push(place);
  lines.sort((a, b) => a - b);
  const out = [lines[0]!];
  for (let i = 1; i < lines.length; i++) {
    const [from, to] = [lines[i - 1]!, lines[i]!];
    const steps = Math.ceil((to - from) / size - touch);
    for (let k = 1; k < steps; k++) out.push(from + ((to - from) * k) / steps);
    out.push(to);
  }
  return Float64Array.from(out);
}

/** Places closer than this, m, are one: rounding, not geometry. */
export const touch = 1e-7;

/** Sorted, with places closer than `apart` to the one before left out. */
export function distinct(places: readonly number[], apart: number): number[] {
  const sorted = [...places].sort((a, b) => a - b);
  return sorted.filter((place, i) => i === 0 || place - sorted[i - 1]! > apart);
}

/** Index of a place among ascending lines. Refuses none: gives the nearest. */
export function nearestLine(lines: Float64Array, place: number): number {
  let [low, high] = [0, lines.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (lines[middle]! <= place) low = middle;
    else high = middle;
  }
  return place - lines[low]! <= lines[high]! - place ? low : high;
}
