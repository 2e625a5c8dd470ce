import { gapLoss } from './gap-loss.ts';
import type { Cover, LatticeFrame } from './lattice/cover.ts';
import { outlineOf, type Plan } from './lattice/plan.ts';
import { openingsOf, openPart } from './openings-of.ts';
import type { Spread } from './spread.ts';

/** The cells through whose opening water loses pressure: which, and for each its loss over amplitude and velocity, (4/3π) ζ on the
 *  cell's own mean velocity. */
export interface LosingCells {
  readonly cells: Int32Array;
  readonly zeta: Float64Array;
}

/** Each opening by its own loss; what reaches the rim as a sharp edge of the whole outline's open part; water outside it not at all. */
export function losingCells(plan: Plan, frame: LatticeFrame, cover: Cover, which: keyof Spread): LosingCells {
  const loss = new Map(
    openingsOf(plan, cover.patches).map(({ id, tau, hydraulicDiameter }) => [
      id,
      gapLoss(tau, plan.thickness / hydraulicDiameter)[which],
    ]),
  );
  const rim = gapLoss(openPart(plan, cover.patches), 0)[which];
  const outline = outlineOf(plan);
  const [cells, zeta]: [number[], number[]] = [[], []];
  cover.opening.forEach((opening, k) => {
    const x = frame.x + ((k % frame.nx) + 0.5) * frame.h;
    const y = frame.y + (Math.floor(k / frame.nx) + 0.5) * frame.h;
    const inside = x > outline.x0 && x < outline.x1 && y > outline.y0 && y < outline.y1;
    const own = opening === 0 ? (inside ? rim : undefined) : loss.get(opening);
    if (own === undefined || !(cover.open[k]! > 1e-12)) return;
    cells.push(k);
    zeta.push(((4 / (3 * Math.PI)) * own) / cover.open[k]! ** 2);
  });
  return { cells: Int32Array.from(cells), zeta: Float64Array.from(zeta) };
}
