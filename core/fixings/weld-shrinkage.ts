import { requirePositive } from '../refusal.ts';

/** What a fillet along a panel's edge does to a panel and its tube as it cools. m, rad. */
export interface WeldShrinkage {
  /** Across the weld: what the panel loses in width at one edge. */
  readonly transverse: number;
  /** Along the weld, over its length. */
  readonly longitudinal: number;
  /** How far the panel turns up about the weld. */
  readonly angle: number;
  /** How far the tube bows along its length, its weld out of its middle. */
  readonly bow: number;
}

export interface WeldedEdgeSizes {
  readonly throat: number;
  /** Of the panel. */
  readonly thickness: number;
  /** Of the weld along the tube. */
  readonly length: number;
  /** Area of the metal that holds the shrinkage along the weld: tube and half the panel, m². */
  readonly area: number;
  /** Of the tube, m⁴, and from its middle to the weld, m. */
  readonly inertia: number;
  readonly offset: number;
}

const inch = 0.0254;

/**
 * Shrinkage of a single fillet, A_w = a² (leg ω = √2 a) (O. W. Blodgett, Design of Welded Structures, 7.7, from memory):
 *    across       0.10 A_w / t
 *    along        0.025 A_w / A · L
 *    turning      0.02 ω^1.3 / t²        (ω, t in inches; the flange's width times this is its rise)
 *    bow          0.005 A_w d L² / I
 * Error: a factor of two either way. Free parts, one pass, steel; clamps, tacks and the order of welding lessen it.
 * Refuses what is not positive; the offset may be nothing.
 */
export function weldShrinkage({ throat, thickness, length, area, inertia, offset }: WeldedEdgeSizes): WeldShrinkage {
  requirePositive({ throat, thickness, length, area, inertia });
  const A_w = throat ** 2;
  return {
    transverse: (0.1 * A_w) / thickness,
    longitudinal: ((0.025 * A_w) / area) * length,
    angle: (0.02 * ((Math.SQRT2 * throat) / inch) ** 1.3) / (thickness / inch) ** 2,
    bow: (0.005 * A_w * offset * length ** 2) / inertia,
  };
}
