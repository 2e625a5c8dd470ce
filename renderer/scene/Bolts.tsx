import { useFrame } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { CylinderGeometry, InstancedBufferAttribute, InstancedMesh, Matrix4, type BufferGeometry } from 'three';
import type { SceneBolts } from '../../core/scene/scene.ts';
import { meshGeometry } from './mesh-geometry.ts';
import type { Materials } from './solid-material.ts';

/** Bolts less wide than this on the screen are drawn without washers, shank and nut. px */
const plainBelow = 9;

/**
 * Bolts of one kind, drawn at all their places in one call. Thousands of small ones are most of a plate's triangles:
 * where nobody sees more, each is a hexagon as long as the bolt. `isOpen`: parts are pulled off or cut away, so that
 * what the tubes hide is seen.
 */
export function Bolts({
  set,
  materials,
  isOpen,
}: {
  readonly set: SceneBolts;
  readonly materials: Materials;
  readonly isOpen: boolean;
}) {
  const { whole, plain, width } = useMemo(() => {
    const { low, high, radius } = extentOf(set.positions);
    const hexagon = new CylinderGeometry(radius, radius, high - low, 6).rotateX(Math.PI / 2);
    const places = placesOf(set);
    const parts = new InstancedBufferAttribute(set.parts, 1);
    const everywhere = (name: string, geometry: BufferGeometry): InstancedMesh => {
      const mesh = new InstancedMesh(geometry.setAttribute('part', parts), materials.solid, set.parts.length);
      mesh.instanceMatrix = places;
      mesh.name = name;
      mesh.frustumCulled = false;
      return mesh;
    };
    return {
      whole: everywhere('bolts', meshGeometry(set)),
      plain: everywhere('plain bolts', hexagon.translate(0, 0, (low + high) / 2)),
      width: 2 * radius,
    };
  }, [set, materials]);
  useFrame(({ camera }) => {
    whole.visible = isOpen || camera.zoom * width >= plainBelow;
    plain.visible = !whole.visible;
  });
  useEffect(
    () => () => {
      for (const mesh of [whole, plain]) {
        mesh.geometry.dispose();
        mesh.dispose();
      }
    },
    [whole, plain],
  );
  return (
    <>
      <primitive object={whole} />
      <primitive object={plain} />
    </>
  );
}

function placesOf({ placements, parts }: SceneBolts): InstancedBufferAttribute {
  const places = new InstancedBufferAttribute(new Float32Array(16 * parts.length), 16);
  const matrix = new Matrix4();
  for (let i = 0; i < parts.length; i++) {
    const [x = 0, y = 0, z = 0, up = 1] = placements.subarray(4 * i, 4 * i + 4);
    // Half a turn about x where it points down.
    matrix.set(1, 0, 0, x, 0, up, 0, y, 0, 0, up, z, 0, 0, 0, 1).toArray(places.array, 16 * i);
  }
  return places;
}

/** From the lowest to the highest point of a bolt's solid, and the farthest from its axis, m. */
function extentOf(positions: Float32Array): { low: number; high: number; radius: number } {
  let [low, high, radius] = [Infinity, -Infinity, 0];
  for (let i = 0; i < positions.length; i += 3) {
    const [x = 0, y = 0, z = 0] = positions.subarray(i, i + 3);
    low = Math.min(low, z);
    high = Math.max(high, z);
    radius = Math.max(radius, Math.hypot(x, y));
  }
  return { low, high, radius };
}
