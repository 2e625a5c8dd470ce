import { addPointForce, addRigidMotion, pointMotion, resultantOf } from '../../solve/structure/point-force.ts';
import { addScaled, dot, leastResisted, overMass, rigidMass, timesMass } from '../../solve/structure/rigid-mass.ts';
import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';
import { activeSupports } from './active-supports.ts';

/**
 * Displacements, 6N, from where deflections are told: the supports, and for every motion that they leave free the mean of
 * the plate, weighted with its mass (all of it where nothing holds). With R the rigid motions, M the mass that they feel and
 * T the resultants of the supports' unit forces:
 *    u' = u - R q,   T·q = 0,   cᵀ Rᵀ m u' = 0 for every motion c with T·c = 0
 * so inertia does no work on u', and a unit load at a point reads u' there (see `deflectionSplit`).
 */
export function levelled(plate: ReadyPlate, solved: SolvedLoading): Float64Array {
  const { structure: { coordinates }, masses } = plate; // prettier-ignore
  const { parts, active } = activeSupports(plate, solved);
  const u = Float64Array.from(solved.answer.u);
  const M = rigidMass(coordinates, masses);
  /** Motions that supports resist, orthonormal in the mass. */
  const resisted: Float64Array[] = [];
  for (const i of active) {
    const { node, offset, direction } = parts[i]!;
    const load = new Float64Array(u.length);
    addPointForce(load, node, offset, direction);
    const t = resultantOf(coordinates, load);
    const whole = Math.sqrt(dot(t, overMass(M, t)));
    const d = overMass(M, t);
    for (const e of [...resisted, ...resisted]) addScaled(d, e, -dot(e, timesMass(M, d)));
    const size = Math.sqrt(Math.max(dot(d, timesMass(M, d)), 0));
    if (size > leastResisted * whole) resisted.push(d.map((value) => value / size));
  }
  const moved = new Float64Array(u.length);
  for (const { node, offset, mass } of masses) {
    const [x, y, z] = pointMotion(u, node, offset);
    addPointForce(moved, node, offset, [mass * x, mass * y, mass * z]);
  }
  const r = resultantOf(coordinates, moved);
  const mean = overMass(M, r);
  for (const d of resisted) addScaled(mean, d, -dot(d, r));
  addRigidMotion(coordinates, mean.map((value) => -value), u); // prettier-ignore
  return u;
}
