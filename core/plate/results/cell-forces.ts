import { shellForces } from '../../solve/elements/shell-recovery.ts';
import type { PanelMesh, Structure } from '../../solve/structure/structure.ts';
import { shellRecoveries } from '../../solve/structure/shell-recoveries.ts';

/** Places of a cell at which forces are given: the middle, then its corners anticlockwise from the low one. */
export const cellPlaces = 5;

/** Forces per width in the cells of a panel: Nx Ny Nxy (N/m, tension positive), Mx My Mxy (N, positive where the top is
 *  pulled) at five places of each cell, 30 numbers a cell, along x and y of the plate. */
export function cellForces(structure: Structure, { shells: [first, last] }: PanelMesh, u: Float64Array): Float64Array {
  const recoveries = shellRecoveries(structure);
  const out = new Float64Array(6 * cellPlaces * (last - first));
  const own = new Float64Array(24);
  for (let e = first; e < last; e++) {
    const { nodes, thickness } = structure.shells[e]!;
    nodes.forEach((n, i) => own.set(u.subarray(6 * n, 6 * n + 6), 6 * i));
    out.set(shellForces(recoveries[e]!, thickness, own), 6 * cellPlaces * (e - first));
  }
  return out;
}

/** Mean of a panel's cells at each of its nodes, weighted with their area: 6 numbers for each node of `index`. */
export function meanAtNodes(
  structure: Structure,
  { shells: [first, last] }: PanelMesh,
  cells: Float64Array,
  index: ReadonlyMap<number, number>,
): Float64Array {
  const sum = new Float64Array(6 * index.size);
  const weight = new Float64Array(index.size);
  for (let e = first; e < last; e++) {
    const { nodes, a, b } = structure.shells[e]!;
    nodes.forEach((n, corner) => {
      const i = index.get(n)!;
      weight[i]! += a * b;
      const at = 6 * cellPlaces * (e - first) + 6 * (corner + 1);
      for (let k = 0; k < 6; k++) sum[6 * i + k]! += a * b * cells[at + k]!;
    });
  }
  return sum.map((value, i) => value / weight[Math.floor(i / 6)]!);
}

/** Place of each of a panel's nodes in lists by node. */
export const nodeIndex = ({ nodes }: PanelMesh): ReadonlyMap<number, number> =>
  new Map([...nodes.filter((n) => n >= 0)].map((n, i) => [n, i]));
