import type { PlateDocument } from '../document/schema.ts';
import type { Plan, Rectangle } from './lattice/plan.ts';
import { growthOf } from './marine-growth.ts';

/** The plan with growth on every face: rectangles wider, holes narrower (or closed), edges higher. */
export function grownPlan({ rectangles, holes, thickness }: Plan, growth: number): Plan {
  return {
    rectangles: rectangles.map(({ x0, y0, x1, y1 }): Rectangle => ({ x0: x0 - growth, y0: y0 - growth, x1: x1 + growth, y1: y1 + growth })), // prettier-ignore
    holes: holes.map((hole) => ({ ...hole, diameter: hole.diameter - 2 * growth })).filter(({ diameter }) => diameter > 0), // prettier-ignore
    thickness: thickness + 2 * growth,
  };
}

/** The plan with the growth that a document states. */
export function plateGrown(document: Pick<PlateDocument, 'water' | 'hydrodynamics'>, plan: Plan): Plan {
  const growth = growthOf(document);
  return growth ? grownPlan(plan, growth.thickness) : plan;
}
