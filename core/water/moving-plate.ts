import { bestAmong, type Carried } from './lattice/best-among.ts';
import type { Plan } from './lattice/plan.ts';
import type { PlateLattice } from './lattice/plate-lattice.ts';
import { plateProblem } from './lattice/plate-lattice.ts';
import { complexSolver, type ComplexField } from './lattice/solve-complex.ts';
import { losingCells } from './losing-cells.ts';
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
  const { cover, D: potential, grip } = plateProblem(plan, frame);
  const t = plan.thickness;
  const n = frame.nx * frame.ny;
  const { cells, zeta } = losingCells(plan, frame, cover, which);
  const fresh = (): ComplexField => ({ re: new Float64Array(n), im: new Float64Array(n) });
  const [D, v, mu, K] = [fresh(), fresh(), fresh(), fresh()];
  const now: Carried = { mu, K };
  const put = (k: number, re: number, im: number): void => {
    D.re[k] = re;
    D.im[k] = im;
    v.re[k] = re === Infinity ? 0 : 1 - t * re;
    v.im[k] = -t * im;
  };
  potential.forEach((d, k) => put(k, d, 0));
  /** Of each losing cell: the loss of its jump over the relative velocity, beside the inertia 1 / `potential`. */
  const resistance = new Float64Array(cells.length);
  const set = (): void => {
    cells.forEach((k, c) => {
      const a = 1 / potential[k]!;
      const b = resistance[c]!;
      const m = a * a + b * b;
      if (m === Infinity) put(k, 0, 0);
      else if (m === 0) put(k, Infinity, 0);
      else put(k, a / m, b / m);
    });
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
  const [stepR, stepW] = [new Float64Array(cells.length), new Float64Array(cells.length)];
  const stood: (Carried & { readonly amplitude: number; readonly resistance: Float64Array })[] = [];
  const copyOf = ({ re, im }: ComplexField): ComplexField => ({ re: re.slice(), im: im.slice() });
  const velocity = (c: number): number => Math.sqrt((1 - K.re[cells[c]!]!) ** 2 + K.im[cells[c]!]! ** 2);
  const begin = (amplitude: number): void => {
    const last = stood.at(-1);
    const one = stood.at(-2);
    for (let c = 0; c < cells.length; c++) {
      if (!last) resistance[c] = zeta[c]! * amplitude * velocity(c);
      else {
        // with one amplitude behind it: as if the velocities stayed
        const power = one ? within01(Math.log(last.resistance[c]! / one.resistance[c]!) / Math.log(last.amplitude / one.amplitude)) : 1; // prettier-ignore
        resistance[c]! *= (amplitude / last.amplitude) ** power;
      }
    }
  };
  /** Towards ζ A |w|, in the logarithm. A velocity that falls as the resistance to the power −s makes the whole step overshoot by s,
   *  which lies between 0 (water passes anyway) and 1 (pressure drives it): of the step 1 / (1 + s) is right, 2/3 where s is unknown. */
  const step = (amplitude: number, known: boolean): void => {
    for (let c = 0; c < cells.length; c++) {
      const old = resistance[c]!;
      const w = velocity(c);
      const now = zeta[c]! * amplitude * w;
      const by = known ? Math.log(old / stepR[c]!) : 0;
      const part = Math.abs(by) > 1e-3 ? 1 / (1 + within01(-Math.log(w / stepW[c]!) / by)) : 2 / 3;
      resistance[c] = old > 0 ? old * (now / old) ** part : now;
      stepR[c] = old;
      stepW[c] = w;
    }
  };
  /** By how much added mass and damping are off at most for losses that do not stand yet, kg: Σ |ζ A |w| − R| |w|², to the first order. */
  const unsettled = (amplitude: number): number => {
    let sum = 0;
    for (let c = 0; c < cells.length; c++) {
      const w = velocity(c);
      sum += Math.abs(zeta[c]! * amplitude * w - resistance[c]!) * w * w;
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
