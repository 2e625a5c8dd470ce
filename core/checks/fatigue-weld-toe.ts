import type { Check } from './check.ts';
import {
  damageBounds,
  damageInputs,
  damageSteps,
  detailSources,
  fatigueCautions,
  fatigueCheck,
  underBoth,
} from './fatigue-damage.ts';
import { panelWeld, weldClass } from './fatigue-panel-weld.ts';
import { atBothEnds, restOfField } from './fatigue-swing.ts';
import { fieldInputs, fieldPlaces } from './field-inputs.ts';
import { weldedOnFlat } from './weld-inputs.ts';

/** Crack from the toe of the fillet at a lapped panel's edge into the panel. */
export const fatigueWeldToe: Check = {
  ...fatigueCheck,
  id: 'fatigue-weld-toe',
  title: 'Fatigue of a panel’s weld: toe at the lapped edge, into the panel',
  source: detailSources('Table 8.5, detail 5, category 45'),
  places: fieldPlaces,
  applies: weldedOnFlat,
  inputs: {
    ...atBothEnds(panelWeld, 'f_h', 'f_h', 'N/mm', 'pull per length in the panel'),
    ...atBothEnds(panelWeld, 'm_r', 'm', 'N', 'moment per length at the panel’s edge'),
    t: fieldInputs.t,
    z: restOfField,
    ...damageInputs(weldClass(45), 'same', () => fatigueWeldToe),
  },
  steps: underBoth([
    {
      symbol: 's_up',
      expression: 'f_h_up / t + 6 * m_up / t^2',
      unit: 'MPa',
      meaning: 'stress in the panel at the toe, force up',
    },
    { symbol: 's_dn', expression: 'f_h_dn / t + 6 * m_dn / t^2', unit: 'MPa', meaning: 'the same, force down' },
    ...damageSteps('same'),
  ]),
  second: damageBounds('same'),
  cautions: [
    ...fatigueCautions,
    'End the welds more than 10 mm before the panel’s corner, or carry them round it in one run: no start or stop at a corner (EN 1993-1-9, Table 8.5).',
  ],
};
