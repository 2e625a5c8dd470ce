import { refusal } from '../refusal.ts';
import type { Patches } from './lattice/patches.ts';
import { outlineOf, type Plan } from './lattice/plan.ts';
import { openWithin } from './openings-of.ts';

/**
 * Added-mass coefficient C_A of a thin rectangular plate square to its motion, m = C_A ρ (π/4) a² b, a the shorter side;
 * aspect = b / a from 1. Between the rows linear in a / b, which the values nearly are.
 * Source: DNV-RP-C205, appendix D, from memory; at 3 the value of three independent panel methods, 0.832, where 0.830 is recalled.
 */
export function thinPlateCoefficient(aspect: number): number {
  const rows = [[1, 0.579], [1.25, 0.642], [1.5, 0.69], [2, 0.757], [2.5, 0.801], [3, 0.832], [4, 0.872], [5, 0.897], [10, 0.947], [Infinity, 1]] as const; // prettier-ignore
  const k = Math.min(rows.length - 2, rows.filter(([at]) => at <= aspect).length - 1);
  const [[b0, c0], [b1, c1]] = [rows[k]!, rows[k + 1]!];
  return c0 + ((1 / aspect - 1 / b0) / (1 / b1 - 1 / b0)) * (c1 - c0);
}

/**
 * Part of the solid plate's added mass that a plate with openings has by its open part p (0 to 0.5) alone: 1 up to 5 %,
 * 0.7 + 0.3 cos(π (100 p − 5) / 34) up to 34 %, exp((10 − 100 p) / 28) up to 50 %; null beyond, where there is no rule.
 * It stands for motions as large as in the tests behind it, and knows no amplitude and no size of the openings.
 * Source: DNV-RP-N103, simplified method, from memory; its branches join to 1.7 % at 34 %.
 */
export function openAreaRule(p: number): number | null {
  const percent = 100 * p;
  if (percent <= 5) return 1;
  if (percent < 34) return 0.7 + 0.3 * Math.cos((Math.PI * (percent - 5)) / 34);
  return percent <= 50 ? Math.exp((10 - percent) / 28) : null;
}

/**
 * Inertial length C, m, of an endless thin screen: the potential jumps by 2 C w across it.
 * Gaps along all of it (width g, pitch L): C = (L/π) ln cosec(π g / 2L) (lattice result in Lamb and Sedov).
 * Square holes: table by their side over the pitch (Fourier solution, ±0.1 %, derived for this project), outside it the limits of
 * small holes and thin bars by its end values' trend.
 */
export function screenLength(kind: 'gaps' | 'holes', side: number, pitch: number): number {
  const part = side / pitch;
  if (!(part > 0 && part < 1))
    throw refusal({ what: `An opening of ${side} m in a pitch of ${pitch} m makes no screen`, mend: 'Give an opening narrower than its pitch.' }); // prettier-ignore
  if (kind === 'gaps') return (-pitch / Math.PI) * Math.log(Math.sin((Math.PI * part) / 2));
  const rows = [1.5557, 0.8407, 0.4909, 0.2894, 0.164, 0.0841, 0.0348, 0.0082];
  const at = (part - 0.2) * 10;
  const k = Math.max(0, Math.min(rows.length - 2, Math.floor(at)));
  // Small holes act by their conductivity 1.15 a: C / L → L / (2.3 a) less a constant; ln C is nearly linear in between.
  if (at < 0) return pitch * (rows[0]! + (1 / part - 5) / 2.3);
  return pitch * Math.exp(Math.log(rows[k]!) + (at - k) * Math.log(rows[k + 1]! / rows[k]!));
}

/** The screen that a plan is nearest to: what its openings are, their mean pitch and side. Null without openings. */
export function screenOf(plan: Plan, patches: Patches): { kind: 'gaps' | 'holes'; side: number; pitch: number } | null {
  const o = outlineOf(plan);
  const [width, height] = [o.x1 - o.x0, o.y1 - o.y0];
  const bounded = patches.openings.slice(1).reduce((sum, { area }) => sum + area, 0);
  const round = plan.holes.reduce((sum, { diameter }) => sum + (Math.PI / 4) * diameter ** 2, 0);
  const all = openWithin(patches, o) + round;
  if (all <= 0) return null;
  if (bounded + round > all / 2) {
    const count = patches.openings.length - 1 + plan.holes.length;
    const pitch = Math.sqrt((width * height) / count);
    return { kind: 'holes', side: Math.sqrt((bounded + round) / count), pitch };
  }
  // Slats: the gaps that a line across the middle meets, across x or across y.
  const across = (from: number, to: number, cuts: readonly number[], openAt: (at: number) => boolean) => {
    // prettier-ignore
    const inside = cuts.filter((c) => c >= from && c <= to);
    let [count, open, last] = [0, 0, false];
    for (let k = 0; k + 1 < inside.length; k++) {
      const here = openAt((inside[k]! + inside[k + 1]!) / 2);
      if (here) open += inside[k + 1]! - inside[k]!;
      if (here && !last) count++;
      last = here;
    }
    return { count, open };
  };
  const { X, Y, solid } = patches;
  const isOpen = (x: number, y: number): boolean =>
    !solid[(Y.filter((at) => at <= y).length - 1) * (X.length - 1) + (X.filter((at) => at <= x).length - 1)];
  const [xm, ym] = [o.x0 + 0.5003 * width, o.y0 + 0.5003 * height];
  const alongX = across(o.x0, o.x1, X, (x) => isOpen(x, ym));
  const alongY = across(o.y0, o.y1, Y, (y) => isOpen(xm, y));
  const [line, breadth] = alongX.count >= alongY.count ? [alongX, width] : [alongY, height];
  if (line.count === 0) return null;
  return { kind: 'gaps', side: line.open / (line.count + 1), pitch: breadth / (line.count + 1) };
}
