import type { HollowSection } from '../../catalogue/rows.ts';
import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';
import { beamCourse } from '../beam-course.ts';
import { loadPieces } from '../load-pieces.ts';
import { levelled } from './levelled.ts';
import { loadingOf } from './loading-of.ts';

/** Forces and stresses along a tube, one entry a station, ready to plot. Two stations share a place where something jumps.
 *  at: m along the tube. N: tension, N. Vy, Vz: shear sideways and up, T: torque, about the tube's axis; My: bending in the
 *  upright plane, positive where the top is pulled; Mz: in plan. N·m. All are what the part beyond does to the part before;
 *  y runs to the left of the tube's direction seen from above. rise: of the axis from where deflections are told, m, up.
 *  Stresses, Pa, elastic: normal: largest of N/A ± My/Wy ± Mz/Wz with its sign; fibre: von Mises there, with torsion;
 *  axis: von Mises at the neutral axis, N/A with shear and torsion. */
export interface TubeForces {
  readonly id: string;
  readonly set: 'main' | 'cross';
  readonly at: Float64Array;
  readonly N: Float64Array;
  readonly Vy: Float64Array;
  readonly Vz: Float64Array;
  readonly T: Float64Array;
  readonly My: Float64Array;
  readonly Mz: Float64Array;
  readonly rise: Float64Array;
  readonly normal: Float64Array;
  readonly fibre: Float64Array;
  readonly axis: Float64Array;
  /** Largest by size, with its sign and place. */
  readonly largest: Readonly<Record<TubeQuantity, { readonly value: number; readonly at: number }>>;
}

export const tubeQuantities = ['N', 'Vy', 'Vz', 'T', 'My', 'Mz', 'rise', 'normal', 'fibre', 'axis'] as const;
export type TubeQuantity = (typeof tubeQuantities)[number];

/** Forces along every tube, in the structure's order. Between nodes they follow the load; at nodes they jump by what panels,
 *  supports and lumped inertia bring. */
export function tubeForces(plate: ReadyPlate, solved: SolvedLoading): TubeForces[] {
  const { structure, beams, model } = plate;
  const u = levelled(plate, solved);
  const { onBeams } = loadPieces(structure, model.loads.plate, loadingOf(solved));
  return structure.tubes.map(({ id, set, beams: [first, last] }): TubeForces => {
    const { section } = model.tubes.get(id)!;
    const stations = structure.beams.slice(first, last).flatMap(({ nodes: [a, b], from }, k) => {
      const own = Float64Array.of(...u.subarray(6 * a, 6 * a + 6), ...u.subarray(6 * b, 6 * b + 6));
      return beamCourse(beams[first + k]!, own, onBeams[first + k]!).map((state) => ({
        at: from + state.s,
        ...state,
        ...sectionStress(section, state),
      }));
    });
    const column = (name: TubeQuantity | 'at'): Float64Array => Float64Array.from(stations, (station) => station[name]);
    const columns = Object.fromEntries(tubeQuantities.map((name) => [name, column(name)])) as Record<TubeQuantity, Float64Array>; // prettier-ignore
    const at = column('at');
    const largest = Object.fromEntries(
      tubeQuantities.map((name) => {
        const values = columns[name];
        const most = values.reduce((best, value, i) => (Math.abs(value) > Math.abs(values[best]!) ? i : best), 0);
        return [name, { value: values[most] ?? 0, at: at[most] ?? 0 }];
      }),
    ) as TubeForces['largest'];
    return { id, set, at, ...columns, largest };
  });
}

/**
 * Elastic stresses of a hollow section, Pa. Far fibre: N/A ± My/Wy ± Mz/Wz (round: one moment, √(My² + Mz²)); torsion T/Wt
 * all round. At the neutral axis of each shear: V S/(I 2t) with the half section's first moment S = Wpl/2, the shears of
 * both planes added as if they met in one place (on the safe side), with N/A.
 * Source: EN 1993-1-1:2005, 6.2.1(5) and 6.2.6(4), from memory; torsion of closed sections after EN 10210-2, annex B.
 */
export function sectionStress(
  { shape, area, elasticY, elasticZ, plasticY, plasticZ, inertiaY, inertiaZ, wall, torsionModulus }: HollowSection,
  { N, Vy, Vz, T, My, Mz }: Readonly<Record<'N' | 'Vy' | 'Vz' | 'T' | 'My' | 'Mz', number>>,
): { readonly normal: number; readonly fibre: number; readonly axis: number } {
  const direct = N / area;
  const bent = shape === 'round' ? Math.hypot(My, Mz) / elasticY : Math.abs(My) / elasticY + Math.abs(Mz) / elasticZ;
  const normal = direct < 0 ? direct - bent : direct + bent;
  const torsion = Math.abs(T) / torsionModulus;
  const shear = (Math.abs(Vz) * plasticY) / (4 * inertiaY * wall) + (Math.abs(Vy) * plasticZ) / (4 * inertiaZ * wall);
  const vonMises = (σ: number, τ: number): number => Math.sqrt(σ * σ + 3 * τ * τ);
  return { normal, fibre: vonMises(normal, torsion), axis: vonMises(direct, shear + torsion) };
}
