import { requirePositive } from '../refusal.ts';

/** Force of the water on a plate that moves as a sine. */
export interface MotionForce {
  /** Amplitudes of inertia and of drag, and the peak of both together, N. */
  readonly inertia: number;
  readonly drag: number;
  readonly peak: number;
  /** By how much the peak follows that of inertia, rad. */
  readonly phase: number;
}

/**
 * x = a sin ωt: F = A ω² a sin ωt − ρ Cd S (ω a)² |cos ωt| cos ωt / 2. mass A in kg, CdS in m², density in kg/m³, SI.
 * Source: Morison's sum for a body moved in still water (Sarpkaya and Isaacson, 1981); peak derived here.
 */
export function forceOfMotion(
  mass: number,
  CdS: number,
  density: number,
  amplitude: number,
  period: number,
): MotionForce {
  requirePositive({ mass, amplitude, period });
  const omega = (2 * Math.PI) / period;
  return forceOfCycle(mass * omega ** 2 * amplitude, 0.5 * density * CdS * (omega * amplitude) ** 2);
}

/**
 * Amplitudes of inertia I and of drag D, N, to the peak of I sin θ + D cos² θ over the quarter in which both press the same
 * way: at the end of the stroke while 2 D ≤ I, else D + I² / (4 D) at sin θ = I / (2 D).
 */
export function forceOfCycle(inertia: number, drag: number): MotionForce {
  const s = drag > 0 ? inertia / (2 * drag) : Infinity;
  return s >= 1
    ? { inertia, drag, peak: inertia, phase: 0 }
    : { inertia, drag, peak: drag + inertia ** 2 / (4 * drag), phase: Math.PI / 2 - Math.asin(s) };
}

/** Acceleration (m/s²) and velocity times its own size (m²/s²) at one time. */
export type Moving = readonly [a: number, vv: number];

/**
 * The pair at each reading x (m, `step` s apart) but two at either end, by differences over five readings: at eight readings a cycle
 * 0.4 % short in acceleration and 1.3 % in velocity, at sixteen a tenth of that or less. Refuses fewer than 5 readings.
 */
export function movingPairs(x: Float64Array, step: number): Moving[] {
  requirePositive({ step, 'number of readings above 4': x.length - 4 });
  return Array.from({ length: x.length - 4 }, (_, i): Moving => {
    const [p, q, r, s, t] = [x[i]!, x[i + 1]!, x[i + 2]!, x[i + 3]!, x[i + 4]!];
    const v = (p - 8 * q + 8 * s - t) / (12 * step);
    return [(-p + 16 * q - 30 * r + 16 * s - t) / (12 * step ** 2), Math.abs(v) * v];
  });
}

/**
 * The outermost of all pairs of a recorded motion and their opposites, in order about the middle: a force of inertia and drag is
 * a plane over the pairs, so its largest over the record lies at one of these whatever A and C_d are. Found as the convex hull
 * (Andrew 1979, monotone chain); the half with a > 0, or a = 0 and vv > 0, is given, since the other is its mirror image.
 */
export function outermost(pairs: readonly Moving[]): Moving[] {
  const sorted = [...pairs, ...pairs.map(([p, q]): Moving => [-p, -q])].sort((p, q) => p[0] - q[0] || p[1] - q[1]);
  const turns = (o: Moving, p: Moving, q: Moving) => (p[0] - o[0]) * (q[1] - o[1]) - (p[1] - o[1]) * (q[0] - o[0]);
  const chain = (points: readonly Moving[]): Moving[] => {
    const kept: Moving[] = [];
    for (const point of points) {
      while (kept.length > 1 && turns(kept.at(-2)!, kept.at(-1)!, point) <= 0) kept.pop();
      kept.push(point);
    }
    return kept.slice(0, -1);
  };
  return [...chain(sorted), ...chain(sorted.reverse())].filter(([p, q]) => p > 0 || (p === 0 && q > 0));
}

/** The largest force on the plate over a recorded motion, N, and what of it is inertia and drag at that time. */
export function forceOfPairs(pairs: readonly Moving[], mass: number, CdS: number, density: number): MotionForce {
  requirePositive({ 'number of pairs': pairs.length, mass });
  const parts = pairs.map(([a, vv]) => [mass * a, 0.5 * density * CdS * vv] as const);
  const worst = parts.reduce((most, now) => (Math.abs(now[0] + now[1]) > Math.abs(most[0] + most[1]) ? now : most));
  const [inertia, drag] = [
    Math.max(...parts.map(([i]) => Math.abs(i))),
    Math.max(...parts.map(([, d]) => Math.abs(d))),
  ];
  // As of a sine: from the largest acceleration, whose part is all, to the largest speed, whose acceleration is none.
  const phase = Math.acos(Math.min(1, Math.abs(worst[0]) / inertia));
  return { inertia, drag, peak: Math.abs(worst[0] + worst[1]), phase };
}
