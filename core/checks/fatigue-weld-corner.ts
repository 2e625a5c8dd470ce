import type { Check, Missing } from './check.ts';
import {
  damageBounds,
  damageInputs,
  damageSteps,
  detailSources,
  fatigueCautions,
  fatigueCheck,
  underBoth,
} from './fatigue-damage.ts';
import { weldClass } from './fatigue-panel-weld.ts';
import { atBothEnds, fromCheck, restOfField } from './fatigue-swing.ts';
import { alongWeld, alongWeldCaution, throatAtEnd } from './fatigue-weld-stress.ts';
import { fieldPlaces } from './field-inputs.ts';
import { weldCorner } from './weld-corner.ts';

const corner = (): Check | Missing => weldCorner;
const forces = (symbol: string, as: string, unit: string, meaning: string) => atBothEnds(corner, symbol, as, unit, meaning); // prettier-ignore

/** Crack from the root of a weld on a tube's corner, which stands on it and hangs on it in turn. */
export const fatigueWeldCorner: Check = {
  ...fatigueCheck,
  id: 'fatigue-weld-corner',
  title: 'Fatigue of a panel’s weld on the tube’s corner: root, through the throat',
  source: detailSources('5(6); Table 8.5, detail 3, category 36'),
  places: fieldPlaces,
  applies: (model, bay) => weldCorner.applies(model, bay, model.loads.swing.up),
  inputs: {
    ...forces('f_z', 'f_z', 'N/mm', 'force per length square to the tube'),
    ...forces('f_h', 'f_h', 'N/mm', 'pull per length across the weld'),
    ...forces('m_r', 'm', 'N', 'moment about the weld'),
    ...alongWeld(corner),
    a_w: {
      ...fromCheck(corner, 'a_w', 'up', 'mm', ''),
      meaning: 'throat on the corner at the end of life',
      from: 'the strength check of the weld',
    },
    z: restOfField,
    ...damageInputs(weldClass(36), 'opposite', () => fatigueWeldCorner),
  },
  steps: underBoth([
    ...throatAtEnd('up', true),
    { symbol: 's_up', expression: 'sqrt(sigma_up^2 + tau_up^2 + (f_l_up / a_w)^2)', unit: 'MPa', meaning: 'stress on the throat, that along the weld with it, force up' },
    ...throatAtEnd('dn', true),
    { symbol: 's_dn', expression: 'sqrt(sigma_dn^2 + tau_dn^2 + (f_l_dn / a_w)^2)', unit: 'MPa', meaning: 'stress on the throat, that along the weld with it, force down' },
    ...damageSteps('opposite'),
  ]),
  second: damageBounds('opposite'),
  cautions: [
    ...fatigueCautions,
    alongWeldCaution,
    'Nothing takes the push beside this weld, so that its whole stress turns round with every wave. The toe in the panel is the better detail at a lower stress while the throat is thinner than the panel; the root decides.',
    'A crack from the root stays hidden until it is through the throat. Lap the panel past the corner radius, or bolt it.',
  ],
}; // prettier-ignore
