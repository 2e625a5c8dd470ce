import { shellForces, shellRecovery, type ShellRecovery } from '../elements/shell-recovery.ts';
import { shellStiffness, shellUnits } from '../elements/shell-stiffness.ts';
import type { ElementStiffness } from '../structure/element-stiffness.ts';
import { nano } from '../structure/per-shell.ts';
import type { Vector } from '../vector.ts';
import type { CrossingShape, WallPatch } from './crossing-walls.ts';

/** Walls as flat shells. Elements of a patch are numbered along its first axis first, from `first` on. */
export interface WallMesh {
  readonly coordinates: Float64Array;
  readonly elements: readonly ElementStiffness[];
  /** By freedom: 1 for six that only say where zero is. Loads balance themselves, so these carry nothing. */
  readonly held: Uint8Array;
  readonly patches: readonly { readonly patch: WallPatch; readonly first: number }[];
  /** Forces per width in the middle of an element, as of `shellForces`, x along its patch's first axis. */
  readonly recover: (element: number, u: Float64Array) => Float64Array;
  /** Node at a place, or -1. */
  readonly nodeAt: (place: Vector) => number;
}

interface Cell {
  readonly stiffness: Float64Array;
  readonly recovery: ShellRecovery;
}

/** Nodes where the patches' lines cross; those of patches that meet are shared. Equal cells share stiffness and recovery. */
export function wallMesh(patches: readonly WallPatch[], material: Pick<CrossingShape, 'E' | 'nu'>): WallMesh {
  const known = new Map<string, number>();
  const places: number[] = [];
  const key = ([x, y, z]: Vector): string => `${nano(x)} ${nano(y)} ${nano(z)}`;
  const node = (place: Vector): number => {
    const found = known.get(key(place));
    if (found !== undefined) return found;
    known.set(key(place), known.size);
    places.push(...place);
    return known.size - 1;
  };
  const cells = new Map<string, Cell>();
  const elements: ElementStiffness[] = [];
  const own: { readonly cell: Cell; readonly thickness: number }[] = [];
  const firsts = patches.map((patch) => {
    const first = elements.length;
    const [[i, us], [j, vs]] = patch.lines;
    const place = (u: number, v: number): Vector => {
      const at: [number, number, number] = [0, 0, 0];
      [at[patch.normal], at[i], at[j]] = [patch.at, u, v];
      return at;
    };
    for (let b = 0; b + 1 < vs.length; b++)
      for (let a = 0; a + 1 < us.length; a++) {
        const [u0, u1, v0, v1] = [us[a]!, us[a + 1]!, vs[b]!, vs[b + 1]!];
        const corners = [place(u0, v0), place(u1, v0), place(u1, v1), place(u0, v1)];
        const name = `${patch.normal} ${nano(u1 - u0)} ${nano(v1 - v0)} ${patch.thickness}`;
        const cell = cells.get(name) ?? cellOf(Float64Array.from(corners.flat()), i, patch.thickness, material);
        cells.set(name, cell);
        elements.push({ nodes: corners.map(node), stiffness: cell.stiffness });
        own.push({ cell, thickness: patch.thickness });
      }
    return { patch, first };
  });
  const coordinates = Float64Array.from(places);
  return {
    coordinates,
    elements,
    held: heldFreedoms(coordinates),
    patches: firsts,
    nodeAt: (place) => known.get(key(place)) ?? -1,
    recover: (element, u) => {
      const { cell, thickness } = own[element]!;
      const felt = new Float64Array(24);
      elements[element]!.nodes.forEach((n, k) => felt.set(u.subarray(6 * n, 6 * n + 6), 6 * k));
      return shellForces(cell.recovery, thickness, felt).subarray(0, 6);
    },
  };
}

function cellOf(
  xyz: Float64Array,
  axis: 0 | 1 | 2,
  thickness: number,
  material: Pick<CrossingShape, 'E' | 'nu'>,
): Cell {
  const along: [number, number, number] = [0, 0, 0];
  along[axis] = 1;
  return {
    stiffness: shellStiffness(shellUnits(xyz, material), thickness),
    recovery: shellRecovery(xyz, material, along),
  };
}

/** Three, two and one freedoms at three nodes far apart. */
function heldFreedoms(coordinates: Float64Array): Uint8Array {
  const held = new Uint8Array(2 * coordinates.length);
  const x = (n: number, k: number): number => coordinates[3 * n + k]!;
  const most = (of: (n: number) => number): number => {
    let best = 0;
    for (let n = 1; n < coordinates.length / 3; n++) if (of(n) > of(best)) best = n;
    return best;
  };
  const a = most((n) => -x(n, 0) - x(n, 1));
  const b = most((n) => Math.abs(x(n, 0) - x(a, 0)));
  const c = most((n) =>
    Math.abs((x(b, 0) - x(a, 0)) * (x(n, 1) - x(a, 1)) - (x(b, 1) - x(a, 1)) * (x(n, 0) - x(a, 0))),
  );
  for (const k of [0, 1, 2]) held[6 * a + k] = 1;
  for (const k of [1, 2]) held[6 * b + k] = 1;
  held[6 * c + 2] = 1;
  return held;
}
