import { gapLoss } from './gap-loss.ts';
import type { Patches } from './lattice/patches.ts';
import { outlineOf, type Plan } from './lattice/plan.ts';
import { openingsOf, openPart } from './openings-of.ts';

/**
 * Loss K of a plate taken as a screen, Δp = K ρ U² / 2 on the mean approaching flow U: openings side by side under one pressure,
 * K = (S / Σ a_i / √ζ_i)². Openings that reach the rim count as one with the open part of the outline. Infinity without openings.
 */
export function screenLoss(plan: Plan, patches: Patches): number {
  const { x0, x1, y0, y1 } = outlineOf(plan);
  const S = (x1 - x0) * (y1 - y0);
  const tau = openPart(plan, patches);
  let [bounded, through] = [0, 0];
  for (const { area, tau: own, hydraulicDiameter } of openingsOf(plan, patches)) {
    bounded += area;
    through += area / Math.sqrt(gapLoss(own, plan.thickness / hydraulicDiameter).best);
  }
  const rest = tau * S - bounded;
  if (rest > 1e-9 * S) through += rest / Math.sqrt(gapLoss(tau, 0).best);
  return through > 0 ? (S / through) ** 2 : Infinity;
}
