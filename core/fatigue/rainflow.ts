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

  const reverse = (value: number): void => {
    if (open === pile.length) {
      const larger = new Float64Array(2 * open);
      larger.set(pile);
      pile = larger;
    }
    pile[open++] = value;
    while (open > 2) {
      const last = pile[open - 1]!;
      const middle = pile[open - 2]!;
      const first = pile[open - 3]!;
      const X = Math.abs(last - middle);
      const Y = Math.abs(middle - first);
      if (X < Y) return;
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
  };

  let last = series[0]!;
  requireFinite(last, 0);
  let direction = 0;
  for (let i = 1; i < n; i++) {
    const value = series[i]!;
    if (value > last) {
      if (direction !== 1) {
        requireFinite(last, i - 1);
        reverse(last);
        direction = 1;
      }
    } else if (value < last) {
      if (direction !== -1) {
        requireFinite(last, i - 1);
        reverse(last);
        direction = -1;
      }
    } else if (value !== last) requireFinite(value, i); // neither above, below nor equal: no number
    last = value;
  }
  requireFinite(last, n - 1);
  if (direction === 0) return; // never moves: nothing to count
  reverse(last);
  for (let i = 1; i < open; i++) {
    const [from, to] = [pile[i - 1]!, pile[i]!];
    count(Math.abs(to - from), (from + to) / 2, 0.5);
  }
}

function requireFinite(value: number, i: number): void {
  if (!Number.isFinite(value))
    throw refusal({
      what: `Value ${i + 1} of the series is ${value}, which is no finite number`,
      where: { value: i + 1 },
      mend: 'Write a number, or take the line out',
    });
}
