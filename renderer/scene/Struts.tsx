import { useMemo } from 'react';
import { CylinderGeometry, InstancedMesh, Matrix4, Quaternion, Vector3 } from 'three';
import type { SceneRope } from '../../core/scene/scene.ts';
import type { Colour } from './colour-map.ts';
import { plainMaterial } from './plain-material.ts';
import { useDisposed } from './use-disposed.ts';

/** Struts as round bars, in one call. */
export function Struts({ struts, colour }: { readonly struts: readonly SceneRope[]; readonly colour: Colour }) {
  const mesh = useMemo(() => {
    const mesh = new InstancedMesh(new CylinderGeometry(0.5, 0.5, 1, 16), plainMaterial(colour, true), struts.length);
    const [axis, upright] = [new Vector3(), new Vector3(0, 1, 0)];
    struts.forEach(({ from, to, width }, i) => {
      axis.set(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
      const length = axis.length();
      const middle = new Vector3((from[0] + to[0]) / 2, (from[1] + to[1]) / 2, (from[2] + to[2]) / 2);
      const turned = new Quaternion().setFromUnitVectors(upright, axis.normalize());
      mesh.setMatrixAt(i, new Matrix4().compose(middle, turned, new Vector3(width, length, width)));
    });
    mesh.name = 'struts';
    mesh.frustumCulled = false;
    return mesh;
  }, [struts, colour]);
  useDisposed(mesh);
  return struts.length === 0 ? null : <primitive object={mesh} />;
}
