import type { EdgeHold } from './beam-basis.ts';
import { boundedMemo } from './bounded-memo.ts';
import { plateAnswer, type PlateAnswer } from './plate-answer.ts';
import type { PlateShape } from './plate-shape.ts';
import { ritzShape } from './ritz-shape.ts';
import { sideRatio } from './side-ratio.ts';
import { requirePlate, type UniformPlate } from './uniform-plate.ts';

const memo = boundedMemo<PlateShape>(256);

/** A plate hinged or held along x = 0 and x = a and free along y = 0 and y = b, under uniform pressure (it spans a).
 *  Where a held edge meets a free one, thin plate theory makes the moment infinite; largest moment and stress are
 *  therefore read outside quarter discs of a twentieth of the shorter side round the corners, and keep growing, slowly,
 *  for a smaller disc. Error: `error` of the answer. Source: T&WK, Theory of Plates and Shells, 2nd ed., art. 48 (hinged
 *  and free edges); Ritz's method with polynomials. */
export function twoSidedPlate(plate: UniformPlate, ends: Exclude<EdgeHold, 'free'>): PlateAnswer {
  requirePlate(plate);
  const [ratio, nu] = [sideRatio(plate.b, plate.a), plate.nu];
  const edges = { x0: ends, xa: ends, y0: 'free', yb: 'free' } as const;
  const discs = {
    centres: [
      [0, 0],
      [1, 0],
      [0, ratio],
      [1, ratio],
    ] as const,
    radius: ends === 'held' ? 0.05 * Math.min(1, ratio) : 0,
  };
  const shape = memo(`${ratio} ${nu} ${ends}`, () => ritzShape({ ratio, nu, edges, points: [] }, discs).shape);
  return plateAnswer(plate, shape);
}
