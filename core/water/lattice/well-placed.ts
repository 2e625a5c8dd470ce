import { outlineOf, type Plan } from './plan.ts';

/**
 * The number of cells along the longer side, within 9 % of the wanted one, for which the sides of all rectangles lie nearest to
 * where the lattice has its edges by itself: a quarter of a cell (less beside tubes, see `cover`) beyond a line.
 * What is left of them is of first order and differs from lattice to lattice, so that it would spoil an extrapolation.
 */
export function wellPlaced(plan: Plan, wanted: number): number {
  const { x0, x1, y0, y1 } = outlineOf(plan);
  const long = Math.max(x1 - x0, y1 - y0);
  const sides = (low: 'x0' | 'y0', high: 'x1' | 'y1', from: number, to: number) => ({
    from,
    to,
    lows: [...new Set(plan.rectangles.map((r) => r[low]))],
    highs: [...new Set(plan.rectangles.map((r) => r[high]))],
  });
  const both = [sides('x0', 'x1', x0, x1), sides('y0', 'y1', y0, y1)];
  let [best, least] = [wanted, Infinity];
  for (let n = Math.round(0.91 * wanted); n <= 1.09 * wanted; n++) {
    const h = long / (n + 0.5);
    const edge = 0.25 / (1 + plan.thickness / h);
    let sum = 0;
    let count = 0;
    for (const { from, to, lows, highs } of both) {
      const cells = Math.ceil((to - from) / h - 0.5 - 1e-9);
      const origin = (from + to - cells * h) / 2;
      const misfit = (at: number, sign: 1 | -1): number => {
        const place = (at - origin) / h - sign * edge;
        return (place - Math.round(place)) ** 2;
      };
      for (const at of lows) sum += misfit(at, -1);
      for (const at of highs) sum += misfit(at, 1);
      count += lows.length + highs.length;
    }
    // Equally good: the nearest to what is wanted.
    const mean = sum / count + 1e-4 * Math.abs(n / wanted - 1);
    if (mean < least) [best, least] = [n, mean];
  }
  return best;
}
