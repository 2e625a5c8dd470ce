import type { Hit } from '../../core/scene/part-at.ts';
import type { Vector } from '../../core/scene/scene.ts';
import { projected, type Size, type View } from './camera.ts';

/** px */
const reach = 14;

/** The corner of the triangle under the pointer if it is near on the screen, else the point itself. */
export function snapped(hit: Hit, x: number, y: number, view: View, size: Size): Vector {
  let best: { readonly corner: Vector; readonly off: number } | null = null;
  for (const corner of hit.corners) {
    const [u, v] = projected(corner, view, size);
    const off = Math.hypot(u - x, v - y);
    if (off <= reach && (!best || off < best.off)) best = { corner, off };
  }
  return best?.corner ?? hit.point;
}
