import { harmonicHistory } from '../../core/motion/sea-history.ts';
import { steppedResponse } from '../../core/motion/stepped-response.ts';
import type { HeaveSystem } from '../../core/motion/heave-system.ts';
import { interleaved } from './interleaved.ts';
import type { Measure } from './measure.ts';

const dt = 0.02;
const steps = 3600 / dt;
const omega = (2 * Math.PI) / 7;
const rho = 1024;
/** Float of 90 t and plate of 22 t with the water about them, joined by 20 kN/m and 40 kN·s/m. */
const [m1, b1, c1, k, b, m2, drag, carried, weight] = [90e3, 15e3, 180e3, 20e3, 40e3, 22e3, 0.5 * rho * 6.8 * 8.4, 18e3, 13e3]; // prettier-ignore
const [force, water] = [80e3, 0.12];
const system: HeaveSystem = {
  float: { mass: m1, damping: b1, stiffness: c1 },
  plate: { mass: m2, damping: 0, drag, carried, weight },
  link: { stiffness: k, damping: b, pushes: false },
};

/** An hour of motion at 0.02 s, over the same right-hand side and the same rule written out by hand. */
export function motionBench(): readonly Measure[] {
  const times = interleaved({ engine: byEngine, hand: byHand }, 7);
  const ratio = times.engine / times.hand;
  return [
    {
      name: 'an hour of float and plate by steps of 0.02 s, over the same right-hand side in a loop by hand',
      ...{ ratio, goal: 2, met: ratio <= 2, milliseconds: times.engine },
    },
  ];
}

/** Heights of the plate by the engine. */
export const byEngine = (): Float64Array =>
  steppedResponse(system, harmonicHistory(omega, { float: [force, 0], plate: [0, 0], water: [0, water] }), { dt, steps }).plate; // prettier-ignore

/** Heights of the plate by Runge and Kutta's rule of order four; no energy, no pull, no slack counted. */
export function byHand(): Float64Array {
  const plate = new Float64Array(steps + 1);
  let [z1, v1, z2, v2] = [0, 0, 0, 0];
  const slope = new Float64Array(2);
  const accelerations = (t: number, p1: number, q1: number, p2: number, q2: number): void => {
    const [c, s] = [Math.cos(omega * t), Math.sin(omega * t)];
    const u = q2 + water * s;
    const T = Math.max(-weight, k * (p1 - p2) + b * (q1 - q2));
    slope[0] = (force * c - T - b1 * q1 - c1 * p1) / m1;
    slope[1] = (T - carried * omega * water * c - drag * u * Math.abs(u)) / m2;
  };
  for (let n = 0; n < steps; n++) {
    const t = n * dt;
    const h = dt / 2;
    accelerations(t, z1, v1, z2, v2);
    const [a1, a2] = [slope[0]!, slope[1]!];
    const [va1, va2] = [v1 + h * a1, v2 + h * a2];
    accelerations(t + h, z1 + h * v1, va1, z2 + h * v2, va2);
    const [e1, e2] = [slope[0]!, slope[1]!];
    const [vb1, vb2] = [v1 + h * e1, v2 + h * e2];
    accelerations(t + h, z1 + h * va1, vb1, z2 + h * va2, vb2);
    const [d1, d2] = [slope[0]!, slope[1]!];
    const [vc1, vc2] = [v1 + dt * d1, v2 + dt * d2];
    accelerations(t + dt, z1 + dt * vb1, vc1, z2 + dt * vb2, vc2);
    z1 += (dt / 6) * (v1 + 2 * va1 + 2 * vb1 + vc1);
    z2 += (dt / 6) * (v2 + 2 * va2 + 2 * vb2 + vc2);
    v1 += (dt / 6) * (a1 + 2 * e1 + 2 * d1 + slope[0]!);
    v2 += (dt / 6) * (a2 + 2 * e2 + 2 * d2 + slope[1]!);
    plate[n + 1] = z2;
  }
  return plate;
}
