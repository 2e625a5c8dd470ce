import { useThree } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry } from 'three';
import { bentPlate, fieldOnVertices } from '../../core/scene/bent-plate.ts';
import { fieldRange } from '../../core/scene/field.ts';
import type { Scene } from '../../core/scene/scene.ts';
import { bentMaterials } from './bent-material.ts';
import type { BentPicture } from './bent-picture.ts';
import type { Palette } from './palette.ts';
import type { SceneUniforms } from './solid-material.ts';

/** One swing to and fro, ms: slow enough to be followed; a mode's own pace is told in its legend. */
export const swingMs = 2400;

/** The plate as it moves: panels and tubes as surfaces, shaded by how they turn, under a field's colours; where it was, faint. */
export function BentSurface({
  bent,
  scene,
  uniforms,
  palette,
}: {
  readonly bent: BentPicture;
  readonly scene: Scene;
  readonly uniforms: SceneUniforms;
  readonly palette: Palette;
}) {
  const invalidate = useThree((state) => state.invalidate);
  const { shape, field, scale, isSwinging } = bent;
  const materials = useMemo(() => bentMaterials(uniforms, palette), [uniforms, palette]);
  useEffect(() => materials.dispose, [materials]);
  const plate = useMemo(() => bentPlate(shape), [shape]);
  const { surface, lines } = useMemo(() => {
    const surface = new BufferGeometry();
    const lines = new BufferGeometry();
    const attributes = {
      position: new BufferAttribute(plate.positions, 3),
      normal: new BufferAttribute(plate.normals, 3),
      move: new BufferAttribute(plate.moves, 3),
      turn: new BufferAttribute(plate.turns, 3),
      lift: new BufferAttribute(plate.lifts, 1),
      shown: new BufferAttribute(new Float32Array(3 * plate.lifts.length), 3),
    };
    for (const geometry of [surface, lines])
      for (const [name, attribute] of Object.entries(attributes)) geometry.setAttribute(name, attribute);
    surface.setIndex(new BufferAttribute(plate.triangles, 1));
    lines.setIndex(new BufferAttribute(plate.lines, 1));
    return { surface, lines };
  }, [plate]);
  useEffect(
    () => () => {
      surface.dispose();
      lines.dispose();
    },
    [surface, lines],
  );
  const still = useMemo(() => {
    const geometry = new BufferGeometry();
    const edges = scene.meshes.filter(({ material }) => material === 'tube' || material === 'panel');
    const all = new Float32Array(edges.reduce((sum, mesh) => sum + mesh.edges.length, 0));
    edges.reduce((at, mesh) => (all.set(mesh.edges, at), at + mesh.edges.length), 0);
    return geometry.setAttribute('position', new BufferAttribute(all, 3));
  }, [scene]);
  useEffect(() => () => still.dispose(), [still]);

  useLayoutEffect(() => {
    const shown = surface.getAttribute('shown') as BufferAttribute;
    const values = field && fieldOnVertices(plate, field);
    for (let v = 0; v < plate.sources.length; v++)
      shown.setXYZ(v, values?.[2 * v] ?? 0, values?.[2 * v + 1] ?? 0, plate.sources[v]! >= plate.firstOfTubes ? 1 : 0);
    shown.needsUpdate = true;
    const { own } = materials;
    own.hasField.value = field ? 1 : 0;
    if (field) ({ from: own.from.value, to: own.to.value } = fieldRange(field));
    invalidate();
  }, [surface, plate, field, materials, invalidate]);
  useEffect(() => {
    const { amplitude } = materials.own;
    amplitude.value = scale ?? 0;
    invalidate();
    if (!isSwinging || scale === null) return;
    let run = 0;
    const start = performance.now();
    const step = (now: number): void => {
      // from the end at which it stood still
      amplitude.value = scale * Math.cos((2 * Math.PI * Math.max(0, now - start)) / swingMs);
      invalidate();
      run = requestAnimationFrame(step);
    };
    run = requestAnimationFrame(step);
    return () => cancelAnimationFrame(run);
  }, [materials, scale, isSwinging, invalidate]);

  return (
    <>
      <mesh name="bent plate" geometry={surface} material={materials.surface} frustumCulled={false} />
      {scale !== null && (
        <>
          <lineSegments name="bent edges" geometry={lines} material={materials.line} frustumCulled={false} />
          <lineSegments name="where it was" geometry={still} material={materials.still} frustumCulled={false} />
        </>
      )}
    </>
  );
}
