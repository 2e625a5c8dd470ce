import { cover, type Cover, type LatticeFrame } from './cover.ts';
import { doubletKernel, type Image } from './doublet-kernel.ts';
import { lattice, type Lattice } from './lattice.ts';
import { outlineOf, type Plan } from './plan.ts';

/** A lattice laid over the outline of a plan, and a margin where water moves through the height of its edges. */
export interface PlateLattice {
  readonly frame: LatticeFrame;
  readonly lattice: Lattice;
}

/**
 * n: cells along the longer side, each of h = side / (n + 1/2), so that both its ends fall on the lattice's own (see `cover`).
 * The margin is three times the thickness wide: what lies further out moves the result by less than 0.1 %.
 */
export function plateLattice(plan: Plan, n: number, images: readonly Image[] = []): PlateLattice {
  const { x0, x1, y0, y1 } = outlineOf(plan);
  const h = Math.max(x1 - x0, y1 - y0) / (n + 0.5);
  const margin = Math.ceil((3 * plan.thickness) / h);
  const cells = (length: number): number => Math.ceil(length / h - 0.5 - 1e-9) + 2 * margin;
  const [nx, ny] = [cells(x1 - x0), cells(y1 - y0)];
  const frame = { nx, ny, h, x: (x0 + x1 - nx * h) / 2, y: (y0 + y1 - ny * h) / 2 };
  return { frame, lattice: lattice(nx, ny, h, doubletKernel(h, images)) };
}

/** A plan as the equations see it. */
export interface PlateProblem {
  readonly cover: Cover;
  /** Jump of potential through each cell is (μ + t) D for the relative velocity: the thin opening and the water in its height in a row. */
  readonly D: Float64Array;
  /** Part of a unit motion that a cell takes, and of its pressure that the plate feels: 1 − t D. */
  readonly grip: Float64Array;
}

/**
 * Water in an opening between tubes of height t moves with its own velocity over that height, which adds t w / open to the jump
 * of potential: cells in openings become unknowns with D = open / t, which nothing drives and whose pressure no plate feels.
 * Held against two-dimensional bars, t = 0 to t = width: high by 0.8 to 5 %. Derived here.
 */
export function plateProblem(plan: Plan, frame: LatticeFrame): PlateProblem {
  const laid = cover(plan, frame);
  const t = plan.thickness;
  if (t === 0) return { cover: laid, D: laid.D, grip: Float64Array.from(laid.D, (d) => (d < Infinity ? 1 : 0)) };
  const D = laid.D.map((d, k) => (d === 0 ? 0 : 1 / (1 / d + t / laid.open[k]!)));
  return { cover: laid, D, grip: D.map((d) => Math.max(0, 1 - t * d)) };
}
