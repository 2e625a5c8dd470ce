import { erf } from 'mathjs/number';
import type { SeaWindow } from './sea-windows.ts';

/** Windows of two deployments in which the sea was alike. */
export interface LikeSeas {
  /** Float's significant double amplitude and mean period of all windows in it, mean. */
  readonly float: number;
  readonly period: number;
  /** Mean of the plate's motion over the float's, its standard error, and windows. */
  readonly a: Told;
  readonly b: Told;
  /** Probability that a's plate truly moves more. */
  readonly larger: number;
}
interface Told {
  readonly ratio: number;
  readonly error: number;
  readonly windows: number;
}

/** Seas are alike within this ratio of height and of period. */
const alike = { height: 1.35, period: 1.2 };

/**
 * Two deployments at like seas: their windows in cells of equal ratio by the float's motion and period, about the middle of
 * all; a cell counts where each has three windows or more. The probability is that of two means, windows taken as independent and normal:
 *   P = Φ((r_a − r_b) / √(e_a² + e_b²)),  e = s / √n.
 * Gives no cell where the seas were never alike. What clocks and scales leave open is not in it: it is common to all windows
 * of a deployment. Source: textbook statistics of two means.
 */
export function compareDeployments(a: readonly SeaWindow[], b: readonly SeaWindow[]): LikeSeas[] {
  const all = [...a, ...b];
  if (all.length === 0) return [];
  const place = (of: (one: SeaWindow) => number, ratio: number): ((one: SeaWindow) => number) => {
    const middle = all.map(of).sort((x, y) => x - y)[all.length >> 1]!;
    return (one) => Math.round(Math.log(of(one) / middle) / Math.log(ratio));
  };
  const [byHeight, byPeriod] = [place(({ float }) => float, alike.height), place(({ period }) => period, alike.period)];
  const cell = (one: SeaWindow): string => `${byHeight(one)} ${byPeriod(one)}`;
  const keys = [...new Set(a.map(cell))];
  return keys
    .flatMap((key): LikeSeas[] => {
      const [own, other] = [a, b].map((windows) => windows.filter((one) => cell(one) === key)) as [SeaWindow[], SeaWindow[]]; // prettier-ignore
      if (own.length < 3 || other.length < 3) return [];
      const both = [...own, ...other];
      const [x, y] = [toldOf(own), toldOf(other)];
      const spread = Math.hypot(x.error, y.error);
      const larger = spread === 0 ? (x.ratio === y.ratio ? 0.5 : Number(x.ratio > y.ratio)) : (1 + erf((x.ratio - y.ratio) / spread / Math.SQRT2)) / 2; // prettier-ignore
      return [{ float: mean(both.map(({ float }) => float)), period: mean(both.map(({ period }) => period)), a: x, b: y, larger }]; // prettier-ignore
    })
    .sort((one, other) => one.float - other.float);
}

function toldOf(windows: readonly SeaWindow[]): Told {
  const ratios = windows.map(({ plate, float }) => plate / float);
  const ratio = mean(ratios);
  const variance = ratios.reduce((sum, r) => sum + (r - ratio) ** 2, 0) / (ratios.length - 1);
  return { ratio, error: Math.sqrt(variance / ratios.length), windows: ratios.length };
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
