import { useEffect, useMemo } from 'react';
import { InstancedBufferAttribute, InstancedMesh, Matrix4 } from 'three';
import type { SceneBolts } from '../../core/scene/scene.ts';
import { meshGeometry } from './mesh-geometry.ts';
import type { Materials } from './solid-material.ts';

/** Bolts of one kind, drawn at all their places in one call. */
export function Bolts({ set, materials }: { readonly set: SceneBolts; readonly materials: Materials }) {
  const instanced = useMemo(() => {
    const geometry = meshGeometry(set);
    geometry.setAttribute('part', new InstancedBufferAttribute(set.parts, 1));
    const mesh = new InstancedMesh(geometry, materials.solid, set.parts.length);
    mesh.name = 'bolts';
    mesh.frustumCulled = false;
    const matrix = new Matrix4();
    for (let i = 0; i < set.parts.length; i++) {
      const [x = 0, y = 0, z = 0, up = 1] = set.placements.subarray(4 * i, 4 * i + 4);
      // Half a turn about x where it points down.
      matrix.set(1, 0, 0, x, 0, up, 0, y, 0, 0, up, z, 0, 0, 0, 1);
      mesh.setMatrixAt(i, matrix);
    }
    return mesh;
  }, [set, materials]);
  useEffect(
    () => () => {
      instanced.geometry.dispose();
      instanced.dispose();
    },
    [instanced],
  );
  return <primitive object={instanced} />;
}
