/** Where a picture of an option stands in the plot: at its point, or moved off it so that none covers another. */
export interface PlotPlace {
  readonly x: number;
  readonly y: number;
}

/**
 * Places for squares of side `size` near their points inside a frame, no two overlapping where there is room: each
 * takes the nearest free place on rings around its point, points in their order.
 */
export function plotPlaces(
  points: readonly PlotPlace[],
  size: number,
  frame: { readonly x0: number; readonly x1: number; readonly y0: number; readonly y1: number },
): readonly PlotPlace[] {
  const taken: PlotPlace[] = [];
  const isFree = ({ x, y }: PlotPlace): boolean =>
    x >= frame.x0 &&
    x <= frame.x1 &&
    y >= frame.y0 &&
    y <= frame.y1 &&
    taken.every((other) => Math.abs(other.x - x) >= size || Math.abs(other.y - y) >= size);
  for (const point of points) {
    const tries = [0, 0.5, 1, 1.5, 2, 2.5, 3, 4].flatMap((ring) =>
      Array.from({ length: ring === 0 ? 1 : 16 }, (_, n) => {
        const angle = (n * Math.PI) / 8;
        return { x: point.x + ring * size * Math.cos(angle), y: point.y - ring * size * Math.sin(angle) };
      }),
    );
    taken.push(tries.find(isFree) ?? point);
  }
  return taken;
}
