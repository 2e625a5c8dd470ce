/** The dense work of the solver on one arena of doubles. Offsets are in doubles (`rows` and `runs`: in 32-bit integers) from
 *  the start of the arena. Matrices stand by columns.
 *
 *  A front has w own freedoms and b further ones. Its panel has ld = round6(w) + round6(b) rows and w columns: own rows
 *  first, the further ones from row round6(w); the rows between are zero. Its update has round6(b) rows and b columns.
 *  Only what stands on or below the diagonal counts.
 *
 *  Every implementation gives the same bits: each entry subtracts its products one by one in ascending order of the
 *  pivot, each a multiplication and then a subtraction, whatever the blocks and tiles.  */
export interface FrontKernels {
  readonly doubles: Float64Array;
  readonly integers: Int32Array;
  /** Noughts in a front's panel, and in its update on and below the diagonal; above that whatever stood there stays. */
  clear(front: Front): void;
  /** A child's update into its parent's panel and update. runs: pairs (row in the parent, length) in the child's order;
   *  rows of the parent count as in its panel. */
  addUpdate(child: number, b: number, runs: number, runCount: number, parent: Front): void;
  /** Panel ← columns of L, update ← update - L L^T of its rows. diagonal: what stood on the diagonal before anything
   *  was eliminated. Gives the first own freedom whose pivot is not above `least` times that, or -1. */
  factor(front: Front, diagonal: number, least: number, scratch: number): number;
  /** x ← L⁻¹ x of one front. x: the vector; own: where the front's own freedoms stand in it; t: room for ld. */
  lower(front: Front, x: number, own: number, rows: number, t: number): void;
  /** x ← L⁻ᵀ x of one front. */
  upper(front: Front, x: number, own: number, rows: number, t: number): void;
}

export interface Front {
  readonly w: number;
  readonly b: number;
  readonly panel: number;
  readonly update: number;
}

/** Makes an arena of so many doubles; what stands in it is of no account. */
export type MakeKernels = (doubles: number) => FrontKernels;

/** Rows are kept in sixes: a tile is six rows high. */
export const round6 = (n: number): number => 6 * Math.ceil(n / 6);

/** Pivots that are eliminated from the rest of a front at a time. */
export const blockWidth = 72;

/** Doubles of scratch that `factor` needs for fronts of at most so many rows. */
export const factorScratch = (rows: number): number => blockWidth * (rows + 4);
