import { refusal } from '../refusal.ts';
import { edgeDrag } from './edge-drag.ts';
import { gapDrag, rimPart } from './gap-and-rim.ts';
import { outlineOf, type Plan } from './lattice/plan.ts';
import type { PlateLattice } from './lattice/plate-lattice.ts';
import { heaveByAmplitude, type HeaveAt } from './moving-plate.ts';
import type { Spread } from './spread.ts';

/** What holds for all amplitudes of a plate, kg. */
export interface PlateWater {
  readonly density: number;
  /** Added mass of the solid plate of the same outline, and of this plate in potential flow, as found on the finest lattices. */
  readonly solid: number;
  readonly still: number;
}

/** Added mass (kg) and drag coefficient on the outline at one amplitude, each with its spread. */
export interface HeaveSpread {
  readonly amplitude: number;
  readonly addedMass: Spread;
  readonly drag: Spread;
  /** Of the drag: by the gaps, and by the edges, at their best. */
  readonly gaps: number;
  readonly edge: number;
  /** Why the edges' drag is not known at this amplitude. */
  readonly outside: string | null;
  /** Solutions with the least, the best and the largest losses. */
  readonly ways: Readonly<Record<keyof Spread, HeaveAt>>;
}

/**
 * Added mass and drag at rising amplitudes (m), each with the least, the best and the largest losses of gaps and edges. The rim
 * sheds by its part of the solid plate's pressure jump (best), by the square of that part at least, and as a solid plate at most.
 * Refuses an amplitude at which the losses do not settle.
 */
export function heaveSpreads(
  plan: Plan,
  lattice: PlateLattice,
  { density, solid, still }: PlateWater,
  amplitudes: readonly number[],
): readonly HeaveSpread[] {
  const { x0, x1, y0, y1 } = outlineOf(plan);
  const [a, b] = [Math.min(x1 - x0, y1 - y0), Math.max(x1 - x0, y1 - y0)];
  // From potential flow at once, the iteration would take longer: it starts at a tenth of the first.
  const from = [...(amplitudes.length > 0 ? [amplitudes[0]! / 10] : []), ...amplitudes];
  const found = (which: keyof Spread) => heaveByAmplitude(plan, lattice, density, from, { which }).slice(1);
  const [low, best, high] = [found('low'), found('best'), found('high')];
  return amplitudes.map((amplitude, i): HeaveSpread => {
    const ways = { low: low[i]!, best: best[i]!, high: high[i]! };
    if (!ways.low.settled || !ways.best.settled || !ways.high.settled)
      throw refusal({ what: `The losses of the gaps did not settle at an amplitude of ${amplitude} m`, where: { field: 'amplitude' }, mend: 'Give another amplitude, and report this plan.' }); // prettier-ignore
    const mass = (of: HeaveAt): number => still + of.addedMass - of.still;
    const gap = (of: HeaveAt): number => gapDrag(of.damping, density, a * b, amplitude);
    const edge = edgeDrag((2 * Math.PI * amplitude) / a, b / a);
    const part = rimPart(mass(ways.best), ways.best.damping, solid);
    const gaps = [gap(ways.low), gap(ways.best), gap(ways.high)];
    return {
      amplitude,
      addedMass: { low: Math.min(mass(ways.low), mass(ways.high)), best: mass(ways.best), high: Math.max(mass(ways.low), mass(ways.high)) }, // prettier-ignore
      drag: { low: Math.min(...gaps) + edge.low * part ** 2, best: gap(ways.best) + edge.best * part, high: Math.max(...gaps) + edge.high }, // prettier-ignore
      gaps: gap(ways.best),
      edge: edge.best * part,
      outside: edge.outside,
      ways,
    };
  });
}
