import { refusal } from '../refusal.ts';
import type { HeaveSystem } from './heave-system.ts';

/** Forcing at an instant: force on the float and on the plate (N), water's vertical velocity and acceleration at the plate. */
export interface Forcing {
  F1: number;
  F2: number;
  w: number;
  wDot: number;
}

/** A time history by steps. Arrays of n + 1, SI. */
export interface SteppedResponse {
  readonly dt: number;
  readonly float: Float64Array;
  readonly plate: Float64Array;
  /** Line pull, weight included, N: zero while slack. */
  readonly pull: Float64Array;
  /** Times at which the line went slack, and the largest speed at which it drew tight again, m/s. */
  readonly slackTimes: number;
  readonly snapSpeed: number;
  /** J: what came in; what went into float, link (its spring's store included) and plate; what the bodies store more than
   *  at the start. They balance. */
  readonly energy: {
    readonly in: number;
    readonly float: number;
    readonly link: number;
    readonly plate: number;
    readonly stored: number;
  };
}

/**
 * Steps the two bodies through time by Runge and Kutta's rule of order four, drag and slack as they are:
 *   T = max(−weight, k (z1 − z2) + b (z1′ − z2′))  for a line (it hangs slack at −weight), unbounded for a strut.
 * Works (∫ F v dt) are stepped with the motion, so the balance of energy checks the step.
 * forcing(t, into): fills `into`. start: z1, v1, z2, v2. Refuses a step under which the motion is no longer finite.
 * Error: order dt⁴ while tight; halve dt to see it.
 */
export function steppedResponse(
  system: HeaveSystem,
  forcing: (t: number, into: Forcing) => void,
  {
    dt,
    steps,
    start = [0, 0, 0, 0],
    countFrom = 0,
  }: {
    readonly dt: number;
    readonly steps: number;
    readonly start?: readonly [number, number, number, number];
    /** Step from which slack and snap count: what the start stirs up dies away before. */
    readonly countFrom?: number;
  },
): SteppedResponse {
  const { float: floatBody, plate: own, link } = system;
  const [m1, b1, c1] = floatBody ? [floatBody.mass, floatBody.damping, floatBody.stiffness] : [Infinity, 0, 0];
  const { mass: m2, damping: b2, drag: D, carried: I, weight } = own;
  const { stiffness: k, damping: b } = link;
  const least = link.pushes ? -Infinity : -weight;
  const acting: Forcing = { F1: 0, F2: 0, w: 0, wDot: 0 };
  // state: z1 v1 z2 v2, then works: in, float, link, plate
  const y = Float64Array.of(...start, 0, 0, 0, 0);
  const trial = new Float64Array(8);
  const slopes = [0, 1, 2, 3].map(() => new Float64Array(8));

  const pullOf = (s: Float64Array): number => Math.max(least, k * (s[0]! - s[2]!) + b * (s[1]! - s[3]!));
  const slope = (t: number, s: Float64Array, into: Float64Array): void => {
    forcing(t, acting);
    const [z1, v1, v2] = [s[0]!, s[1]!, s[3]!];
    const T = pullOf(s);
    const u = v2 - acting.w;
    const dragForce = b2 * u + D * u * Math.abs(u);
    into[0] = v1;
    into[1] = (acting.F1 - T - b1 * v1 - c1 * z1) / m1;
    into[2] = v2;
    into[3] = (acting.F2 + I * acting.wDot + T - dragForce) / m2;
    // drag on moving water hands some work back: counted as coming in by the water
    into[4] = (floatBody ? acting.F1 * v1 : 0) + (acting.F2 + I * acting.wDot) * v2 - dragForce * acting.w;
    into[5] = b1 * v1 * v1;
    into[6] = T * (v1 - v2);
    into[7] = dragForce * u;
  };

  const float = new Float64Array(steps + 1);
  const plate = new Float64Array(steps + 1);
  const pull = new Float64Array(steps + 1);
  let [slackTimes, snapSpeed, wasSlack] = [0, 0, false];
  const keep = (n: number): void => {
    float[n] = y[0]!;
    plate[n] = y[2]!;
    const T = pullOf(y);
    pull[n] = weight + T;
    const isSlack = T === least;
    if (n >= countFrom && isSlack && !wasSlack) slackTimes++;
    if (n >= countFrom && !isSlack && wasSlack) snapSpeed = Math.max(snapSpeed, Math.abs(y[1]! - y[3]!));
    wasSlack = isSlack;
  };
  const mechanical = (): number => (floatBody ? (m1 * y[1]! ** 2 + c1 * y[0]! ** 2) / 2 : 0) + (m2 * y[3]! ** 2) / 2;
  const before = mechanical();
  keep(0);
  const [s1, s2, s3, s4] = slopes as [Float64Array, Float64Array, Float64Array, Float64Array];
  for (let n = 0; n < steps; n++) {
    const t = n * dt;
    slope(t, y, s1);
    for (let i = 0; i < 8; i++) trial[i] = y[i]! + (dt / 2) * s1[i]!;
    slope(t + dt / 2, trial, s2);
    for (let i = 0; i < 8; i++) trial[i] = y[i]! + (dt / 2) * s2[i]!;
    slope(t + dt / 2, trial, s3);
    for (let i = 0; i < 8; i++) trial[i] = y[i]! + dt * s3[i]!;
    slope(t + dt, trial, s4);
    for (let i = 0; i < 8; i++) y[i]! += (dt / 6) * (s1[i]! + 2 * s2[i]! + 2 * s3[i]! + s4[i]!);
    keep(n + 1);
  }
  if (!y.every(Number.isFinite))
    throw refusal({
      what: `With a step of ${dt} s the motion is no longer finite`,
      where: { field: 'motion' },
      mend: 'Take a smaller step, or a softer line.',
    });
  return {
    dt,
    float,
    plate,
    pull,
    slackTimes,
    snapSpeed,
    energy: { in: y[4]!, float: y[5]!, link: y[6]!, plate: y[7]!, stored: mechanical() - before },
  };
}
