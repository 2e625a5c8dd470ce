import type { Hydrodynamics } from '../../document/hydrodynamics-field.ts';
import { jonswap, tabulated, type Spectrum } from './spectrum.ts';

/** Spectrum of the stated sea, m²·s over rad/s: its own table, or JONSWAP (Pierson–Moskowitz at a peakedness of one). */
export function seaSpectrum(sea: NonNullable<Hydrodynamics['sea']>): Spectrum {
  const { significantHeight, peakPeriod, peakedness, spectrum } = sea;
  if (!spectrum) return jonswap(significantHeight.si, peakPeriod.si, peakedness);
  const turn = spectrum.frequency === 'Hz' ? 2 * Math.PI : 1;
  return tabulated(
    spectrum.rows.map(([f]) => turn * f),
    spectrum.rows.map(([, S]) => S / turn),
  );
}

/** In words, for the note. */
export const spectrumWords = ({ peakedness, spectrum }: NonNullable<Hydrodynamics['sea']>): string =>
  spectrum
    ? `spectrum of ${spectrum.rows.length} rows, ${spectrum.source}`
    : peakedness === 1
      ? 'Pierson–Moskowitz'
      : `JONSWAP, peakedness ${Number(peakedness.toPrecision(2))}`;
