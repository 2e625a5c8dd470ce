import type { Bolt } from './geometry.ts';
import { slotReach } from './slot.ts';

/**
 * Steel around a bolt's hole in the panel, m: to the nearest edge along its side (edge1) and square to it (edge2), and to
 * the next bolt of its row (listed bolts: to the nearest). Of a slot each is measured from the centre of its round end, as e3 and e4 in EN 1993-1-8,
 * Figure 3.1: what is left before a round hole that stands there.
 */
export function boltSteel(bolt: Bolt): { readonly edge1: number; readonly edge2: number; readonly pitch: number } {
  const hole = { diameter: bolt.hole, slot: bolt.slot };
  const isMain = bolt.side.startsWith('main');
  const along = slotReach(hole, isMain ? 'x' : 'y');
  const across = slotReach(hole, isMain ? 'y' : 'x');
  return {
    edge1: bolt.edge1 - along,
    edge2: bolt.edge2 - across,
    pitch: bolt.listed?.clear ?? Math.min(bolt.pitch - 2 * along, (bolt.pitchAcross ?? Infinity) - 2 * across),
  };
}
