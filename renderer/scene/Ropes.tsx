import { useEffect, useMemo } from 'react';
import { BufferGeometry, Float32BufferAttribute } from 'three';
import type { SceneRope } from '../../core/scene/scene.ts';
import type { Colour } from './colour-map.ts';
import { plainMaterial } from './plain-material.ts';

/** Lines, legs, struts or slings; slings for the lift in air are dashed. */
export function Ropes({
  ropes,
  colour,
  dashed = false,
}: {
  readonly ropes: readonly SceneRope[];
  readonly colour: Colour;
  readonly dashed?: boolean;
}) {
  const { geometry, material } = useMemo(() => {
    const geometry = new BufferGeometry();
    geometry.setAttribute(
      'position',
      new Float32BufferAttribute(
        ropes.flatMap(({ from, to }) => [...from, ...to]),
        3,
      ),
    );
    const along = ropes.flatMap(({ from, to }) => [0, Math.hypot(...to.map((x, axis) => x - from[axis]!))]);
    geometry.setAttribute('along', new Float32BufferAttribute(along, 1));
    return { geometry, material: plainMaterial(colour, false, dashed ? 0.16 : 0) };
  }, [ropes, colour, dashed]);
  useEffect(
    () => () => {
      geometry.dispose();
      material.dispose();
    },
    [geometry, material],
  );
  return (
    <lineSegments
      name={dashed ? 'slings' : 'suspension'}
      geometry={geometry}
      material={material}
      frustumCulled={false}
    />
  );
}
