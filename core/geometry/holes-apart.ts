import type { Cutout } from './geometry.ts';
import { slotReach } from './slot.ts';

/**
 * Clear steel between two holes, m; negative where they run into each other. Each is a disc swept along its slot: the
 * distance of the two middle lines, which lie along x or y, less both radii.
 */
export function holesApart(a: Cutout, b: Cutout): number {
  const gap = (axis: 'x' | 'y'): number =>
    Math.max(0, Math.abs(a[axis] - b[axis]) - slotReach(a, axis) - slotReach(b, axis));
  return Math.hypot(gap('x'), gap('y')) - (a.diameter + b.diameter) / 2;
}
