import { countedRandom } from '../counted-random.ts';
import type { Complex } from './heave-system.ts';
import type { Forcing } from './stepped-response.ts';
import type { Transfer } from './stochastic-response.ts';

/**
 * A sea state as a history: components of equal width in frequency with random phases from a seed, each at a random place
 * in its band so that the history does not repeat.  ζ(t) = Σ √(2 S Δω) cos(ω t + φ)
 * Gives a forcing for `steppedResponse`, tabled at half steps: asked between them, it gives the nearer.
 * Source: random phase method, DNV-RP-C205, 3.3.2 (from memory).
 */
export function seaHistory(
  S: (omega: number) => number,
  [low, high]: readonly [number, number],
  transfer: Transfer,
  {
    dt,
    steps,
    components,
    seed,
  }: { readonly dt: number; readonly steps: number; readonly components: number; readonly seed: number },
): (t: number, into: Forcing) => void {
  const width = (high - low) / components;
  const n = 2 * steps + 1;
  const [F1, w, wDot] = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
  for (let c = 0; c < components; c++) {
    const omega = low + (c + countedRandom(seed, 2 * c)) * width;
    const a = Math.sqrt(2 * S(omega) * width);
    const phase = 2 * Math.PI * countedRandom(seed, 2 * c + 1);
    if (a === 0) continue;
    const { float, water } = transfer(omega);
    // e^{i(ωt + φ)} is turned on by half a step at a time
    const [turnRe, turnIm] = [Math.cos((omega * dt) / 2), Math.sin((omega * dt) / 2)];
    let [re, im] = [a * Math.cos(phase), a * Math.sin(phase)];
    for (let i = 0; i < n; i++) {
      F1[i]! += float[0] * re - float[1] * im;
      w[i]! += water[0] * re - water[1] * im;
      wDot[i]! -= omega * (water[0] * im + water[1] * re);
      [re, im] = [re * turnRe - im * turnIm, re * turnIm + im * turnRe];
    }
  }
  return (t, into) => {
    const i = Math.round((2 * t) / dt);
    into.F1 = F1[i]!;
    into.F2 = 0;
    into.w = w[i]!;
    into.wDot = wDot[i]!;
  };
}

/** The forcing of one harmonic wave as a function of time. */
export function harmonicHistory(
  omega: number,
  { float, plate, water }: { readonly float: Complex; readonly plate: Complex; readonly water: Complex },
): (t: number, into: Forcing) => void {
  return (t, into) => {
    const [c, s] = [Math.cos(omega * t), Math.sin(omega * t)];
    into.F1 = float[0] * c - float[1] * s;
    into.F2 = plate[0] * c - plate[1] * s;
    into.w = water[0] * c - water[1] * s;
    into.wDot = -omega * (water[0] * s + water[1] * c);
  };
}
