import { useEffect } from 'react';
import type { InstancedMesh, Material } from 'three';

/** Frees instanced meshes when they are replaced or leave: shape, places, and the material that only they are drawn with. */
export function useDisposed(meshes: InstancedMesh | readonly InstancedMesh[]): void {
  useEffect(
    () => () => {
      for (const mesh of Array.isArray(meshes) ? (meshes as readonly InstancedMesh[]) : [meshes as InstancedMesh]) {
        mesh.geometry.dispose();
        (mesh.material as Material).dispose();
        mesh.dispose();
      }
    },
    [meshes],
  );
}
