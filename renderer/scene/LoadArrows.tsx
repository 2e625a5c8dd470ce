import { useMemo } from 'react';
import { ConeGeometry, CylinderGeometry, InstancedMesh, Matrix4 } from 'three';
import type { Box, SceneLoad } from '../../core/scene/scene.ts';
import type { Colour } from './colour-map.ts';
import { plainMaterial } from './plain-material.ts';
import { useDisposed } from './use-disposed.ts';

/** Height of the longest arrow and of an arrow's head, m, for a plate of this size. */
export function arrowSizes({ low, high }: Box): { readonly longest: number; readonly head: number } {
  const across = Math.hypot(high[0] - low[0], high[1] - low[1]);
  return { longest: across / 9, head: across / 45 };
}

/** Where each arrow starts and ends, z in m: it stands on the panel's top, its length by the force. */
export function arrowSpans(
  load: SceneLoad,
  box: Box,
  apart: number,
): { readonly tail: number; readonly tip: number }[] {
  const { longest, head } = arrowSizes(box);
  const most = Math.max(...load.arrows.map(({ force }) => Math.abs(force)));
  return load.arrows.map(({ at, lift, force }) => {
    const length = most > 0 ? Math.max(head, (longest * Math.abs(force)) / most) : head;
    const foot = at[2] + lift * apart + head / 6;
    return force > 0 ? { tail: foot, tip: foot + length } : { tail: foot + length, tip: foot };
  });
}

/** Arrows of one load case: shafts in one call, heads in another. A field without force has none. */
export function LoadArrows({
  load,
  box,
  colour,
  apart,
}: {
  readonly load: SceneLoad;
  readonly box: Box;
  readonly colour: Colour;
  readonly apart: number;
}) {
  const meshes = useMemo(() => {
    const { head } = arrowSizes(box);
    const spans = arrowSpans(load, box, apart);
    const shown = load.arrows.flatMap((arrow, i) => (arrow.force === 0 ? [] : [{ ...arrow, ...spans[i]! }]));
    const material = plainMaterial(colour, true);
    const shafts = new InstancedMesh(
      new CylinderGeometry(head / 9, head / 9, 1, 10).rotateX(Math.PI / 2),
      material,
      shown.length,
    );
    const heads = new InstancedMesh(
      new ConeGeometry(head / 3, head, 16).rotateX(Math.PI / 2).translate(0, 0, -head / 2),
      material,
      shown.length,
    );
    const matrix = new Matrix4();
    shown.forEach(({ at: [x, y], tail, tip }, i) => {
      const up = Math.sign(tip - tail);
      const length = Math.abs(tip - tail) - head;
      shafts.setMatrixAt(
        i,
        matrix.set(1, 0, 0, x, 0, 1, 0, y, 0, 0, Math.max(length, 1e-6), tail + (up * length) / 2, 0, 0, 0, 1),
      );
      heads.setMatrixAt(i, matrix.set(1, 0, 0, x, 0, up, 0, y, 0, 0, up, tip, 0, 0, 0, 1));
    });
    for (const mesh of [shafts, heads]) {
      mesh.name = 'load arrows';
      mesh.frustumCulled = false;
    }
    return [shafts, heads];
  }, [load, box, colour, apart]);
  useDisposed(meshes);
  return meshes.map((mesh, i) => <primitive key={i} object={mesh} />);
}
