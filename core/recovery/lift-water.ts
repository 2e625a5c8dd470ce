import { planInWater } from '../geometry/plan-in-water.ts';
import type { Model } from '../model.ts';
import { boundedMemo } from '../solve/bounded-memo.ts';
import { openAreaRule } from '../water/added-mass-rules.ts';
import { steadyPlate } from '../water/edge-drag.ts';
import { outlineOf, type Plan } from '../water/lattice/plan.ts';
import { plateLattice, plateProblem } from '../water/lattice/plate-lattice.ts';
import { solvePair } from '../water/lattice/solve-pair.ts';
import { wellPlaced } from '../water/lattice/well-placed.ts';

/** What the water does to a plate that is lowered and hauled. SI. */
export interface LiftWater {
  /** Added mass, kg: in still water, by the open part for large motions, of the solid plate; and the one that the lift takes. */
  readonly still: number;
  readonly byOpenArea: number | null;
  readonly solid: number;
  readonly addedMass: number;
  /** Solid plan area, m², and shorter side of the outline, m. */
  readonly area: number;
  readonly breadth: number;
  /** Open part of the outline. */
  readonly open: number;
  /** Steady drag coefficient of the solid plate: of sinking, which drag holds back. */
  readonly steady: number;
}

/** Cells along the longer side of the finer lattice: quick enough for every edit. */
const cells = 40;
const memo = boundedMemo<{ still: number; solid: number }>(64);

/**
 * Added mass of a plate on the hoist. Its motions are larger than those of service, and gaps count for less the larger they are: taken is the
 * larger of that in still water (lattice) and that by the open-area rule, which stands for large motions, and never more than solid.
 */
export function liftWater(model: Pick<Model, 'geometry'>, density: number): LiftWater {
  const plan = planInWater(model.geometry);
  const { x0, x1, y0, y1 } = outlineOf(plan);
  const [a, b] = [Math.min(x1 - x0, y1 - y0), Math.max(x1 - x0, y1 - y0)];
  const { still, solid } = memo(JSON.stringify([plan, density]), () => onLattice(plan, density));
  const { solid: area, outline } = model.geometry.areas;
  const open = 1 - area / outline;
  const rule = openAreaRule(open);
  const byOpenArea = rule === null ? null : rule * solid;
  return { still, byOpenArea, solid, addedMass: Math.min(solid, Math.max(still, byOpenArea ?? 0)), area, breadth: a, open, steady: steadyPlate(b / a) }; // prettier-ignore
}

/** Two lattices, extrapolated in the square of the cell: see `addedMass`, which does the same with three and all motions. */
function onLattice(plan: Plan, density: number): { still: number; solid: number } {
  const counts = [cells / Math.SQRT2, cells].map((count) => wellPlaced(plan, Math.round(count)));
  const rounds = counts.map((count) => {
    const { frame, lattice } = plateLattice(plan, count, []);
    const ours = plateProblem(plan, frame);
    const full = plateProblem({ rectangles: [outlineOf(plan)], holes: [], thickness: plan.thickness }, frame);
    const [heaved, solid] = solvePair(lattice, [{ D: ours.D, v: ours.grip }, { D: full.D, v: full.grip }]); // prettier-ignore
    const sum = (grip: Float64Array, mu: Float64Array): number =>
      density * frame.h ** 2 * grip.reduce((total, part, k) => total + part * mu[k]!, 0);
    return { still: sum(ours.grip, heaved.mu), solid: sum(full.grip, solid.mu) };
  });
  const limit = (of: (round: (typeof rounds)[number]) => number): number => {
    const [u, v] = counts.map((count) => count ** 2) as [number, number];
    return (of(rounds[1]!) * v - of(rounds[0]!) * u) / (v - u);
  };
  return { still: limit((r) => r.still), solid: limit((r) => r.solid) };
}
