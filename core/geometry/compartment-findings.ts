import type { Finding } from '../finding.ts';
import { compartmentsOf } from './compartments-of.ts';
import type { Inspected } from './findings-of.ts';

/** Closed bays that keep air under a panel or water on one, because the panel has no opening there. */
export function compartmentFindings({ geometry, text }: Inspected): Finding[] {
  return compartmentsOf(geometry)
    .filter(({ holes }) => holes === 0)
    .map(({ kind, bay, panel, a, b, height }): Finding => {
      const size = `${text(a)} × ${text(b)} × ${text(height)}`;
      return kind === 'bell'
        ? {
            id: 'no-vent',
            place: bay.id,
            text: `Bay ${bay.id} is a bell: panel ${panel.id} and four tubes close it from above (${size}), and nothing lets the air out.`,
            mend: 'Give the panel a vent hole over the opening.',
          }
        : {
            id: 'no-drain',
            place: bay.id,
            text: `Bay ${bay.id} is a tray: panel ${panel.id} and four tubes close it from below (${size}), and nothing lets the water out.`,
            mend: 'Give the panel a drain hole over the opening.',
          };
    });
}
