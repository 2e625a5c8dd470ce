import { kirchhoffPlace, kirchhoffPoints } from './discrete-kirchhoff.ts';
import { panelAxis, turned } from './in-panel-axes.ts';
import { globalFromLocal } from './shell-global.ts';
import { shellShape } from './shell-shape.ts';

/** Geometric stiffness (6n)² of a shell under membrane forces Nx Ny Nxy (N/m, tension positive, uniform over the element, in
 *  the panel's axes), global axes. Slopes are those of the element's bending, w,x = -βx:
 *    K = ∫ (Nx βxᵀβx + Ny βyᵀβy + Nxy (βxᵀβy + βyᵀβx)) dA;  motions in the plane are left out (plates, not struts). */
export function shellGeometric(
  xyz: Float64Array,
  N: ArrayLike<number>,
  direction: readonly [number, number, number] = [1, 0, 0],
): Float64Array {
  const shape = shellShape(xyz);
  const [c, s] = panelAxis(shape, direction);
  const [Nx, Ny, Nxy] = turned(N[0]!, N[1]!, N[2]!, c, -s);
  const width = 3 * shape.count;
  const K = new Float64Array(width * width);
  for (const point of kirchhoffPoints(shape.count)) {
    const { area, βx, βy } = kirchhoffPlace(shape, point);
    for (let i = 0; i < width; i++) {
      const [x, y] = [area * (Nx * βx[i]! + Nxy * βy[i]!), area * (Nxy * βx[i]! + Ny * βy[i]!)];
      for (let j = 0; j < width; j++) K[i * width + j]! += x * βx[j]! + y * βy[j]!;
    }
  }
  return globalFromLocal(shape, K, 'bending');
}
