import type { Model } from '../model.ts';
import { missing, type Check, type Missing, type Step } from './check.ts';
import type { End } from './fatigue-swing.ts';
import { panelBendingBolts } from './panel-bending-bolts.ts';
import { panelBendingFourSides } from './panel-bending-four-sides.ts';
import { panelBendingTwoSides } from './panel-bending-two-sides.ts';

/** The strength check that gives the largest bending stress of a panel at one end of the cycle, by how it is borne then. */
export function panelBending(model: Model, bay: string, end: End): Check | Missing {
  const situation = model.loads.swing[end];
  return (
    [panelBendingFourSides, panelBendingTwoSides, panelBendingBolts].find(
      (check) => check.applies(model, bay, situation) === true,
    ) ?? missing(`how the panel over ${bay} is borne with the force ${end}`)
  );
}

/** The panel's bending at both ends of the cycle on what is left of it between `what`. pitch, gap: symbols of their pitch and width. */
export const stressBetween = (what: 'holes' | 'plugs', pitch: string, gap: string): readonly Step[] => [
  { symbol: 'r_n', expression: `(${pitch} - ${gap}) / ${pitch}`, unit: '1', meaning: `part of the panel between the ${what}` },
  { symbol: 's_up', expression: 'b_up / r_n', unit: 'MPa', meaning: `stress between the ${what}, force up` },
  { symbol: 's_dn', expression: 'b_dn / r_n', unit: 'MPa', meaning: `stress between the ${what}, force down` },
]; // prettier-ignore
