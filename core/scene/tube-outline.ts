import type { HollowSection } from '../catalogue/rows.ts';
import { circle, roundedRectangle, type Ring } from './ring.ts';

/** Chords in a quarter of a round tube and of a corner: a bent tube has many sections, and is looked at from afar. */
const chords = { round: 6, corner: 2 } as const;

/** Outside of a section about its axis as `ShapeTube.outline` has it: y across, z up. */
export function tubeOutline({ shape, height: H, width: B, outerRadius, nominalWall, wall }: HollowSection): Float32Array {
  const ring: Ring =
    shape === 'round'
      ? circle(0, 0, H / 2, chords.round)
      : roundedRectangle(B, H, (outerRadius * nominalWall) / wall, chords.corner);
  return Float32Array.from(
    ring.flatMap(({ u, v, normal }, i) => {
      if (normal) return [u, v, ...normal];
      // a sharp corner belongs to the side before it and to the side after it
      const before = sideNormal(ring.at(i - 1)!, { u, v });
      const after = sideNormal({ u, v }, ring[(i + 1) % ring.length]!);
      return [u, v, ...before, u, v, ...after];
    }),
  );
} // prettier-ignore

/** Out of the material, which lies on the left of the way from p to q. */
function sideNormal(p: { u: number; v: number }, q: { u: number; v: number }): readonly [number, number] {
  const [du, dv] = [q.u - p.u, q.v - p.v];
  const length = Math.hypot(du, dv);
  return [dv / length, -du / length];
}
