import { BufferAttribute, BufferGeometry } from 'three';
import type { SceneMesh } from '../../core/scene/scene.ts';

/** Positions, normals and triangles as three holds them, on the same memory. */
export function meshGeometry({
  positions,
  normals,
  indices,
}: Pick<SceneMesh, 'positions' | 'normals' | 'indices'>): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setAttribute('normal', new BufferAttribute(normals, 3));
  geometry.setIndex(new BufferAttribute(indices, 1));
  return geometry;
}
