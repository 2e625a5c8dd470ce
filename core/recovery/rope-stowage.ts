import { requirePositive } from '../refusal.ts';

/**
 * Volume that a coiled rope takes, m³: π d² L / 4 over the part of the space that is rope. Square packing leaves π/4 = 0.785,
 * the densest 0.907; rope that must run free 0.4 to 0.6 (common practice, no source: measure it).
 */
export function stowedVolume(diameter: number, length: number, solid: number): number {
  requirePositive({ diameter, length, solid });
  return (Math.PI * diameter ** 2 * length) / (4 * solid);
}

/** Height, m, that a volume takes in a canister of clear diameter D around a cone or core of diameter c, with room above it. */
export function canisterHeight(volume: number, D: number, core: number, clearance: number): number {
  requirePositive({ volume, D, 'canister less its core': D - core });
  return volume / ((Math.PI / 4) * (D ** 2 - core ** 2)) + clearance;
}

/** Length, m, of a rope that reaches from a depth to a float that drifts, with spare as a part of both. */
export const ropeLength = (depth: number, drift: number, slack: number): number =>
  (1 + slack) * Math.hypot(depth, drift);
