/** A spectrum as its file has it. */
export interface SpectrumRows {
  readonly frequency: 'Hz' | 'rad/s';
  /** Frequency and density; in Hz the density is per Hz. */
  readonly rows: readonly (readonly [number, number])[];
}

/** Significant height 4 √m0 (m) of a table, straight between its rows, and the period of its highest row (s). */
export function heightAndPeak({ frequency, rows }: SpectrumRows): { readonly Hs: number; readonly Tp: number } {
  let m0 = 0;
  for (let k = 1; k < rows.length; k++) m0 += ((rows[k]![0] - rows[k - 1]![0]) * (rows[k]![1] + rows[k - 1]![1])) / 2;
  const [peak] = rows.reduce((most, row) => (row[1] > most[1] ? row : most));
  return { Hs: 4 * Math.sqrt(m0), Tp: (frequency === 'Hz' ? 1 : 2 * Math.PI) / peak };
}
