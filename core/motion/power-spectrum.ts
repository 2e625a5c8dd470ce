import { fourier, fourierLength, fourierPlan } from '../water/lattice/fourier.ts';

/** One-sided density over frequency. `S`: unit² a hertz; Σ S Δf is the variance. */
export interface PowerSpectrum {
  /** Hz, even, from one step. */
  readonly frequency: Float64Array;
  readonly S: Float64Array;
}

/**
 * Spectrum of readings dt s apart, by overlapping pieces of about `piece` s, each without its mean and under a Hann window,
 * their periodograms averaged:  S(f) = 2 dt |X|² / Σ w².  Refuses a record shorter than one piece.
 * Error: of each value, about 1 / √(number of pieces) of it. Source: P. D. Welch, IEEE Trans. Audio Electroacoust. 15 (1967) 70.
 */
export function powerSpectrum(x: Float64Array, dt: number, piece: number): PowerSpectrum {
  const N = fourierLength(Math.max(16, Math.min(x.length, Math.round(piece / dt))));
  const n = N > x.length ? 2 ** Math.floor(Math.log2(x.length)) : N;
  const plan = fourierPlan(n);
  const window = Float64Array.from({ length: n }, (_, i) => (1 - Math.cos((2 * Math.PI * i) / n)) / 2);
  const power = window.reduce((sum, w) => sum + w * w, 0);
  const S = new Float64Array(n >> 1);
  const [re, im, spareRe, spareIm] = [new Float64Array(n), new Float64Array(n), new Float64Array(n), new Float64Array(n)]; // prettier-ignore
  const pieces = Math.max(1, Math.floor((x.length - n) / (n / 2)) + 1);
  for (let p = 0; p < pieces; p++) {
    const from = Math.floor((p * n) / 2);
    let mean = 0;
    for (let i = 0; i < n; i++) mean += x[from + i]! / n;
    for (let i = 0; i < n; i++) re[i] = window[i]! * (x[from + i]! - mean);
    im.fill(0);
    const spared = fourier(plan, re, im, spareRe, spareIm, 1);
    const [Xre, Xim] = spared ? [spareRe, spareIm] : [re, im];
    for (let k = 1; k <= S.length; k++)
      S[k - 1]! += ((k === n / 2 ? 1 : 2) * dt * (Xre[k]! ** 2 + Xim[k]! ** 2)) / (power * pieces);
  }
  return { frequency: S.map((_, k) => (k + 1) / (n * dt)), S };
}
