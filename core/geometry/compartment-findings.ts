import type { Finding } from '../finding.ts';
import { compartmentsOf, type Compartment } from './compartments-of.ts';
import type { Inspected } from './findings-of.ts';
import { listed } from './listed.ts';

/** Closed bays that keep air under a panel or water on one, because the panel has no opening there; one finding a panel. */
export function compartmentFindings({ geometry, text }: Inspected): Finding[] {
  const shut = new Map<string, [Compartment, ...Compartment[]]>();
  for (const compartment of compartmentsOf(geometry)) {
    if (compartment.holes > 0) continue;
    const others = shut.get(compartment.panel.id);
    if (others) others.push(compartment);
    else shut.set(compartment.panel.id, [compartment]);
  }
  return [...shut.values()].map((compartments) => {
    const [{ kind, panel, bay, a, b, height }] = compartments;
    const bays = `${compartments.length === 1 ? 'Bay' : 'Bays'} ${listed(compartments.map((c) => c.bay.id))}`;
    const size = `${bay.id} is ${text(a)} × ${text(b)} × ${text(height)}`;
    const place = compartments.length === 1 ? bay.id : panel.id;
    return kind === 'bell'
      ? {
          id: 'no-vent',
          place,
          text: `${bays}: panel ${panel.id} and four tubes close the top like a bell (${size}), and nothing lets the air out.`,
          mend: 'Give the panel a vent hole over each opening.',
        }
      : {
          id: 'no-drain',
          place,
          text: `${bays}: panel ${panel.id} and four tubes close the bottom like a tray (${size}), and nothing lets the water out.`,
          mend: 'Give the panel a drain hole over each opening.',
        };
  });
}
