import type { Json } from '../document/edit.ts';
import { readScatter } from '../water/waves/extremes.ts';
import { heightAndPeak } from '../document/spectrum-rows.ts';
import { readSpectrum } from '../water/waves/spectrum.ts';

/** A scatter table's file as the document keeps it. Where its corner does not name the periods, they are taken as zero-crossing ones. */
export function scatterField(text: string, name: string): { readonly [key: string]: Json } {
  const { cells, period } = readScatter(text);
  return {
    period: period ?? 'zero-crossing',
    states: cells.map(({ Hs, T, count }) => ({ height: `${short(Hs)} m`, period: `${short(T)} s`, count })),
    source: name.slice(0, 200),
  };
}

/** What a spectrum's file says of a sea: the table, and the height and peak period that are its own. */
export function spectrumField(text: string, name: string): { readonly [key: string]: Json } {
  const spectrum = readSpectrum(text);
  const { Hs, Tp } = heightAndPeak(spectrum);
  return {
    significantHeight: `${short(Hs)} m`,
    peakPeriod: `${short(Tp)} s`,
    spectrum: {
      frequency: spectrum.frequency,
      rows: spectrum.rows.map(([f, S]) => [f, S]),
      source: name.slice(0, 200),
    },
  };
}

const short = (value: number): number => Number(value.toPrecision(6));
