import { factorise } from '../sparse/factorise.ts';
import { crossProduct, plus, type Vector } from '../vector.ts';
import { crossingCases, endLoads, type CrossingForces } from './crossing-cases.ts';
import { crossingWalls, type CrossingShape } from './crossing-walls.ts';
import { addEnd } from './end-forces.ts';
import { toeDistances, toeReadings, type ToeReading } from './toe-readings.ts';
import { wallMesh, type WallMesh } from './wall-mesh.ts';

/** What one place feels of 1 N or 1 N·m of each case: `size` numbers a case, in the order of `crossingCases`. */
export interface PlaceInfluence {
  readonly of: 'main' | 'cross' | 'weld';
  readonly size: 2 | 3;
  readonly values: Float64Array;
}

export interface CrossingInfluence {
  /** At the weld toes: stress across the weld, along it and shear, outer face, Pa/N or Pa/(N·m). */
  readonly toes: readonly PlaceInfluence[];
  /** At both ends of each flank weld of a stacked crossing: force per length upright and along the flank, 1/m or 1/m², by the force
   *  and moment that the flank hands over, spread evenly and linearly: the nominal stress of a weld, without its peak at the ends. */
  readonly welds: readonly PlaceInfluence[];
  readonly unknowns: number;
  /** What is left over of any case's loads, over their size: zero but for rounding. */
  readonly unbalanced: number;
}

/** Solves the walls of a crossing as shells, by itself under each of the cases, and reads the toes. Cells at the toes: one wall
 *  thickness (`coarse`) or 0.4 of it (`fine`, a second opinion: ten times the work). */
export function crossingInfluence(shape: CrossingShape, mesh: keyof typeof toeDistances = 'coarse'): CrossingInfluence {
  const walls = crossingWalls(shape, mesh === 'coarse' ? 1 : 2.5);
  const shells = wallMesh(walls.patches, shape);
  const { coordinates, elements, held } = shells;
  const factor = factorise({ coordinates, elements, held });
  const readings = toeReadings(shells, walls, toeDistances[mesh]);
  const toes = readings.map(({ of }) => ({ of, size: 3, values: new Float64Array(3 * crossingCases.length) }) as const);
  const flanks = shells.patches.filter(({ patch }) => patch.of === 'weld');
  const welds = flanks.flatMap(() => [1, -1]).map(() => ({ of: 'weld', size: 2, values: new Float64Array(2 * crossingCases.length) }) as const); // prettier-ignore
  let unbalanced = 0;
  crossingCases.forEach((name, k) => {
    const loads = endLoads(name, shape, walls);
    if (loads.length === 0) return;
    const f = new Float64Array(held.length);
    for (const load of loads) addEnd(shells, walls, load, f);
    unbalanced = Math.max(unbalanced, leftOver(coordinates, f));
    const u = factor.solve(f);
    readings.forEach((reading, i) => toes[i]!.values.set(toeStress(shells, reading, u), 3 * k));
    flanks.forEach((flank, i) => {
      const { mean, ends, along } = flankForces(shells, flank, u);
      welds[2 * i]!.values.set([mean + ends, along], 2 * k);
      welds[2 * i + 1]!.values.set([mean - ends, along], 2 * k);
    });
  });
  return { toes, welds, unknowns: held.length - 6, unbalanced };
}

/** The worst of places under forces that act together. */
export function worstOf(places: readonly PlaceInfluence[], forces: CrossingForces, size: (values: Float64Array) => number): number {
  const force = crossingCases.map((name) => forces[name]);
  let worst = 0;
  for (const { values, size: count } of places) {
    const sum = new Float64Array(count);
    for (let k = 0; k < force.length; k++) for (let r = 0; r < count; r++) sum[r]! += values[count * k + r]! * force[k]!;
    worst = Math.max(worst, size(sum));
  }
  return worst;
} // prettier-ignore

/** Stress across, along and in shear as one for the hot-spot curve: the larger of √(σ⊥² + 0.81 τ²) and 0.9 of either principal stress.
 *  Source: DNV-RP-C203 (2016), 4.3.4, from memory. */
export function effectiveStress([across, along, shear]: ArrayLike<number> & Iterable<number>): number {
  const [middle, radius] = [(across! + along!) / 2, Math.hypot((across! - along!) / 2, shear!)];
  return Math.max(Math.hypot(across!, 0.9 * shear!), 0.9 * (Math.abs(middle) + radius));
}

function toeStress(mesh: WallMesh, { terms, thickness: t, face, acrossFirst }: ToeReading, u: Float64Array): readonly number[] {
  const stress = [0, 0, 0];
  for (const [element, weight] of terms) {
    const forces = mesh.recover(element, u);
    for (let k = 0; k < 3; k++) stress[k]! += weight * (forces[k]! / t + (face * 6 * forces[k + 3]!) / t ** 2);
  }
  const [x, y, xy] = stress as [number, number, number];
  return acrossFirst ? [x, y, xy] : [y, x, xy];
} // prettier-ignore

/** Force per length that a flank weld hands over, upright: its mean, and how much more it is at one end as a line would have it; and
 *  along it. Of the forces on its upper nodes, which are in balance with all the rest. */
function flankForces({ elements, coordinates }: WallMesh, { patch, first }: WallMesh['patches'][number], u: Float64Array) {
  const lines = patch.lines[0][1];
  const length = lines.at(-1)! - lines[0]!;
  const top = patch.lines[1][1].at(-1)!;
  let [upright, moment, along] = [0, 0, 0];
  for (let k = 0; k + 1 < lines.length; k++) {
    const { nodes, stiffness } = elements[first + k]!;
    nodes.forEach((node, corner) => {
      if (coordinates[3 * node + 2]! < top - 1e-9) return;
      const force = (freedom: number): number => {
        let sum = 0;
        nodes.forEach((other, c) => {
          for (let j = 0; j < 6; j++) sum += stiffness[24 * (6 * corner + freedom) + 6 * c + j]! * u[6 * other + j]!;
        });
        return sum;
      };
      upright += force(2);
      moment += force(2) * coordinates[3 * node + 1]! + force(3);
      along += force(1);
    });
  }
  return { mean: upright / length, ends: (6 * moment) / length ** 2, along: along / length };
} // prettier-ignore

/** Resultant of loads over their size, forces and moments about the middle. */
function leftOver(coordinates: Float64Array, f: Float64Array): number {
  let [F, M]: [Vector, Vector] = [[0, 0, 0], [0, 0, 0]];
  let size = 0;
  for (let n = 0; n < coordinates.length / 3; n++) {
    const force: Vector = [f[6 * n]!, f[6 * n + 1]!, f[6 * n + 2]!];
    F = plus(F, force);
    M = plus(M, crossProduct([coordinates[3 * n]!, coordinates[3 * n + 1]!, coordinates[3 * n + 2]!], force));
    size += Math.hypot(...force);
  }
  return Math.max(Math.hypot(...F), Math.hypot(...M)) / size;
} // prettier-ignore
