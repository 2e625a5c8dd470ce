import type { Model } from '../model.ts';
import { missing, type Check, type Input, type Missing, type Step } from './check.ts';
import { fromCheck, graver, restOfField, swingValues, type End } from './fatigue-swing.ts';
import { panelBendingBolts } from './panel-bending-bolts.ts';
import { panelBendingFourSides } from './panel-bending-four-sides.ts';
import { panelBendingTwoSides } from './panel-bending-two-sides.ts';
import { panelStress } from './panel-stress.ts';

/**
 * Largest stress of a panel at both ends of the cycle, b_up and b_dn: bending by hand, and where the document asks for it the
 * whole plate's, bending and stretch, whichever makes the range larger.
 */
export const panelStressAtBothEnds: Readonly<Record<string, Input>> = Object.fromEntries(
  (['up', 'down'] as const).map((end) => {
    const byHand = fromCheck(panelBending, 'sigma_Ed', end, 'MPa', 'largest bending stress of the panel; its largest stress where the whole plate is solved'); // prettier-ignore
    return [
      end === 'up' ? 'b_up' : 'b_dn',
      {
        ...byHand,
        read: (model, bay, situation) => {
          const hand = byHand.read(model, bay, situation);
          if (model.solved === null || typeof hand !== 'number') return hand;
          const solved = swingValues(panelStress, model, bay, end);
          if ('missing' in solved) return solved as Missing;
          return graver(restOfField.read(model, bay, situation), end, hand, Math.abs(solved['sigma_Ed']!));
        },
      } satisfies Input,
    ];
  }),
);

/** The strength check that gives the largest bending stress of a panel at one end of the cycle, by how it is borne then. */
function panelBending(model: Model, bay: string, end: End): Check | Missing {
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
