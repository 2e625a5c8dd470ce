import { gapLoss } from './gap-loss.ts';
import { bestAmong, type Carried } from './lattice/best-among.ts';
import { outlineOf, type Plan } from './lattice/plan.ts';
import type { PlateLattice } from './lattice/plate-lattice.ts';
import { plateProblem } from './lattice/plate-lattice.ts';
import { complexSolver, type ComplexField } from './lattice/solve-complex.ts';
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
 * Heave of a plate whose gaps lose pressure with the square of their velocity, for each amplitude (m, above zero):
 *   Δp = ζ ρ w|w| / 2 through each opening, taken as the linear loss that dissipates the same in a cycle, (4/3π) ζ ρ ω A |w| w,
 * iterated with the velocity of each cell until added mass and damping stand within `within`. Worked from the largest amplitude down,
 * whatever the order asked: each starts with losses drawn on from the two before as powers of the amplitude, and each step from the
 * best sum of its own field and theirs; equations are solved only as far as the losses are settled.
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
    const x = frame.x + ((k % frame.nx) + 0.5) * frame.h;
    const y = frame.y + (Math.floor(k / frame.nx) + 0.5) * frame.h;
    const inside = x > outline.x0 && x < outline.x1 && y > outline.y0 && y < outline.y1;
    const own = cover.opening[k] === 0 ? (inside ? rimLoss : undefined) : loss.get(cover.opening[k]!);
    if (own !== undefined && cover.open[k]! > 1e-12) zeta[k] = ((4 / (3 * Math.PI)) * own) / cover.open[k]! ** 2;
  }
  const fresh = (): ComplexField => ({ re: new Float64Array(n), im: new Float64Array(n) });
  const [D, v, mu, K] = [fresh(), fresh(), fresh(), fresh()];
  const now: Carried = { mu, K };
  const resistance = new Float64Array(n);
  const set = (): void => {
    for (let k = 0; k < n; k++) {
      const a = inertia[k]!;
      const b = resistance[k]!;
      const m = a * a + b * b;
      const re = m === Infinity ? 0 : m === 0 ? Infinity : a / m;
      const im = m === Infinity || m === 0 ? 0 : b / m;
      D.re[k] = re;
      D.im[k] = im;
      v.re[k] = re === Infinity ? 0 : 1 - t * re;
      v.im[k] = -t * im;
    }
  };
  let rest: readonly [number, number] = [0, 0];
  const masses = (): [number, number] => {
    let [A, B] = [rest[0], -rest[1]];
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
  let iterations = 0;
  const solveField = complexSolver(lattice);
  const solve = (tolerance: number): void => {
    const found = solveField(D, v, mu, K, { tolerance, begun: true });
    iterations += found.iterations;
    rest = found.rest;
  };
  solve(5e-3);
  const still = masses()[0];
  /** Resistances and velocities of the step before, and what the two amplitudes before came to. */
  const [stepR, stepW] = [new Float64Array(n), new Float64Array(n)];
  const stood: (Carried & { readonly amplitude: number; readonly resistance: Float64Array })[] = [];
  const copyOf = ({ re, im }: ComplexField): ComplexField => ({ re: re.slice(), im: im.slice() });
  const velocity = (k: number): number => Math.sqrt((1 - K.re[k]!) ** 2 + K.im[k]! ** 2);
  const begin = (amplitude: number): void => {
    const last = stood.at(-1);
    const one = stood.at(-2);
    for (let k = 0; k < n; k++) {
      if (zeta[k] === 0) continue;
      if (!last) resistance[k] = zeta[k]! * amplitude * velocity(k);
      else {
        // with one amplitude behind it: as if the velocities stayed
        const power = one ? within01(Math.log(last.resistance[k]! / one.resistance[k]!) / Math.log(last.amplitude / one.amplitude)) : 1; // prettier-ignore
        resistance[k]! *= (amplitude / last.amplitude) ** power;
      }
    }
  };
  /** Towards ζ A |w|, in the logarithm. A velocity that falls as the resistance to the power −s makes the whole step overshoot by s,
   *  which lies between 0 (water passes anyway) and 1 (pressure drives it): of the step 1 / (1 + s) is right, 2/3 where s is unknown. */
  const step = (amplitude: number, known: boolean): void => {
    for (let k = 0; k < n; k++) {
      if (zeta[k] === 0) continue;
      const old = resistance[k]!;
      const w = velocity(k);
      const now = zeta[k]! * amplitude * w;
      const by = known ? Math.log(old / stepR[k]!) : 0;
      const part = Math.abs(by) > 1e-3 ? 1 / (1 + within01(-Math.log(w / stepW[k]!) / by)) : 2 / 3;
      resistance[k] = old > 0 ? old * (now / old) ** part : now;
      stepR[k] = old;
      stepW[k] = w;
    }
  };
  /** By how much added mass and damping are off at most for losses that do not stand yet, kg: Σ |ζ A |w| − R| |w|², to the first order. */
  const unsettled = (amplitude: number): number => {
    let sum = 0;
    for (let k = 0; k < n; k++) {
      if (zeta[k] === 0) continue;
      const w = velocity(k);
      sum += Math.abs(zeta[k]! * amplitude * w - resistance[k]!) * w * w;
    }
    return density * frame.h ** 2 * sum;
  };
  // What is left of the equations counts by its square. With this, `within` 1e-3, plans of bars, strips and holes came within 0.5e-3.
  const exact = 4 * within;
  for (const amplitude of amplitudes) requirePositive({ amplitude });
  const found = new Map<number, HeaveAt>();
  for (const amplitude of [...new Set(amplitudes)].sort((a, b) => b - a)) {
    begin(amplitude);
    let [A, B, off, steps, settled] = [0, 0, Infinity, 0, false];
    for (; steps < 40 && !settled; steps++) {
      if (steps > 0) step(amplitude, steps > 1);
      set();
      bestAmong(steps > 0 ? [now, ...stood] : stood, D, v, now);
      const tolerance = Math.max(exact, Math.min(0.1, off / 2));
      solve(tolerance);
      [A, B] = masses();
      off = unsettled(amplitude) / (Math.abs(A) + Math.abs(B));
      settled = off <= within / 2 && tolerance <= exact;
    }
    const jump = copyOf(mu);
    stood.push({ amplitude, resistance: resistance.slice(), mu: jump, K: copyOf(K) });
    if (stood.length > 2) stood.shift();
    const spent = iterations;
    iterations = 0;
    found.set(amplitude, { amplitude, still, addedMass: A, damping: B, jump, steps, iterations: spent, settled });
  }
  return amplitudes.map((amplitude) => found.get(amplitude)!);
}

/** From 0 to 1; 1 of what is no number, of a cell through which nothing moves. */
const within01 = (value: number): number => (value > 0 ? Math.min(1, value) : value <= 0 ? 0 : 1);
