import { opening } from '../../solve/structure/contact.ts';
import { shellElements } from '../../solve/structure/shell-elements.ts';
import type { ReadyPlate } from '../solve-plate.ts';

/** Kinds of parts that give way under load. */
export const partKinds = [
  'main tubes',
  'cross tubes',
  'joints',
  'panels in bending',
  'panels in their plane',
  'bolts',
  'welds',
  'contact',
] as const;
export type PartKind = (typeof partKinds)[number];

/** Work of each kind's forces under displacements u on the displacements v (both 6N), N·m: vᵀ K_e u summed over its
 *  elements, with the closed points of contact. Their sum is vᵀ K u. */
export function workOfParts(
  { structure, elements }: Pick<ReadyPlate, 'structure' | 'elements'>,
  closed: Uint8Array,
  v: Float64Array,
  u: Float64Array,
): Record<PartKind, number> {
  const { beams, shells, ties, contacts, tubes } = structure;
  const work = Object.fromEntries(partKinds.map((kind) => [kind, 0])) as Record<PartKind, number>;
  const of = (e: number): number => product(elements[e]!.stiffness, elements[e]!.nodes, v, u);
  beams.forEach(({ tube }, e) => (work[tubes[tube]!.set === 'main' ? 'main tubes' : 'cross tubes'] += of(e)));
  const units = shellElements(structure);
  shells.forEach(({ nodes, thickness }, e) => {
    const bent = thickness ** 3 * product(units[e]!.bending, nodes, v, u);
    work['panels in bending'] += bent;
    work['panels in their plane'] += of(beams.length + e) - bent;
  });
  ties.forEach(({ kind }, e) => (work[kind === 'bolt' ? 'bolts' : 'welds'] += of(beams.length + shells.length + e)));
  const sofar = beams.length + shells.length + ties.length;
  (structure.joints ?? []).forEach((_, e) => (work.joints += of(sofar + e)));
  contacts.forEach((part, i) => {
    if (!closed[i]) return;
    const bare = { ...part, gap: 0 };
    work.contact += part.stiffness * opening(bare, v) * opening(bare, u);
  });
  return work;
}

/** vᵀ K u over an element's nodes. */
function product(K: Float64Array, nodes: readonly number[], v: Float64Array, u: Float64Array): number {
  const size = 6 * nodes.length;
  let sum = 0;
  nodes.forEach((n, a) => {
    for (let i = 0; i < 6; i++) {
      const row = (6 * a + i) * size;
      let force = 0;
      nodes.forEach((m, b) => {
        for (let j = 0; j < 6; j++) force += K[row + 6 * b + j]! * u[6 * m + j]!;
      });
      sum += v[6 * n + i]! * force;
    }
  });
  return sum;
}
