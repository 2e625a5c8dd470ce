import { useEffect } from 'react';
import type { InstancedMesh } from 'three';
import { disposeSoon } from './dispose-soon.ts';

/** Frees instanced meshes when they are replaced or leave: shape, places, and the material that only they are drawn with. */
export function useDisposed(meshes: InstancedMesh | readonly InstancedMesh[]): void {
  useEffect(
    () => () => {
      for (const mesh of Array.isArray(meshes) ? (meshes as readonly InstancedMesh[]) : [meshes as InstancedMesh])
        disposeSoon(mesh.geometry, mesh.material as { dispose(): void }, mesh);
    },
    [meshes],
  );
}
