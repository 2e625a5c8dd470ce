import type { GrowingMesh } from './growing-mesh.ts';
import type { PartKind, ScenePart } from './scene.ts';

/** A part before its place in the buffers is known. */
export interface PartDraft extends Pick<ScenePart, 'place' | 'title' | 'bays' | 'lift'> {
  readonly kind: PartKind;
  /** Adds its solids, and nothing else. */
  readonly build: (into: GrowingMesh) => void;
}

export const partId = (kind: PartKind, place: string): string => `${kind}:${place}`;
