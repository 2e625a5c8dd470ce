import { useMemo } from 'react';
import { ConeGeometry, CylinderGeometry, InstancedMesh, Matrix4 } from 'three';
import { largestMark, markWords, type Marks } from '../../core/scene/marks.ts';
import type { Box } from '../../core/scene/scene.ts';
import type { Colour } from './colour-map.ts';
import { plainMaterial } from './plain-material.ts';
import { useDisposed } from './use-disposed.ts';

/** Where each arrow starts and ends, z in m: on the panel's outer face, its length by the value; the longest a ninth of the plate. */
export function markSpans(marks: Marks, { low, high }: Box, scale: number, apart: number) {
  const across = Math.hypot(high[0] - low[0], high[1] - low[1]);
  const most = largestMark(marks)?.value ?? 0;
  return Array.from(marks.values, (value, i) => {
    const off = marks.off[i]!;
    const [x, y, z] = [0, 1, 2].map((c) => marks.places[3 * i + c]! + scale * marks.moves[3 * i + c]!) as [number, number, number]; // prettier-ignore
    const foot = z + off * apart;
    const end = foot + (off * (across / 9) * value) / most;
    return markWords[marks.kind].isOff ? { x, y, tail: foot, tip: end } : { x, y, tail: end, tip: foot };
  });
}

/** Forces at points as arrows: shafts in one call, heads in another. */
export function ForceMarks({
  marks,
  box,
  scale,
  apart,
  colour,
}: {
  readonly marks: Marks;
  readonly box: Box;
  readonly scale: number;
  readonly apart: number;
  readonly colour: Colour;
}) {
  const meshes = useMemo(() => {
    const spans = markSpans(marks, box, scale, apart);
    const thick = Math.hypot(box.high[0] - box.low[0], box.high[1] - box.low[1]) / 900;
    const material = plainMaterial(colour, true);
    const shafts = new InstancedMesh(new CylinderGeometry(thick, thick, 1, 8).rotateX(Math.PI / 2), material, spans.length); // prettier-ignore
    const heads = new InstancedMesh(new ConeGeometry(3 * thick, 1, 10).rotateX(Math.PI / 2).translate(0, 0, -0.5), material, spans.length); // prettier-ignore
    const matrix = new Matrix4();
    spans.forEach(({ x, y, tail, tip }, i) => {
      const up = Math.sign(tip - tail) || 1;
      const length = Math.abs(tip - tail);
      const head = Math.min(10 * thick, length / 2);
      const shaft = Math.max(length - head, 1e-6);
      shafts.setMatrixAt(i, matrix.set(1, 0, 0, x, 0, 1, 0, y, 0, 0, shaft, tail + (up * shaft) / 2, 0, 0, 0, 1));
      heads.setMatrixAt(i, matrix.set(1, 0, 0, x, 0, up, 0, y, 0, 0, up * head, tip, 0, 0, 0, 1));
    });
    for (const mesh of [shafts, heads]) {
      mesh.name = 'force marks';
      mesh.frustumCulled = false;
    }
    return [shafts, heads];
  }, [marks, box, scale, apart, colour]);
  useDisposed(meshes);
  return meshes.map((mesh, i) => <primitive key={i} object={mesh} />);
}
