import { kirchhoffPlace, kirchhoffPoints } from './discrete-kirchhoff.ts';
import type { ShellShape } from './shell-shape.ts';

/** Bending stiffness of a flat element for a thickness of 1 m: (3n)², freedoms [w θx θy] of each node in local axes.
 *    K = ∫ κᵀ D κ dA,  D = E/(12 (1-ν²)) [1 ν 0; ν 1 0; 0 0 (1-ν)/2];  times t³ for a thickness t. */
export function plateBending(shape: ShellShape, { E, nu }: { E: number; nu: number }): Float64Array {
  const width = 3 * shape.count;
  const K = new Float64Array(width * width);
  const D = E / (12 * (1 - nu * nu));
  for (const point of kirchhoffPoints(shape.count)) {
    const { area, κ } = kirchhoffPlace(shape, point);
    for (let i = 0; i < width; i++) {
      const [a, b, c] = [κ[i]!, κ[width + i]!, κ[2 * width + i]!];
      const [mx, my, mxy] = [D * area * (a + nu * b), D * area * (b + nu * a), (D * area * (1 - nu) * c) / 2];
      for (let j = 0; j < width; j++) K[i * width + j]! += mx * κ[j]! + my * κ[width + j]! + mxy * κ[2 * width + j]!;
    }
  }
  return K;
}
