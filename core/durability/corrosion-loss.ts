import type { corrosionZones } from '../document/durability-field.ts';
import { refusal } from '../refusal.ts';

export type CorrosionZone = (typeof corrosionZones)[number];

const years = [0, 5, 25, 50, 75, 100] as const;
/** mm of one face after those years. Air: 0.035 mm a year, of a survey of sheet piles (Corus 2001, as read in a US Army report); EN 1993-5, 4.4(8) has 0.02. */
const lost: Readonly<Record<CorrosionZone, readonly number[]>> = {
  immersed: [0, 0.25, 0.9, 1.75, 2.6, 3.5],
  'low water and splash': [0, 0.55, 1.9, 3.75, 5.6, 7.5],
  'air over the sea': years.map((n) => 0.035 * n),
  'undisturbed bed': [0, 0, 0.3, 0.6, 0.9, 1.2],
};

/**
 * Loss of one face of bare, unprotected steel in a zone, m, after some years, straight between the rows of the table.
 * Refuses years below 0 or above 100. Local attack (crevices, sulphide, bacteria at low water) is not in it.
 * Source: EN 1993-5:2007, Tables 4-1 and 4-2, from memory; air: see above.
 */
export function corrosionLoss(after: number, zone: CorrosionZone = 'immersed'): number {
  const at = years.findIndex((to) => after <= to);
  if (!(after >= 0) || at < 0)
    throw refusal({
      what: `The loss of steel is tabled up to 100 years, not for ${after}`,
      where: { path: 'basis.life' },
      mend: 'Give a shorter life.',
    });
  if (at === 0) return 0;
  const [d0, d1] = [lost[zone][at - 1]!, lost[zone][at]!];
  const [t0, t1] = [years[at - 1]!, years[at]!];
  return (d0 + ((d1 - d0) * (after - t0)) / (t1 - t0)) / 1000;
}
