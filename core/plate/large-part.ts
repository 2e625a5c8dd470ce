import { shellLarge } from '../solve/elements/shell-large.ts';
import type { ContactPart, Structure } from '../solve/structure/structure.ts';
import type { LargePart } from '../solve/structure/large-newton.ts';
import { perShell } from '../solve/structure/per-shell.ts';
import { tieElement } from '../solve/structure/tie.ts';

/** A panel of a structure taken by itself: its nodes first, then the nodes of tubes to which it is tied or on which it lies,
 *  whose motion is given. `nodes`: each one's number in the structure. */
export interface PanelPart extends LargePart {
  readonly nodes: readonly number[];
  readonly panel: number;
  /** How many of the nodes are the panel's own. */
  readonly own: number;
}

export function panelPart(structure: Structure, panel: number, held?: Uint8Array): PanelPart {
  const mesh = structure.panels[panel]!;
  const nodes: number[] = [];
  const local = new Map<number, number>();
  const at = (node: number): number => {
    const known = local.get(node);
    if (known !== undefined) return known;
    local.set(node, nodes.length);
    return nodes.push(node) - 1;
  };
  const large = largeShells(structure).slice(...mesh.shells);
  const shells = structure.shells
    .slice(...mesh.shells)
    .map(({ nodes: corners }, i) => ({ nodes: corners.map(at), shell: large[i]! }));
  const own = nodes.length;
  const pair = ([a, b]: readonly [number, number]): readonly [number, number] => [at(a), at(b)];
  const ties = structure.ties.slice(...mesh.ties).map((tie) => tieElement({ ...tie, nodes: pair(tie.nodes) }));
  const contacts = structure.contacts
    .slice(...mesh.contacts)
    .map((contact): ContactPart => ({ ...contact, nodes: pair(contact.nodes) }));
  const still = Uint8Array.from({ length: 6 * nodes.length }, (_, i) => {
    const node = Math.floor(i / 6);
    return node >= own || held?.[6 * nodes[node]! + (i % 6)] === 1 ? 1 : 0;
  });
  const coordinates = Float64Array.from(nodes.flatMap((n) => [...structure.coordinates.subarray(3 * n, 3 * n + 3)]));
  return { coordinates, shells, ties, contacts, held: still, nodes, panel, own };
}

/** Entries of the structure's vector (6N) at a part's nodes (6n). */
export const gathered = ({ nodes }: PanelPart, whole: Float64Array): Float64Array =>
  Float64Array.from({ length: 6 * nodes.length }, (_, i) => whole[6 * nodes[Math.floor(i / 6)]! + (i % 6)]!);

/** Each shell of a structure for large deflection. */
const largeShells = perShell((xyz, { E, nu, thickness }) => shellLarge(xyz, { thickness, E, nu }));
