import { refusal } from '../refusal.ts';

/** Years, and loss of one face in mm: permanent immersion in seawater. */
const immersed = [[0, 0], [5, 0.25], [25, 0.9], [50, 1.75], [75, 2.6], [100, 3.5]] as const; // prettier-ignore

/**
 * Loss of one face of bare, unprotected steel that is always under seawater, m, after some years, straight between the
 * rows of the table. Refuses years below 0 or above 100. Local attack (crevices, low water, sulphide) is not in it.
 * Source: EN 1993-5:2007, Table 4-2, from memory.
 */
export function corrosionLoss(years: number): number {
  const at = immersed.findIndex(([to]) => years <= to);
  if (!(years >= 0) || at < 0)
    throw refusal({
      what: `The loss of steel is tabled up to 100 years, not for ${years}`,
      where: { path: 'basis.life' },
      mend: 'Give a shorter life.',
    });
  if (at === 0) return 0;
  const [[t0, d0], [t1, d1]] = [immersed[at - 1]!, immersed[at]!];
  return (d0 + ((d1 - d0) * (years - t0)) / (t1 - t0)) / 1000;
}
