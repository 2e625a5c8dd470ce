import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry } from 'three';
import type { SceneMesh } from '../../core/scene/scene.ts';
import { meshGeometry } from './mesh-geometry.ts';
import type { Materials } from './solid-material.ts';

/** One material of the plate: a mesh, and its sharp edges (welds have none: their rims would be all that is seen). `isBare`: edges only. */
export function Solid({
  mesh,
  materials,
  isBare = false,
}: {
  readonly mesh: SceneMesh;
  readonly materials: Materials;
  readonly isBare?: boolean;
}) {
  const { surface, lines } = useMemo(() => {
    const surface = meshGeometry(mesh);
    surface.setAttribute('part', new BufferAttribute(mesh.parts, 1));
    const lines = new BufferGeometry();
    lines.setAttribute('position', new BufferAttribute(mesh.edges, 3));
    lines.setAttribute('part', new BufferAttribute(mesh.edgeParts, 1));
    return { surface, lines };
  }, [mesh]);
  useEffect(
    () => () => {
      surface.dispose();
      lines.dispose();
    },
    [surface, lines],
  );
  if (mesh.indices.length === 0) return null;
  return (
    <>
      {!isBare && <mesh name={mesh.material} geometry={surface} material={materials.solid} frustumCulled={false} />}
      {mesh.material !== 'weld' && (
        <lineSegments
          name={`${mesh.material} edges`}
          geometry={lines}
          material={materials.edge}
          frustumCulled={false}
        />
      )}
    </>
  );
}
