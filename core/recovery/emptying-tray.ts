import { dischargeCoefficient, drainTime } from '../mass/drain-time.ts';
import { requirePositive } from '../refusal.ts';
import { g } from '../water/sea-water.ts';

/** A tray that empties: how much is in it, and how much has run out, at equal steps. SI. */
export interface Emptying {
  readonly time: Float64Array;
  readonly inside: Float64Array;
  readonly outside: Float64Array;
}

/**
 * Emptying by time steps (fourth-order Runge–Kutta on the head): A dh/dt = −C_d a √(2 g h). What runs out is summed by itself from
 * the flow through the hole, so that inside and outside together tell whether water was lost.
 */
export function emptyingTray(area: number, height: number, hole: number, until: number, steps = 400): Emptying {
  requirePositive({ area, height, hole, until });
  const flow = (h: number): number => dischargeCoefficient * hole * Math.sqrt(2 * g * Math.max(0, h));
  const dt = until / steps;
  const time = new Float64Array(steps + 1);
  const inside = new Float64Array(steps + 1);
  const outside = new Float64Array(steps + 1);
  let h = height;
  inside[0] = area * height;
  for (let i = 1; i <= steps; i++) {
    const q1 = flow(h);
    const q2 = flow(h - (q1 * dt) / (2 * area));
    const q3 = flow(h - (q2 * dt) / (2 * area));
    const q4 = flow(h - (q3 * dt) / area);
    const q = (q1 + 2 * q2 + 2 * q3 + q4) / 6;
    const out = Math.min(q * dt, area * h);
    h -= out / area;
    time[i] = i * dt;
    inside[i] = area * h;
    outside[i] = outside[i - 1]! + out;
  }
  return { time, inside, outside };
}

/** Open area, m², through which a tray empties within a time: the hole of `drainTime` turned round. */
export function holeFor(area: number, height: number, time: number): number {
  requirePositive({ time });
  return drainTime({ area, hole: 1, height, drive: g }) / time;
}
