import type { GrowingMesh } from './growing-mesh.ts';
import { prism } from './prism.ts';
import { polygon } from './ring.ts';
import type { Vector } from './scene.ts';

/** A weld bead: a triangle with its right angle at the root, legs along two faces, drawn along the run. m */
export interface Bead {
  /** Middle of the run, at the root. */
  readonly root: Vector;
  /** Unit directions of the legs, square to each other and to the run. */
  readonly legs: readonly [Vector, Vector];
  readonly leg: number;
  readonly length: number;
}

/** Leg of an equal fillet of this throat. */
export const legOf = (throat: number): number => Math.SQRT2 * throat;

/** Adds a bead; one without length is left out. */
export function addBead(into: GrowingMesh, { root, legs: [u, v], leg, length }: Bead): void {
  if (length <= 0 || leg <= 0) return;
  const section = polygon([
    [0, 0],
    [leg, 0],
    [0, leg],
  ]);
  prism(into, { outer: section, holes: [] }, { origin: root, u, v }, [-length / 2, length / 2]);
}
