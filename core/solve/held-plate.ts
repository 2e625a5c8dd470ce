import { boundedMemo } from './bounded-memo.ts';
import { plateAnswer, type PlateAnswer } from './plate-answer.ts';
import type { PlateShape } from './plate-shape.ts';
import { ritzShape } from './ritz-shape.ts';
import { sideRatio } from './side-ratio.ts';
import { requirePlate, type UniformPlate } from './uniform-plate.ts';

const memo = boundedMemo<PlateShape>(256);

/** A plate clamped along all four edges under uniform pressure: Ritz's method with polynomials that meet the edges, for
 *  any side ratio up to 50. Refuses sizes that are not positive.
 *  Error: 1e-6 on w, 1e-4 on edge moments (see `error` of the answer); thin plates only (w < t/2).
 *  Source: T&WK, Theory of Plates and Shells, 2nd ed., art. 44 (the problem and Table 35); the values come from Ritz's
 *  method, independent of that table. */
export function heldPlate(plate: UniformPlate): PlateAnswer {
  requirePlate(plate);
  const [ratio, nu] = [sideRatio(plate.b, plate.a), plate.nu];
  const edges = { x0: 'held', xa: 'held', y0: 'held', yb: 'held' } as const;
  const shape = memo(
    `${ratio} ${nu}`,
    () => ritzShape({ ratio, nu, edges, points: [] }, { centres: [], radius: 0 }).shape,
  );
  return plateAnswer(plate, shape);
}
