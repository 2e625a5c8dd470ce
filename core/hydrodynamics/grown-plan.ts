import type { Plan, Rectangle } from '../water/lattice/plan.ts';
import { requirePositive } from '../refusal.ts';

/** What marine growth does to a plate. */
export interface Growth {
  /** m on every face. */
  readonly thickness: number;
  /** kg/m³, of the growth. */
  readonly density: number;
}

/**
 * Thickness of marine growth, m, at a depth below mean sea level and after some years: 100 mm down to 40 m, below that 50 mm
 * (56 to 59° N) or 20 mm (59 to 72° N, and where no latitude is given the larger); grown in two years in a straight line.
 * Density 1325 kg/m³. Other seas differ: let a survey overrule it.
 * Source: Norwegian guidance later taken into NORSOK N-003 (Dahle and Kvitrud 1995/2003); density DNV-RP-C205 (from memory);
 * the two years are common practice, no source.
 */
export function marineGrowth(depth: number, years: number, latitude: number | null): Growth {
  requirePositive({ depth });
  const north = latitude !== null && latitude > (59 * Math.PI) / 180;
  const full = depth <= 40 ? 0.1 : north ? 0.02 : 0.05;
  return { thickness: full * Math.min(1, Math.max(0, years) / 2), density: 1325 };
}

/** The plan with growth on every face: rectangles wider, holes narrower (or closed), edges higher. */
export function grownPlan({ rectangles, holes, thickness }: Plan, growth: number): Plan {
  return {
    rectangles: rectangles.map(({ x0, y0, x1, y1 }): Rectangle => ({ x0: x0 - growth, y0: y0 - growth, x1: x1 + growth, y1: y1 + growth })), // prettier-ignore
    holes: holes.map((hole) => ({ ...hole, diameter: hole.diameter - 2 * growth })).filter(({ diameter }) => diameter > 0), // prettier-ignore
    thickness: thickness + 2 * growth,
  };
}

/** Mass of growth on a square or rectangular tube, kg/m: on all four faces and out to square corners. Width and height in m. */
export const growthOnTube = (width: number, height: number, { thickness, density }: Growth): number =>
  density * ((width + 2 * thickness) * (height + 2 * thickness) - width * height);
