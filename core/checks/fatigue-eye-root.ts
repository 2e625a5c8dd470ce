import type { Model } from '../model.ts';
import type { Check, Missing, Step } from './check.ts';
import { eyeAt, eyeInputs, eyePlaces } from './eye-inputs.ts';
import { eyeWeld } from './eye-weld.ts';
import {
  damageBounds,
  damageInputs,
  damageSteps,
  detailSources,
  fatigueCautions,
  fatigueCheck,
  underBoth,
  type DetailClass,
} from './fatigue-damage.ts';
import { eyeFatigueCaution, eyeSwing, isSuspended, steelOfEye } from './fatigue-eye-force.ts';
import { restOfPlate } from './fatigue-swing.ts';

const { t_e, h_e } = eyeInputs;
const { a_w, l_0 } = eyeWeld.inputs;

const classAt = (model: Model, id: string): DetailClass | Missing =>
  steelOfEye(model, id) ?? { category: 36, thickness: eyeAt(model, id).eye.thickness.si };

/** Crack from the root of an eye's fillet welds through the throat. */
export const fatigueEyeRoot: Check = {
  ...fatigueCheck,
  id: 'fatigue-eye-root',
  title: 'Fatigue of an eye: weld root, through the throat',
  source: detailSources('5(6); Table 8.5, detail 3, category 36'),
  places: eyePlaces,
  applies: isSuspended,
  inputs: {
    ...eyeSwing('F_z', 'F_l', 'F_q'),
    ...{ t_e, h_e, a_w: a_w!, l_0: l_0! },
    z: restOfPlate,
    ...damageInputs(classAt, 'opposite', () => fatigueEyeRoot),
  },
  steps: underBoth([
    { symbol: 'l_w', expression: 'l_0 - 2 * a_w', unit: 'mm', meaning: 'effective length of a fillet, ends left out' },
    ...throat('up'),
    ...throat('dn'),
    ...damageSteps('opposite'),
  ]),
  range: [{ holds: 'l_w > 0 * l_0', otherwise: 'the weld is shorter than its two ends' }],
  second: damageBounds('opposite'),
  cautions: [
    ...fatigueCautions,
    eyeFatigueCaution,
    'A full penetration weld has no root to crack: it is the usual choice for an eye that a line pulls at in every wave.',
  ],
};

/** All of the stress on the throat as one, that along the weld with it: on the safe side of EN 1993-1-9, 5(6). */
function throat(at: 'up' | 'dn'): readonly Step[] {
  const end = at === 'up' ? 'up' : 'down';
  return [
    {
      symbol: `f_${at}`,
      expression: `F_z_${at} / (2 * l_w) + 3 * F_l_${at} * h_e / l_w^2 + F_q_${at} * h_e / (t_e * l_w)`,
      unit: 'N/mm',
      meaning: `pull per length off the tube: pull, bending in the plane of the eye and across it, force ${end}`,
    },
    {
      symbol: `s_${at}`,
      expression: `sqrt(f_${at}^2 + (F_q_${at} / (2 * l_w))^2 + (F_l_${at} / (2 * l_w))^2) / a_w`,
      unit: 'MPa',
      meaning: `stress on the throat, force ${end}`,
    },
  ];
}
