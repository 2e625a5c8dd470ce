import type { SpectrumRows } from '../../document/spectrum-rows.ts';
import { refusal, requirePositive } from '../../refusal.ts';

/** One-sided spectrum of the surface's elevation, m²·s, at an angular frequency in rad/s. */
export type Spectrum = (omega: number) => number;

/**
 * Pierson–Moskowitz: S = (5/16) Hs² ωp⁴ ω⁻⁵ exp(−1.25 (ω/ωp)⁻⁴); Hs in m, Tp in s.
 * Source: DNV-RP-C205, 3.5.5 (from memory, held to its m0 = Hs²/16 and to printed values).
 */
export function piersonMoskowitz(Hs: number, Tp: number): Spectrum {
  requirePositive({ Hs, Tp });
  const peak = (2 * Math.PI) / Tp;
  return (omega) =>
    omega <= 0 ? 0 : (5 / 16) * Hs * Hs * peak ** 4 * omega ** -5 * Math.exp(-1.25 * (omega / peak) ** -4);
}

/** Tp / Tz of a Pierson–Moskowitz spectrum, from its moments m0 and m2: 1.4077. */
export const peakOverZeroCrossing = 1 / Math.sqrt((0.8 * Math.sqrt(1.25)) / Math.sqrt(Math.PI));

/**
 * JONSWAP: A_γ S_PM γ^exp(−((ω − ωp) / σ ωp)² / 2), σ = 0.07 below the peak and 0.09 above; A_γ such that m0 = Hs²/16 exactly
 * (by quadrature; the usual 1 − 0.287 ln γ is up to 2 % off at γ = 7). γ from 1 to 10.
 * Source: Hasselmann et al. 1973; DNV-RP-C205, 3.5.5 (from memory).
 */
export function jonswap(Hs: number, Tp: number, gamma = 3.3): Spectrum {
  if (!(gamma >= 1 && gamma <= 10))
    throw refusal({ what: `A peak factor of ${gamma} is outside JONSWAP`, mend: 'Give gamma from 1 to 10.' });
  const base = piersonMoskowitz(Hs, Tp);
  const peak = (2 * Math.PI) / Tp;
  const raised: Spectrum = (omega) => {
    const sigma = omega <= peak ? 0.07 : 0.09;
    return base(omega) * gamma ** Math.exp(-0.5 * ((omega - peak) / (sigma * peak)) ** 2);
  };
  const A = (Hs * Hs) / 16 / moment(raised, 0, peak);
  return (omega) => A * raised(omega);
}

/** Tz / Tp of a JONSWAP spectrum of this peakedness, from its moments m0 and m2. */
export function zeroCrossingOver(gamma: number): number {
  const S = jonswap(1, 1, gamma);
  return 2 * Math.PI * Math.sqrt(moment(S, 0, 2 * Math.PI) / moment(S, 2, 2 * Math.PI));
}

/**
 * A spectrum as a table: frequencies and S rising in frequency, linear between them, nothing outside.
 * Refuses fewer than 3 rows, a frequency that does not rise and a negative or missing density.
 */
export function tabulated(omega: readonly number[], S: readonly number[]): Spectrum {
  const bad = omega.findIndex((at, k) => !(at > (k === 0 ? 0 : omega[k - 1]!)) || !(S[k]! >= 0));
  if (omega.length < 3 || omega.length !== S.length || bad >= 0)
    throw refusal({
      what: bad >= 0 ? `Row ${bad + 1} of the spectrum does not fit: ${omega[bad]}, ${S[bad]}` : `A spectrum of ${omega.length} rows is none`, // prettier-ignore
      mend: 'Give at least 3 rows of a frequency that rises and a density that is not negative.',
    });
  const last = omega.length - 1;
  return (at) => {
    if (!(at >= omega[0]! && at <= omega[last]!)) return 0;
    let [below, above] = [0, last];
    while (above - below > 1) {
      const middle = (below + above) >> 1;
      if (omega[middle]! <= at) below = middle;
      else above = middle;
    }
    const part = (at - omega[below]!) / (omega[above]! - omega[below]!);
    return S[below]! + part * (S[above]! - S[below]!);
  };
}

/**
 * Reads a spectrum: lines of frequency and density, separated by a comma, semicolon, tab or blanks; the first line may be a heading that
 * names Hz or rad/s. In Hz the density is per Hz. Without a heading: rad/s. Refuses a line that is no pair of numbers, and what `tabulated` does.
 */
export function readSpectrum(text: string): SpectrumRows {
  const lines = text.split(/\r?\n/).map((line) => line.trim()).filter((line) => line !== '' && !line.startsWith('#')); // prettier-ignore
  const heading = lines[0] !== undefined && /[a-z]/i.test(lines[0].replace(/\d[eE][+-]?\d/g, '')) ? lines.shift()! : '';
  const rows = lines.map((line, k) => {
    const [f, s] = line.split(/[,;\t ]+/).map(Number);
    if (!Number.isFinite(f) || !Number.isFinite(s))
      throw refusal({ what: `Line ${k + 1 + (heading ? 1 : 0)} of the spectrum is no pair of numbers: “${line}”`, mend: 'Give a frequency and a density in each line.' }); // prettier-ignore
    return [f!, s!] as const;
  });
  tabulated(rows.map(([f]) => f), rows.map(([, S]) => S)); // prettier-ignore
  return { frequency: /\bhz\b/i.test(heading) ? 'Hz' : 'rad/s', rows };
}

/** m_n = ∫ ωⁿ S dω by Simpson's rule in ln ω from a fifteenth to 1000 times a frequency near the peak: a tail
 * in ω⁻⁵ is cut off with 1e-6 of m2. */
export function moment(S: Spectrum, n: number, near: number, weight: Spectrum = () => 1): number {
  const steps = 8000;
  const [a, b] = [Math.log(near / 15), Math.log(near * 1000)];
  const d = (b - a) / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const omega = Math.exp(a + i * d);
    sum += (i === 0 || i === steps ? 1 : i % 2 ? 4 : 2) * omega ** (n + 1) * S(omega) * weight(omega);
  }
  return (sum * d) / 3;
}
