import type { Model } from '../model.ts';
import { missing, type Input, type Reading } from './check.ts';
import type { End } from './fatigue-swing.ts';

/**
 * Stress at a weld toe of a crossing at one end of the cycle, extrapolated from the walls' stresses beside it: what no
 * nominal stress gives. The grid of tubes by hand knows no walls: it comes from shells of both walls alone.
 */
export const hotSpot = (end: End): Input => ({
  unit: 'MPa',
  meaning: `hot-spot stress in the main tube’s wall at the weld toe, force ${end}, no load factor`,
  from: 'loads: swing of service, walls as shells',
  read: (model: Model): Reading =>
    missing(
      model.geometry.arrangement === 'stacked'
        ? 'the hot-spot stress where the tubes lie on each other: no published formula covers a tube welded along its flanks. Analyse both walls as shells, or test the joint'
        : 'the hot-spot stress at the foot of the cross tube: no detail category covers a tube’s end on the flat of another. Analyse both walls as shells, or test the joint',
    ),
});
