import { useMemo } from 'react';
import { BackSide, ConeGeometry, CylinderGeometry, InstancedMesh, Matrix4 } from 'three';
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

/** Arrows of one load case, with a rim that parts them from what lies behind: shafts in one call, heads in another. A field without force has none. */
export function LoadArrows({
  load,
  box,
  colour,
  rim,
  apart,
}: {
  readonly load: SceneLoad;
  readonly box: Box;
  readonly colour: Colour;
  readonly rim: Colour;
  readonly apart: number;
}) {
  const meshes = useMemo(() => {
    const { head } = arrowSizes(box);
    const spans = arrowSpans(load, box, apart);
    const shown = load.arrows.flatMap((arrow, i) => (arrow.force === 0 ? [] : [{ ...arrow, ...spans[i]! }]));
    const matrix = new Matrix4();
    const arrows = (out: number, ownColour: Colour): InstancedMesh[] => {
      const material = plainMaterial(ownColour, true);
      if (out > 0) material.side = BackSide;
      const shaft = new CylinderGeometry(head / 6 + out, head / 6 + out, 1, 12).rotateX(Math.PI / 2);
      const cone = new ConeGeometry(head / 2.2 + 1.6 * out, head + 2.5 * out, 20)
        .rotateX(Math.PI / 2)
        .translate(0, 0, -head / 2 + out / 2);
      const shafts = new InstancedMesh(shaft, material, shown.length);
      const heads = new InstancedMesh(cone, material, shown.length);
      shown.forEach(({ at: [x, y], tail, tip }, i) => {
        const up = Math.sign(tip - tail);
        const length = Math.abs(tip - tail) - head;
        const [high, middle] = [Math.max(length, 1e-6) + out, tail + (up * (length - out)) / 2];
        shafts.setMatrixAt(i, matrix.set(1, 0, 0, x, 0, 1, 0, y, 0, 0, high, middle, 0, 0, 0, 1));
        heads.setMatrixAt(i, matrix.set(1, 0, 0, x, 0, up, 0, y, 0, 0, up, tip, 0, 0, 0, 1));
      });
      return [shafts, heads];
    };
    const own = arrows(0, colour);
    for (const mesh of own) mesh.name = 'load arrows';
    const all = [...own, ...arrows(head / 14, rim)];
    for (const mesh of all) mesh.frustumCulled = false;
    return all;
  }, [load, box, colour, rim, apart]);
  useDisposed(meshes);
  return meshes.map((mesh, i) => <primitive key={i} object={mesh} />);
}
