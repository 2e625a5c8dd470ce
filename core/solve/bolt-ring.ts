import { refusal } from '../refusal.ts';

/** Bolts on a rectangle inset from the edges of a plate a × b: nx evenly along each side that runs along x, corners
 *  included, and ny along each side that runs along y, corners included too. Gives [x, y] in m, 2 nx + 2 ny - 4 of them.
 *  Refuses fewer than two a side, fractions, and insets that reach the middle. */
export function boltRing(
  plate: { readonly a: number; readonly b: number },
  ring: { readonly nx: number; readonly ny: number; readonly insetX: number; readonly insetY: number },
): (readonly [number, number])[] {
  const { a, b } = plate;
  const { nx, ny, insetX, insetY } = ring;
  for (const [field, count] of [
    ['nx', nx],
    ['ny', ny],
  ] as const)
    if (!Number.isInteger(count) || count < 2)
      throw refusal({
        what: `${field} must be a whole number of at least 2, it is ${count}`,
        where: { field },
        mend: 'Count the bolts along one side, corners included',
      });
  for (const [field, inset, side] of [
    ['insetX', insetX, a],
    ['insetY', insetY, b],
  ] as const)
    if (!(inset >= 0 && inset < side / 2))
      throw refusal({
        what: `${field} must be from 0 to below half the side (${side / 2} m), it is ${inset} m`,
        where: { field },
        mend: 'Give the distance of the bolts from the edge',
      });
  const x = (i: number): number => insetX + ((a - 2 * insetX) * i) / (nx - 1);
  const y = (j: number): number => insetY + ((b - 2 * insetY) * j) / (ny - 1);
  return [
    ...Array.from({ length: nx }, (_, i) => [x(i), insetY] as const),
    ...Array.from({ length: nx }, (_, i) => [x(i), b - insetY] as const),
    ...Array.from({ length: ny - 2 }, (_, j) => [insetX, y(j + 1)] as const),
    ...Array.from({ length: ny - 2 }, (_, j) => [a - insetX, y(j + 1)] as const),
  ];
}
