/**
 * Stress at a detail over a cycle of the force, which runs from -1 (largest down) to 1 (largest up) and back. It is in
 * proportion to the distance from the position z at which the detail is at rest, by another factor on either side:
 * contact is one-sided. `up`, `down`: its size at both ends, Pa. `sides`: whether it has the other sign beyond z
 * (opposite), or pulls the same way on both sides or lets go (same). With z outside of -1 to 1 nothing changes over.
 */
export interface CycleResponse {
  readonly up: number;
  readonly down: number;
  readonly z: number;
  readonly sides: 'opposite' | 'same';
}

/**
 * Stress ranges of a cycle of r times the full swing, from its peak to its trough, Pa: where the detail is at rest within
 * the cycle and is pulled the same way on both sides of it, there are two ranges, the larger first. r from 0 up.
 */
export function rangesOf({ up, down, z, sides }: CycleResponse, r: number): readonly [number, number] {
  if (Math.abs(z) >= 1) return [r * Math.abs(up - down), 0];
  const above = up / (1 - z);
  const below = down / (1 + z);
  if (r <= Math.abs(z)) return [2 * r * (z > 0 ? below : above), 0];
  const [A, B] = [above * (r - z), below * (r + z)];
  return sides === 'opposite' ? [A + B, 0] : [Math.max(A, B), Math.min(A, B)];
}

/** True where the ranges are in proportion to r, so that closed forms hold for them. */
export const isProportional = ({ z }: CycleResponse): boolean => z === 0 || Math.abs(z) >= 1;
