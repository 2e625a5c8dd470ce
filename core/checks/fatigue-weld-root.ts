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
import { alongWeld, alongWeldCaution, throatAtEnd } from './fatigue-weld-stress.ts';
import { fieldPlaces } from './field-inputs.ts';
import { weldedOnFlat, weldStrengthInputs } from './weld-inputs.ts';

/** Crack from the root of a panel's fillet weld through its throat. */
export const fatigueWeldRoot: Check = {
  ...fatigueCheck,
  id: 'fatigue-weld-root',
  title: 'Fatigue of a panel’s weld: root, through the throat',
  source: detailSources('5(6); Table 8.5, detail 3, category 36'),
  places: fieldPlaces,
  applies: weldedOnFlat,
  inputs: {
    ...atBothEnds(panelWeld, 'f_z', 'f_z', 'N/mm', 'pull per length off the tube'),
    ...atBothEnds(panelWeld, 'f_h', 'f_h', 'N/mm', 'pull per length across the weld'),
    ...atBothEnds(panelWeld, 'm_r', 'm', 'N', 'moment about the weld that opens its root'),
    ...alongWeld(panelWeld),
    a_w: weldStrengthInputs.a_w,
    z: restOfField,
    ...damageInputs(weldClass(36), 'same', () => fatigueWeldRoot),
  },
  steps: underBoth([
    ...throatAtEnd('up', true),
    {
      symbol: 's_up',
      expression: 'sqrt(sigma_up^2 + tau_up^2 + (f_l_up / a_w)^2)',
      unit: 'MPa',
      meaning: 'stress on the throat, that along the weld with it, force up',
    },
    ...throatAtEnd('dn', true),
    {
      symbol: 's_dn',
      expression: 'sqrt(sigma_dn^2 + tau_dn^2 + (f_l_dn / a_w)^2)',
      unit: 'MPa',
      meaning: 'stress on the throat, that along the weld with it, force down',
    },
    ...damageSteps('same'),
  ]),
  second: damageBounds('same'),
  cautions: [
    ...fatigueCautions,
    alongWeldCaution,
    'A crack from the root stays hidden until it is through the throat: it cannot be inspected in time. A thicker throat, a weld on both sides or deep penetration keeps it away.',
  ],
};
