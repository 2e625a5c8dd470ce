import type { Point, Rectangle } from './geometry.ts';

/** Contour of a rectangle with a square notch cut from each corner, counter-clockwise from the low corner. m. */
export function contourOf({ x0, y0, x1, y1 }: Rectangle, notch: number): Point[] {
  const s = notch;
  if (s === 0)
    return [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
    ];
  return [
    [x0, y0 + s],
    [x0 + s, y0 + s],
    [x0 + s, y0],
    [x1 - s, y0],
    [x1 - s, y0 + s],
    [x1, y0 + s],
    [x1, y1 - s],
    [x1 - s, y1 - s],
    [x1 - s, y1],
    [x0 + s, y1],
    [x0 + s, y1 - s],
    [x0, y1 - s],
  ];
}
