/**
 * Places from `from` to `to`, both among them: `even` cells of `first` to begin with (as many of `last` to end with, where that
 * is given), cells in between growing by half. With `even` 0 all cells are alike and no wider than `first`. m.
 */
export function spreadLines(from: number, to: number, first: number, last: number | null, even: number): number[] {
  const [length, way] = [Math.abs(to - from), Math.sign(to - from)];
  const uniform = even === 0 || length <= 1.5 * even * (first + (last ?? 0));
  if (uniform) {
    const cells = Math.max(even === 0 ? 1 : 2 * even, Math.ceil(length / first - 1e-9));
    const count = even === 0 ? cells : Math.min(cells, Math.max(2, Math.ceil(length / Math.min(first, last ?? first))));
    return Array.from({ length: count + 1 }, (_, i) => (i === count ? to : from + (way * length * i) / count));
  }
  const low = [0];
  const high = [length];
  const grown = (size: number, count: number): number => (count <= even ? size : size * growth ** (count - even));
  for (;;) {
    const gap = high[0]! - low.at(-1)!;
    const up = grown(first, low.length);
    const down = last === null ? Infinity : grown(last, high.length);
    if (gap <= 1.6 * Math.min(up, down)) break;
    if (up <= down) low.push(low.at(-1)! + up);
    else high.unshift(high[0]! - down);
  }
  return [...low, ...high].map((s, i, all) => (i === all.length - 1 ? to : from + way * s));
}

const growth = 1.5;
