import { refusal, requirePositive } from '../../refusal.ts';

/** Extremes of a narrow-banded Gaussian response in a storm. */
export interface Extremes {
  /** Cycles in the storm. */
  readonly cycles: number;
  /** Most probable largest amplitude, its mean, and the one exceeded with probability 10 %. */
  readonly mostProbable: number;
  readonly mean: number;
  readonly tenPercent: number;
}

/**
 * sigma: standard deviation of the response; period: its mean zero-crossing period, s; duration: of the storm, s.
 * Rayleigh amplitudes: most probable σ √(2 ln N), mean σ (√(2 ln N) + 0.5772 / √(2 ln N)), exceeded with p: σ √(2 ln(N / −ln(1 − p))).
 * Source: Longuet-Higgins 1952; Cartwright and Longuet-Higgins 1956. Refuses fewer than 10 cycles.
 */
export function extremes(sigma: number, period: number, duration: number): Extremes {
  requirePositive({ period, duration });
  const cycles = duration / period;
  if (!(cycles >= 10))
    throw refusal({
      what: `A storm of ${cycles.toFixed(1)} cycles has no statistics`,
      mend: 'Give at least 10 cycles.',
    });
  const root = Math.sqrt(2 * Math.log(cycles));
  return {
    cycles,
    mostProbable: sigma * root,
    mean: sigma * (root + 0.5772156649 / root),
    tenPercent: sigma * Math.sqrt(2 * Math.log(cycles / -Math.log(0.9))),
  };
}

/** A cell of a scatter table: sea states of Hs (m) and Tp or Tz (s), and how many of them. */
export interface ScatterCell {
  readonly Hs: number;
  readonly T: number;
  readonly count: number;
}

/** A scatter table as its file has it; heights in m. */
export interface ScatterTable {
  readonly cells: readonly ScatterCell[];
  /** What its periods are, where the corner says so. */
  readonly period: 'peak' | 'zero-crossing' | null;
}

/**
 * Reads a scatter table: the first line holds a corner and the periods, each other line a height and the counts. Comma, semicolon
 * or tab. The corner may name the periods (Tp or Tz) and the heights' unit (ft; m without one).
 * Refuses a row of another length, a number that is none, a height or period of zero, and an empty table.
 */
export function readScatter(text: string): ScatterTable {
  const rows = text.split(/\r?\n/).filter((line) => line.trim() !== '').map((line) => line.split(/[,;\t]/).map((cell) => cell.trim())); // prettier-ignore
  const [head, ...body] = rows;
  if (!head || head.length < 2 || body.length === 0)
    throw refusal({
      what: 'The scatter table is empty',
      mend: 'Give a line of periods and lines of a height with counts.',
    });
  const number = (cell: string, row: number, above: boolean): number => {
    const value = cell === '' && !above ? 0 : Number(cell === '' ? NaN : cell);
    if (!(above ? value > 0 : value >= 0)) throw refusal({ what: `Row ${row} of the scatter table has “${cell}”`, mend: above ? 'Give heights and periods above zero.' : 'Give counts that are not negative.' }); // prettier-ignore
    return value;
  };
  const corner = head[0]!;
  const metres = /\b(ft|feet)\b/i.test(corner) ? 0.3048 : 1;
  const periods = head.slice(1).map((cell) => number(cell, 1, true));
  const cells = body.flatMap((row, k) => {
    if (row.length !== head.length)
      throw refusal({ what: `Row ${k + 2} of the scatter table has ${row.length} cells, the first has ${head.length}`, mend: 'Give each row as many cells.' }); // prettier-ignore
    const Hs = metres * number(row[0]!, k + 2, true);
    return row.slice(1).map((cell, i): ScatterCell => ({ Hs, T: periods[i]!, count: number(cell, k + 2, false) }));
  });
  return {
    cells: cells.filter(({ count }) => count > 0),
    period: /tp|peak/i.test(corner) ? 'peak' : /tz|zero/i.test(corner) ? 'zero-crossing' : null,
  };
}

/** Mean over a scatter table of what a sea state gives, each state weighted by its count. */
export function scatterMean(cells: readonly ScatterCell[], of: (cell: ScatterCell) => number): number {
  const all = cells.reduce((sum, { count }) => sum + count, 0);
  requirePositive({ 'number of sea states': all });
  return cells.reduce((sum, cell) => sum + cell.count * of(cell), 0) / all;
}
