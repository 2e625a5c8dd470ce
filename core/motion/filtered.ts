import { fourier, fourierLength, fourierPlan } from '../water/lattice/fourier.ts';

/** A filter that turns nothing: a real factor for each angular frequency, rad/s, and 0 at 0. */
export type Gain = (omega: number) => number;

/**
 * x (n readings, dt s apart) with each frequency multiplied by its gain. The record is taken to go on as its mirror image, so
 * that it has no step at its ends; a period of the slowest kept frequency at either end is not to be relied on all the same.
 */
export function filtered(x: Float64Array, dt: number, gain: Gain): Float64Array {
  const n = x.length;
  const N = fourierLength(2 * n);
  const plan = fourierPlan(N);
  const [re, im, spareRe, spareIm] = [0, 1, 2, 3].map(() => new Float64Array(N)) as [Float64Array, Float64Array, Float64Array, Float64Array]; // prettier-ignore
  const mean = x.reduce((sum, value) => sum + value, 0) / n;
  for (let i = 0; i < N; i++) re[i] = i < n ? x[i]! - mean : i < 2 * n ? x[2 * n - 1 - i]! - mean : x[0]! - mean;
  const [Xre, Xim, otherRe, otherIm] = fourier(plan, re, im, spareRe, spareIm, 1) ? [spareRe, spareIm, re, im] : [re, im, spareRe, spareIm]; // prettier-ignore
  for (let k = 0; k < N; k++) {
    const own = gainAt(gain, k, N, dt) / N;
    Xre[k]! *= own;
    Xim[k]! *= own;
  }
  // the inverse is the transform with the two parts in each other's place
  const turned = fourier(plan, Xim, Xre, otherIm, otherRe, 1);
  return (turned ? otherRe : Xre).slice(0, n);
}

/** Standard deviation of what the filter makes of white noise of deviation 1, for readings dt s apart, far from the ends. */
export function noiseThrough(gain: Gain, dt: number, n = 65_536): number {
  let sum = 0;
  for (let k = 0; k < n; k++) sum += gainAt(gain, k, n, dt) ** 2;
  return Math.sqrt(sum / n);
}

function gainAt(gain: Gain, k: number, n: number, dt: number): number {
  const omega = (2 * Math.PI * Math.min(k, n - k)) / (n * dt);
  return omega === 0 ? 0 : gain(omega);
}

/** Keeps what is faster than a period, s: 0 under 0.8 of its frequency, 1 over 1.2 of it, half a cosine between. */
export function highPass(period: number): Gain {
  const corner = (2 * Math.PI) / period;
  return (omega) => {
    const part = (omega / corner - 0.8) / 0.4;
    return part <= 0 ? 0 : part >= 1 ? 1 : (1 - Math.cos(Math.PI * part)) / 2;
  };
}

/** Acceleration to displacement: −1/ω² of what the high pass keeps. */
export const integrateTwice =
  (keep: Gain): Gain =>
  (omega) => {
    const part = keep(omega);
    return part === 0 ? 0 : -part / omega ** 2;
  };
