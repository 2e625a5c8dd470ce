import type { Model } from '../model.ts';
import { boundedMemo } from '../solve/bounded-memo.ts';
import { closingOrder, type ClosedStep } from '../water/closing-order.ts';
import type { Plan, Rectangle } from '../water/lattice/plan.ts';
import { plateLattice } from '../water/lattice/plate-lattice.ts';
import { wellPlaced } from '../water/lattice/well-placed.ts';
import { waterDensityOf } from '../water/sea-water.ts';
import { heaveAt, heaveCurve, type CurvePoint } from './heave-curve.ts';
import { curveParts } from './hydrodynamics-of.ts';
import { openGrid } from './open-grid.ts';
import { bayOpenings } from '../geometry/bay-openings.ts';
import { planInWater } from '../geometry/plan-in-water.ts';

/** The open grid with one bay closed after the other. SI. */
export interface ClosingGains {
  /** From none closed to all; `still`: added mass at zero amplitude, by which the order is found; `moved`: at the stated motion. */
  readonly steps: readonly { readonly closed: readonly string[]; readonly still: number; readonly moved: CurvePoint | null }[]; // prettier-ignore
  /** The best of all sets of each size, on a grid of few bays. */
  readonly exact: readonly ClosedStep[] | null;
}

/** So few bays that all sets of them are tried. */
const fewBays = 6;
/** Cells along the longer side: steps compare with each other only. */
const cells = 32;
const remembered = boundedMemo<ClosingGains>(12);

/**
 * In which order closing bays gains most added mass (greedy, and exact on a small grid), and added mass and drag after each, clean
 * plate, bays closed without vents. Without a stated motion nothing is moved.
 */
export function closingGains(model: Model): ClosingGains {
  const grid = gridOf(model);
  return remembered(JSON.stringify(grid), () => gainsOf(grid));
}

/** The grid without panels, and the rectangles that would close its bays. */
interface OpenGrid {
  readonly plan: Plan;
  readonly bays: Readonly<Record<string, Rectangle>>;
  readonly density: number;
  readonly amplitude: number | null;
}

const gridOf = (model: Model): OpenGrid => ({
  plan: planInWater(openGrid(model).geometry),
  bays: bayOpenings(model.geometry),
  density: waterDensityOf(model.document),
  amplitude: model.document.hydrodynamics?.motion?.amplitude.si ?? null,
});

function gainsOf(grid: OpenGrid): ClosingGains {
  const { plan, bays, density, amplitude } = grid;
  const order = closingOrder(plan, bays, density, { cells });
  const lattice = plateLattice(plan, wellPlaced(plan, cells));
  const solid = order.at(-1)!.addedMass;
  const moved = (closed: readonly string[]): CurvePoint | null => {
    if (amplitude === null) return null;
    return heaveAt(shutting(grid, closed), lattice, density, amplitude, solid) ?? null;
  };
  return {
    steps: order.map(({ closed, addedMass }) => ({ closed, still: addedMass, moved: moved(closed) })),
    exact: Object.keys(bays).length <= fewBays ? closingOrder(plan, bays, density, { cells, exact: true }) : null,
  };
}

const shutting = ({ plan, bays }: OpenGrid, closed: readonly string[]): Plan => ({
  ...plan,
  rectangles: [...plan.rectangles, ...closed.map((id) => bays[id]!)],
});

/** Added mass and drag of the grid with these bays closed over the amplitudes of the stated motion; empty without one. */
export function curveClosed(model: Model, closed: readonly string[]): readonly CurvePoint[] {
  const grid = gridOf(model);
  const { plan, density, amplitude } = grid;
  if (amplitude === null) return [];
  const lattice = plateLattice(plan, wellPlaced(plan, cells));
  const solid = closingGains(model).steps.at(-1)!.still;
  const amplitudes = curveParts.map((part) => part * amplitude);
  return heaveCurve(shutting(grid, closed), lattice, density, amplitudes, solid).map(({ point }) => point);
}
