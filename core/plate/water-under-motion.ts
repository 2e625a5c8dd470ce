import { plateProblem, type PlateLattice } from '../water/lattice/plate-lattice.ts';
import type { Plan } from '../water/lattice/plan.ts';
import { solvePair } from '../water/lattice/solve-pair.ts';
import type { BeamPart, Structure } from '../solve/structure/structure.ts';

/** Velocity across the plate of each cell of a lattice from the freedoms of a structure, v = G u: row k takes freedoms
 *  `freedoms[p]` times `parts[p]`, p from `starts[k]` to `starts[k + 1]`. */
export interface CellMotion {
  readonly starts: Int32Array;
  readonly freedoms: Int32Array;
  readonly parts: Float64Array;
}

/**
 * The water's inertia against any motion u of the structure, added to f:   f += Gᵀ g S g G u,   S = ρ h² (K + D)⁻¹
 * with G from freedoms to cells, g the part of its motion that a cell takes (`plateProblem`), and `times` the whole. Potential
 * flow about the plan with its own gaps, solved anew for each u: symmetric up to the equations' tolerance, 1e-9.
 */
export function waterUnderMotion(
  { frame, lattice }: PlateLattice,
  plan: Plan,
  density: number,
  { starts, freedoms, parts }: CellMotion,
): (u: Float64Array, f: Float64Array, times?: number) => void {
  const { D, grip } = plateProblem(plan, frame);
  const still = new Float64Array(D.length);
  return (u, f, times = 1) => {
    const v = grip.map((part, k) => {
      let sum = 0;
      for (let p = starts[k]!; p < starts[k + 1]!; p++) sum += parts[p]! * u[freedoms[p]!]!;
      return part * sum;
    });
    const [{ mu }] = solvePair(lattice, [{ D, v }, { D, v: still }], { tolerance: 1e-9 }); // prettier-ignore
    for (let k = 0; k < mu.length; k++) {
      const force = times * density * frame.h ** 2 * grip[k]! * mu[k]!;
      for (let p = starts[k]!; p < starts[k + 1]!; p++) f[freedoms[p]!]! += parts[p]! * force;
    }
  };
}

/** A part of the structure from above, m, and what of its freedoms moves a point of it up. */
interface Patch {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly row: (x: number, y: number) => readonly (readonly [freedom: number, part: number])[];
}

/**
 * What moves each cell that the plan covers: the tube under its middle, else the panel, else the part that is nearest. Along a
 * tube and over a panel's rectangle motion is taken as straight between nodes, across a tube as rigid; a rigid motion of
 * the whole is a rigid motion of the cells. widths: of each tube in plan, m.
 */
export function cellMotion(
  structure: Structure,
  widths: readonly number[],
  { frame }: Pick<PlateLattice, 'frame'>,
  plan: Plan,
): CellMotion {
  const { grip } = plateProblem(plan, frame);
  const patches = [...structure.beams.map((beam) => beamPatch(structure, beam, widths[beam.tube]!)), ...shellPatches(structure)]; // prettier-ignore
  const of = new Int32Array(grip.length).fill(-1);
  patches.forEach(({ x0, x1, y0, y1 }, patch) => {
    const first = (at: number, from: number, cells: number): number => Math.max(0, Math.min(cells, Math.ceil((at - from) / frame.h - 0.5))); // prettier-ignore
    const [i0, i1] = [first(x0, frame.x, frame.nx), first(x1, frame.x, frame.nx)];
    const [j0, j1] = [first(y0, frame.y, frame.ny), first(y1, frame.y, frame.ny)];
    for (let j = j0; j < j1; j++)
      for (let i = i0; i < i1; i++) if (of[j * frame.nx + i]! < 0) of[j * frame.nx + i] = patch;
  });
  const starts = new Int32Array(grip.length + 1);
  const freedoms: number[] = [];
  const parts: number[] = [];
  for (let k = 0; k < grip.length; k++) {
    if (grip[k]! > 0) {
      const x = frame.x + ((k % frame.nx) + 0.5) * frame.h;
      const y = frame.y + (Math.floor(k / frame.nx) + 0.5) * frame.h;
      const patch = of[k]! >= 0 ? patches[of[k]!]! : nearest(patches, x, y);
      for (const [freedom, part] of patch.row(x, y)) {
        freedoms.push(freedom);
        parts.push(part);
      }
    }
    starts[k + 1] = freedoms.length;
  }
  return { starts, freedoms: Int32Array.from(freedoms), parts: Float64Array.from(parts) };
}

function beamPatch({ coordinates, tubes }: Structure, { tube, nodes, offsets }: BeamPart, width: number): Patch {
  const ends = nodes.map((node, end) => ({
    node,
    ...{ xn: coordinates[3 * node]!, yn: coordinates[3 * node + 1]! },
    ...{ x: coordinates[3 * node]! + offsets[end]![0], y: coordinates[3 * node + 1]! + offsets[end]![1] },
  }));
  const [low, high] = ends as [(typeof ends)[number], (typeof ends)[number]];
  const isAlongX = tubes[tube]!.set === 'main';
  return {
    x0: low.x - (isAlongX ? 0 : width / 2),
    x1: high.x + (isAlongX ? 0 : width / 2),
    y0: low.y - (isAlongX ? width / 2 : 0),
    y1: high.y + (isAlongX ? width / 2 : 0),
    row: (x, y) => {
      const along = isAlongX ? (x - low.x) / (high.x - low.x) : (y - low.y) / (high.y - low.y);
      return ends.flatMap((end, k) => {
        const N = k === 0 ? 1 - along : along;
        // the point of the end's own cross-section beside its axis
        const [rx, ry] = isAlongX ? [end.x - end.xn, y - end.yn] : [x - end.xn, end.y - end.yn];
        return [[6 * end.node + 2, N], [6 * end.node + 3, N * ry], [6 * end.node + 4, -N * rx]] as const; // prettier-ignore
      });
    },
  };
}

function shellPatches({ coordinates, shells }: Structure): Patch[] {
  return shells.map(({ nodes, a, b }) => {
    const [x0, y0] = [coordinates[3 * nodes[0]]!, coordinates[3 * nodes[0] + 1]!];
    return {
      ...{ x0, y0, x1: x0 + a, y1: y0 + b },
      row: (x, y) => {
        const [s, t] = [(x - x0) / a, (y - y0) / b];
        return [(1 - s) * (1 - t), s * (1 - t), s * t, (1 - s) * t].map((N, k) => [6 * nodes[k]! + 2, N] as const);
      },
    };
  });
}

function nearest(patches: readonly Patch[], x: number, y: number): Patch {
  const away = ({ x0, y0, x1, y1 }: Patch): number => Math.hypot(Math.max(x0 - x, 0, x - x1), Math.max(y0 - y, 0, y - y1)); // prettier-ignore
  let [best, least] = [patches[0]!, Infinity];
  for (const patch of patches) {
    const distance = away(patch);
    if (distance < least) [best, least] = [patch, distance];
  }
  return best;
}
