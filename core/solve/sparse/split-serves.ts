import type { ElementStiffness } from '../structure/element-stiffness.ts';

/** What of a system its split is made from, beside strands and numbers. */
export interface Joined {
  readonly coordinates: Float64Array;
  readonly nodes: readonly ElementStiffness['nodes'][];
}

/** Heights closer than this may be one level after rounding (see `Part`), m. */
const apart = 4e-9;

/**
 * Whether the split into parts of one system is that of another too, when elements have the same strands and numbers: the same
 * nodes join, they stand at the same places in plan to the last bit, and each height in the one answers to one in the other, in
 * the same order. So it is after a thickness has changed: the levels that parts are numbered by stay.
 */
export function splitServes(a: Joined, b: Joined): boolean {
  if (a.coordinates === b.coordinates) return true;
  const [p, q] = [a.coordinates, b.coordinates];
  if (p.length !== q.length || a.nodes.length !== b.nodes.length) return false;
  const heights = new Map<number, number>();
  for (let i = 0; i < p.length; i += 3) {
    if (p[i] !== q[i] || p[i + 1] !== q[i + 1]) return false;
    const [from, to] = [p[i + 2]!, q[i + 2]!];
    const known = heights.get(from);
    if (known === undefined) heights.set(from, to);
    else if (known !== to) return false;
  }
  const rising = [...heights].sort(([low], [high]) => low - high);
  for (let k = 1; k < rising.length; k++)
    if (!(rising[k]![0] - rising[k - 1]![0] > apart && rising[k]![1] - rising[k - 1]![1] > apart)) return false;
  return a.nodes.every((own, e) => {
    const others = b.nodes[e]!;
    return own === others || (own.length === others.length && own.every((node, k) => node === others[k]));
  });
}
