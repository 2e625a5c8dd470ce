import type { Model } from '../model.ts';
import { barInCrossFlow } from '../water/bar-in-cross-flow.ts';
import type { Spread } from '../water/spread.ts';

/** Added mass of the plate in its own plane: along x and y, kg, and about the upright axis through the outline's centre, kg·m². */
export interface InPlaneMasses {
  readonly surge: Spread;
  readonly sway: Spread;
  readonly yaw: Spread;
}

/**
 * By two-dimensional bars, since a lattice of doublets square to the plane gives nothing in it: best, each tube across the motion
 * as a bar by itself; low, the plate's outline as one solid bar of the tubes' height, behind whose rim all water stands still;
 * high, each tube as a rib on a wall (half of a bar twice as high), as where panels close one side, none in the lee of another.
 * Ends of bars, water held between tubes and the panels' edges are not counted. Derived here; with growth on every face.
 */
export function inPlaneMasses({ geometry, mass }: Model): InPlaneMasses {
  const { waterDensity: rho, growth } = mass;
  const grown = 2 * (growth?.thickness ?? 0);
  const { x0, x1, y0, y1 } = geometry.extents;
  const closed = geometry.panels.length > 0;
  const none = (): Record<keyof Spread, number> => ({ low: 0, best: 0, high: 0 });
  const sums = { main: none(), cross: none(), yaw: none() };
  let highest = 0;
  for (const { set, section, pieces } of [...geometry.mainTubes, ...geometry.crossTubes]) {
    const [across, along] = [section.height + grown, section.width + grown];
    highest = Math.max(highest, across);
    const best = barInCrossFlow({ across, along, round: section.shape === 'round' }, rho);
    const high = closed ? barInCrossFlow({ across: 2 * across, along }, rho) / 2 : best;
    const middle = set === 'main' ? (x0 + x1) / 2 : (y0 + y1) / 2;
    for (const [from, to] of pieces) {
      const turning = ((to - middle) ** 3 - (from - middle) ** 3) / 3;
      for (const [which, line] of [['best', best], ['high', Math.max(best, high)]] as const) {
        sums[set][which] += line * (to - from);
        sums.yaw[which] += line * turning;
      }
    } // prettier-ignore
  }
  const [a, b] = [x1 - x0 + grown, y1 - y0 + grown];
  const rim = { cross: barInCrossFlow({ across: highest, along: a }, rho), main: barInCrossFlow({ across: highest, along: b }, rho) }; // prettier-ignore
  const spread = ({ best, high }: Record<keyof Spread, number>, low: number): Spread => ({ low: Math.min(low, best), best, high }); // prettier-ignore
  return {
    surge: spread(sums.cross, rim.cross * b),
    sway: spread(sums.main, rim.main * a),
    yaw: spread(sums.yaw, (rim.cross * b ** 3 + rim.main * a ** 3) / 12),
  };
}
