import type { Model } from '../model.ts';
import { missing, type Check, type Missing } from './check.ts';
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
