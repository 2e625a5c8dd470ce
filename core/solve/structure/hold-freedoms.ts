import type { Structure } from './structure.ts';

/**
 * Six freedoms that hold the structure against rigid motion and nothing more: 1 where held, 6N. All loads that it is
 * solved under balance themselves, so what is held carries nothing (and that is checked): a choice of where zero is.
 * Three nodes of tubes, far apart: all shifts of the first, those across and up of the second, that up of the third.
 */
export function holdFreedoms({ coordinates, tubes }: Structure): Uint8Array {
  const held = new Uint8Array(2 * coordinates.length);
  const nodes = tubes.flatMap((tube) => [...tube.nodes]);
  const x = (n: number): number => coordinates[3 * n]!;
  const y = (n: number): number => coordinates[3 * n + 1]!;
  const most = (of: (n: number) => number): number => nodes.reduce((best, n) => (of(n) > of(best) ? n : best));
  const a = most((n) => -x(n) - y(n));
  const b = most((n) => Math.abs(x(n) - x(a)));
  const area = (n: number): number => (x(b) - x(a)) * (y(n) - y(a)) - (y(b) - y(a)) * (x(n) - x(a));
  const c = most((n) => Math.abs(area(n)));
  for (const k of [0, 1, 2]) held[6 * a + k] = 1;
  for (const k of [1, 2]) held[6 * b + k] = 1;
  held[6 * c + 2] = 1;
  return held;
}
