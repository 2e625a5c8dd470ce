import { gapLoss } from './gap-loss.ts';
import { outlineOf, type Plan } from './lattice/plan.ts';
import type { PlateLattice } from './lattice/plate-lattice.ts';
import { plateProblem } from './lattice/plate-lattice.ts';
import { solveComplex, type ComplexField } from './lattice/solve-complex.ts';
import { openingsOf, openPart } from './openings-of.ts';
import { requirePositive } from '../refusal.ts';
import type { Spread } from './spread.ts';

/** Heave at one amplitude. */
export interface HeaveAt {
  /** m; double amplitude is no amplitude. */
  readonly amplitude: number;
  /** kg, and in potential flow on the same lattice. */
  readonly addedMass: number;
  readonly still: number;
  /** Damping over the angular frequency, kg: what the gaps dissipate. */
  readonly damping: number;
  /** Jump of potential over velocity, each cell, m: re presses with the acceleration, im (negative) against the velocity. */
  readonly jump: ComplexField;
  readonly steps: number;
  readonly iterations: number;
  readonly settled: boolean;
}

/**
 * Heave of a plate whose gaps lose pressure with the square of their velocity, for each amplitude in turn (m, above zero):
 *   Δp = ζ ρ w|w| / 2 through each opening, taken as the linear loss that dissipates the same in a cycle, (4/3π) ζ ρ ω A |w| w,
 * iterated with the velocity of each cell until added mass and damping stand within `within`. Each starts from the one before.
 * At A → 0 this is potential flow, at large A the plate closes. `which` of the losses' spread; density in kg/m³.
 * Theory: Molin, J. Fluids Struct. 15 (2001), for a uniform sheet; here for each gap, with its inertia from the lattice.
 * Openings that reach the rim lose as sharp-edged gaps of the whole outline's open part; the water around it by `edgeDrag`.
 */
export function heaveByAmplitude(
  plan: Plan,
  { frame, lattice }: PlateLattice,
  density: number,
  amplitudes: readonly number[],
  { which = 'best', within = 1e-3 }: { which?: keyof Spread; within?: number } = {},
): readonly HeaveAt[] {
  const { cover, D: potentialD, grip } = plateProblem(plan, frame);
  const t = plan.thickness;
  const n = frame.nx * frame.ny;
  const loss = new Map(openingsOf(plan, cover.patches).map(({ id, tau, hydraulicDiameter }) => [id, gapLoss(tau, t / hydraulicDiameter)[which]])); // prettier-ignore
  // Jump over relative velocity of each cell without loss, and the loss over amplitude and velocity.
  const inertia = new Float64Array(n);
  const zeta = new Float64Array(n);
  const outline = outlineOf(plan);
  const rimLoss = gapLoss(openPart(plan, cover.patches), 0)[which];
  for (let k = 0; k < n; k++) {
    inertia[k] = potentialD[k]! > 0 ? 1 / potentialD[k]! : Infinity;
    const [x, y] = [frame.x + ((k % frame.nx) + 0.5) * frame.h, frame.y + (Math.floor(k / frame.nx) + 0.5) * frame.h];
    const inside = x > outline.x0 && x < outline.x1 && y > outline.y0 && y < outline.y1;
    const own = cover.opening[k] === 0 ? (inside ? rimLoss : undefined) : loss.get(cover.opening[k]!);
    if (own !== undefined && cover.open[k]! > 1e-12) zeta[k] = ((4 / (3 * Math.PI)) * own) / cover.open[k]! ** 2;
  }
  const fresh = (): ComplexField => ({ re: new Float64Array(n), im: new Float64Array(n) });
  const [D, v, mu, K] = [fresh(), fresh(), fresh(), fresh()];
  const resistance = new Float64Array(n);
  const set = (): void => {
    for (let k = 0; k < n; k++) {
      const [a, b] = [inertia[k]!, resistance[k]!];
      if (a === Infinity || a * a + b * b === 0) [D.re[k], D.im[k]] = [a === Infinity ? 0 : Infinity, 0];
      else [D.re[k], D.im[k]] = [a / (a * a + b * b), b / (a * a + b * b)];
      if (D.re[k] === Infinity) [v.re[k], v.im[k]] = [0, 0];
      else [v.re[k], v.im[k]] = [1 - t * D.re[k]!, -t * D.im[k]!];
    }
  };
  const masses = (): [number, number] => {
    let [A, B] = [0, 0];
    for (let k = 0; k < n; k++) {
      A += v.re[k]! * mu.re[k]! - v.im[k]! * mu.im[k]!;
      B -= v.re[k]! * mu.im[k]! + v.im[k]! * mu.re[k]!;
      // What the loss takes along of the water in the gap's height, the walls of the gap feel.
      A += t * (v.re[k]! - grip[k]!);
      B -= t * v.im[k]!;
    }
    return [density * frame.h ** 2 * A, density * frame.h ** 2 * B];
  };
  // Velocity through each cell over the plate's: 1 − K μ. In potential flow first.
  set();
  let iterations = solveComplex(lattice, D, v, mu, K, { tolerance: 1e-3 }).iterations;
  let before = 0;
  const still = masses()[0];
  return amplitudes.map((amplitude) => {
    requirePositive({ amplitude });
    const first = before === 0;
    let [A, B] = first ? [0, 0] : masses();
    let settled = false;
    let steps = 0;
    for (; steps < 40 && !settled; steps++) {
      for (let k = 0; k < n; k++) {
        if (zeta[k] === 0) continue;
        const w = Math.hypot(1 - K.re[k]!, K.im[k]!);
        const now = zeta[k]! * amplitude * w;
        const old = steps === 0 ? (resistance[k]! * amplitude) / (before || amplitude) : resistance[k]!;
        // The square root of old and new: a quadratic loss taken as linear overshoots by as much as it was off.
        resistance[k] = old > 0 ? Math.sqrt(now * old) : now;
      }
      set();
      iterations += solveComplex(lattice, D, v, mu, K, { tolerance: within / 2 }).iterations;
      const [a, b] = masses();
      settled = steps > 0 && Math.abs(a - A) + Math.abs(b - B) <= within * (Math.abs(a) + Math.abs(b));
      [A, B] = [a, b];
    }
    before = amplitude;
    const spent = iterations;
    iterations = 0;
    return { amplitude, still, addedMass: A, damping: B, jump: { re: mu.re.slice(), im: mu.im.slice() }, steps, iterations: spent, settled }; // prettier-ignore
  });
}
