import { refusal } from '../refusal.ts';

/** Takes one counted cycle: its range and mean in the series' unit, and how much of a cycle it is (1 or a half). */
export type Counted = (range: number, mean: number, count: number) => void;

/**
 * Rainflow counting of a series of N values. Reversals are put on a pile; as soon as the last range X is no smaller
 * than the one before it, Y, that one is closed: a whole cycle, or half of one if it begins at the start of the series.
 * What is left at the end counts as halves. One pass; each reversal is put on the pile and taken off once, so the time
 * grows with N. The pile holds the open ranges, which shrink from each to the next: some dozens in a record of the sea,
 * one more than the number of reversals in a vibration that dies away.
 * Refuses a value that is no finite number, with its place (1 is the first).
 * Source: ASTM E1049-85, 5.4.4.
 */
export function rainflow(series: Float64Array, count: Counted): void {
  const n = series.length;
  if (n === 0) return;
  let pile = new Float64Array(64);
  let open = 0;
  let last = series[0]!;
  requireFinite(last, 0);
  let i = 1;
  while (i < n && series[i] === last) i++;
  if (i === n) return; // never moves: nothing to count
  pile[open++] = last;
  for (let rising = series[i]! > last; ; rising = !rising) {
    // On to where the series turns. What is no number is neither above, below nor equal, and ends either run.
    let value = series[i]!;
    if (rising)
      while (value >= last) {
        last = value;
        if (++i === n) break;
        value = series[i]!;
      }
    else
      while (value <= last) {
        last = value;
        if (++i === n) break;
        value = series[i]!;
      }
    requireFinite(last, i - 1);
    if (value !== value) requireFinite(value, i);

    if (open === pile.length) pile = twiceAsLarge(pile);
    pile[open++] = last;
    while (open > 2) {
      const middle = pile[open - 2]!;
      const first = pile[open - 3]!;
      const Y = Math.abs(middle - first);
      if (Math.abs(last - middle) < Y) break;
      if (open === 3) {
        count(Y, (first + middle) / 2, 0.5);
        pile[0] = middle;
        pile[1] = last;
        open = 2;
      } else {
        count(Y, (first + middle) / 2, 1);
        pile[open - 3] = last;
        open -= 2;
      }
    }
    if (i === n) break;
  }
  for (let j = 1; j < open; j++) {
    const [start, end] = [pile[j - 1]!, pile[j]!];
    count(Math.abs(end - start), (start + end) / 2, 0.5);
  }
}

function twiceAsLarge(pile: Float64Array): Float64Array<ArrayBuffer> {
  const larger = new Float64Array(2 * pile.length);
  larger.set(pile);
  return larger;
}

function requireFinite(value: number, i: number): void {
  if (!Number.isFinite(value))
    throw refusal({
      what: `Value ${i + 1} of the series is ${value}, which is no finite number`,
      where: { value: i + 1 },
      mend: 'Write a number, or take the line out',
    });
}
