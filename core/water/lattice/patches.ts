import type { Plan, Rectangle } from './plan.ts';

/** The plan cut along every side of every rectangle: which patch is solid, and which opening each other patch belongs to. */
export interface Patches {
  /** From minus to plus infinity. */
  readonly X: readonly number[];
  readonly Y: readonly number[];
  /** 1 where solid; patch (i, j), X[i] … X[i+1] by Y[j] … Y[j+1], stands at j · (X.length − 1) + i. */
  readonly solid: Uint8Array;
  /** Opening of each patch, −1 where solid; opening 0 is the water outside. */
  readonly opening: Int32Array;
  readonly openings: readonly Opening[];
}

/** A connected opening; its bounds and area are infinite for the water outside. */
export interface Opening extends Rectangle {
  readonly area: number;
}

/** Cuts a plan into patches and finds its openings (connected by sides). Holes are no part of it. */
export function patchesOf({ rectangles }: Pick<Plan, 'rectangles'>): Patches {
  const cuts = (values: readonly number[]): number[] =>
    [...new Set([-Infinity, ...values, Infinity])].sort((a, b) => a - b);
  const X = cuts(rectangles.flatMap(({ x0, x1 }) => [x0, x1]));
  const Y = cuts(rectangles.flatMap(({ y0, y1 }) => [y0, y1]));
  const [nx, ny] = [X.length - 1, Y.length - 1];
  const solid = new Uint8Array(nx * ny);
  for (const { x0, y0, x1, y1 } of rectangles)
    for (let j = Y.indexOf(y0); j < Y.indexOf(y1); j++) solid.fill(1, j * nx + X.indexOf(x0), j * nx + X.indexOf(x1));

  const opening = new Int32Array(nx * ny).fill(-1);
  const openings: Opening[] = [];
  const fill = (from: readonly number[]): void => {
    const own = openings.length;
    const stack = from.filter((k) => !solid[k] && opening[k]! < 0);
    for (const k of stack) opening[k] = own;
    let [x0, y0, x1, y1, area] = [Infinity, Infinity, -Infinity, -Infinity, 0];
    for (let k = stack.pop(); k !== undefined; k = stack.pop()) {
      const [i, j] = [k % nx, Math.floor(k / nx)];
      [x0, x1] = [Math.min(x0, X[i]!), Math.max(x1, X[i + 1]!)];
      [y0, y1] = [Math.min(y0, Y[j]!), Math.max(y1, Y[j + 1]!)];
      area += (X[i + 1]! - X[i]!) * (Y[j + 1]! - Y[j]!);
      for (const [di, dj] of [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
      ] as const) {
        // prettier-ignore
        const [a, b] = [i + di, j + dj];
        if (a < 0 || b < 0 || a >= nx || b >= ny || solid[b * nx + a] || opening[b * nx + a]! >= 0) continue;
        opening[b * nx + a] = own;
        stack.push(b * nx + a);
      }
    }
    openings.push({ x0, y0, x1, y1, area });
  };
  const rim = Array.from({ length: nx * ny }, (_, k) => k).filter((k) => {
    const [i, j] = [k % nx, Math.floor(k / nx)];
    return i === 0 || j === 0 || i === nx - 1 || j === ny - 1;
  });
  fill(rim);
  for (let k = 0; k < nx * ny; k++) if (!solid[k] && opening[k]! < 0) fill([k]);
  return { X, Y, solid, opening, openings };
}
