import { useMemo } from 'react';
import { CircleGeometry, InstancedMesh, Matrix4 } from 'three';
import { isCutAway, type Cut } from '../../core/scene/part-at.ts';
import type { Colour } from './colour-map.ts';
import { plainMaterial } from './plain-material.ts';
import { useDisposed } from './use-disposed.ts';

/** m off the wall, so that the wall does not show through. */
const proud = 0.0002;

/** Holes of bolts in the tubes' walls, dark, seen when the panels are pulled off: all in one call. */
export function Holes({
  holes,
  cut,
  colour,
}: {
  readonly holes: Float32Array;
  readonly cut: Cut | null;
  readonly colour: Colour;
}) {
  const mesh = useMemo(() => {
    const mesh = new InstancedMesh(new CircleGeometry(1, 12), plainMaterial(colour, true), holes.length / 5);
    const matrix = new Matrix4();
    let shown = 0;
    for (let i = 0; i < holes.length; i += 5) {
      const [x = 0, y = 0, z = 0, up = 1, r = 0] = holes.subarray(i, i + 5);
      if (isCutAway([x, y, z], cut)) continue;
      mesh.setMatrixAt(shown++, matrix.set(r, 0, 0, x, 0, up * r, 0, y, 0, 0, up, z + up * proud, 0, 0, 0, 1));
    }
    mesh.count = shown;
    mesh.name = 'holes';
    mesh.frustumCulled = false;
    return mesh;
  }, [holes, cut, colour]);
  useDisposed(mesh);
  return holes.length === 0 ? null : <primitive object={mesh} />;
}
