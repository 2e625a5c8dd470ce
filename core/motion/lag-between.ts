import { fourier, fourierLength, fourierPlan } from '../water/lattice/fourier.ts';

/** How much later y tells what x tells, s, and how alike they then are, −1 to 1. */
export interface Lag {
  readonly late: number;
  readonly alike: number;
}

/**
 * Lag at which two records of one thing, dt s apart, are most alike: the largest of their correlation within ± `longest` s,
 * by a parabola through its peak. x and y may differ in length. Error: some hundredths of a step where they are alike by
 * 0.99. Refuses nothing: of records that have nothing in common, `alike` is small.
 */
export function lagBetween(x: Float64Array, y: Float64Array, dt: number, longest: number): Lag {
  const N = fourierLength(x.length + y.length);
  const plan = fourierPlan(N);
  const [a, b] = [x, y].map((values) => {
    const [re, im, spareRe, spareIm] = [new Float64Array(N), new Float64Array(N), new Float64Array(N), new Float64Array(N)]; // prettier-ignore
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    values.forEach((value, i) => (re[i] = value - mean));
    return fourier(plan, re, im, spareRe, spareIm, 1) ? [spareRe, spareIm] : [re, im];
  }) as [[Float64Array, Float64Array], [Float64Array, Float64Array]];
  // the correlation is the inverse transform of X̄ Y
  const [re, im, spareRe, spareIm] = [
    new Float64Array(N),
    new Float64Array(N),
    new Float64Array(N),
    new Float64Array(N),
  ];
  for (let k = 0; k < N; k++) {
    re[k] = (a[0][k]! * b[0][k]! + a[1][k]! * b[1][k]!) / N;
    im[k] = (a[0][k]! * b[1][k]! - a[1][k]! * b[0][k]!) / N;
  }
  const c = fourier(plan, im, re, spareIm, spareRe, 1) ? spareRe : re;
  const at = (lag: number): number => c[(lag + N) % N]!;
  const most = Math.min(Math.floor(longest / dt), (N >> 1) - 2);
  let best = -most;
  for (let lag = -most; lag <= most; lag++) if (at(lag) > at(best)) best = lag;
  const [before, peak, after] = [at(best - 1), at(best), at(best + 1)];
  const bend = before - 2 * peak + after;
  return {
    late: (best + (bend < 0 ? (0.5 * (before - after)) / bend : 0)) * dt,
    alike: peak / Math.sqrt(energy(x) * energy(y)),
  };
}

const energy = (values: Float64Array): number => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
};
