import { drained } from '../../solve/drained.ts';
import { addPointForce, pointMotion } from '../../solve/structure/point-force.ts';
import { solveStructure } from '../../solve/structure/solve-structure.ts';
import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';
import { activeSupports } from './active-supports.ts';
import { levelled } from './levelled.ts';
import { riseOf, type PlatePoint } from './plate-point.ts';
import { partKinds, workOfParts, type PartKind } from './work-of-parts.ts';

export type SplitPart = PartKind | 'suspension';
export const splitParts: readonly SplitPart[] = [...partKinds, 'suspension'];

/** Rise of a point, m, and how much of it each kind of part gives: positive is up. `rest`: what they leave over. */
export interface DeflectionSplit {
  readonly point: PlatePoint;
  readonly rise: number;
  readonly parts: Readonly<Record<SplitPart, number>>;
  readonly rest: number;
}

/**
 * The rise of a point split by virtual work: real internal forces times those of a unit force up at the point, with the same
 * supports and the same closed points of contact,
 *    u_P = Σ ūᵀ K_e u - Σ V̄ s·u
 * where V̄ are the supports' forces under the unit force and s·u how far each gives along its own line (rigid: nothing). What
 * supports do not balance of the unit force its inertia does, and that works nothing on displacements from the mean plane.
 * Nothing is said about cause: parts act together, and a stiffer panel changes what the tubes take.
 */
export function deflectionSplit(plate: ReadyPlate, solved: SolvedLoading, point: PlatePoint): DeflectionSplit {
  const { structure } = plate;
  const { closed } = solved.answer;
  const { parts: supports, active } = activeSupports(plate, solved);
  const unit = new Float64Array(2 * structure.coordinates.length);
  addPointForce(unit, point.node, point.offset, [0, 0, 1]);
  // the unit force works on an elastic body: gaps and preload are loads, and belong to the real answer alone
  const elastic = { ...structure, contacts: structure.contacts.map((part) => ({ ...part, gap: 0 })) };
  const { u: v, forces } = drained(
    solveStructure({ ...plate, structure: elastic }, unit, { supports, present: active, oneWay: false }, closed, 'as begun'),
  ); // prettier-ignore
  const u = levelled(plate, solved);
  let suspension = 0;
  for (const i of active) {
    const { node, offset, direction } = supports[i]!;
    const [x, y, z] = pointMotion(u, node, offset);
    suspension -= forces[i]! * (x * direction[0] + y * direction[1] + z * direction[2]);
  }
  const parts = { ...workOfParts(plate, closed, v, u), suspension };
  const rise = riseOf(point, u);
  return { point, rise, parts, rest: splitParts.reduce((rest, part) => rest - parts[part], rise) };
}
