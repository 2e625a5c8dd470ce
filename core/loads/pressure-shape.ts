import type { Rectangle } from '../geometry/geometry.ts';
import { refusal } from '../refusal.ts';

/** Middle over mean at which the rim carries nothing; beyond it the rim would pull. */
export const steepestShape = 2.25;

/** Pressure over the plate's outline with mean 1 and middle r:
 *    p = α + β (1 − ξ²)(1 − η²),  ξ, η from −1 to 1 over the outline;  mean α + 4β/9 = 1, middle α + β = r,
 *    so β = 9 (r − 1)/5 and α = 1 − 4β/9
 *  Gives its integral over a rectangle, exact, in m². Refuses r outside 1 to 2.25.
 *  A stated assumption, no solution of the flow; only its middle and mean are chosen. */
export function pressureShape(middleOverMean: number, outline: Rectangle): (over: Rectangle) => number {
  if (!(middleOverMean >= 1 && middleOverMean <= steepestShape))
    throw refusal({
      what: `a pressure with ${middleOverMean} times its mean in the middle would pull at the rim; the shape holds from 1 to ${steepestShape}`,
      where: { path: 'loads.pressureShape.middleOverMean' },
      mend: `Give middle over mean between 1 (even) and ${steepestShape} (nothing at the rim).`,
    });
  const beta = (9 * (middleOverMean - 1)) / 5;
  const alpha = 1 - (4 * beta) / 9;
  return ({ x0, x1, y0, y1 }) =>
    alpha * (x1 - x0) * (y1 - y0) +
    beta * bulge(x0, x1, outline.x0, outline.x1) * bulge(y0, y1, outline.y0, outline.y1);
}

/** ∫ (1 − ξ²) over [from, to], ξ from −1 at `low` to 1 at `high`. */
function bulge(from: number, to: number, low: number, high: number): number {
  const [middle, half] = [(low + high) / 2, (high - low) / 2];
  const at = (x: number): number => x - (x - middle) ** 3 / (3 * half ** 2);
  return at(to) - at(from);
}
