import type { Model } from '../model.ts';
import type { Check, Missing, Step } from './check.ts';
import { eyeAt, eyeInputs, eyePlaces } from './eye-inputs.ts';
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

const { t_e, h_e, l_e } = eyeInputs;

/** By the length over the two toes of the tee: plate and both legs. */
function classAt(model: Model, id: string): DetailClass | Missing {
  const other = steelOfEye(model, id);
  if (other) return other;
  const { thickness, weldThroat } = eyeAt(model, id).eye;
  const l = thickness.si + 2 * Math.SQRT2 * weldThroat.si;
  return { category: l < 0.05 ? 80 : l <= 0.08 ? 71 : l <= 0.1 ? 63 : 56, thickness: thickness.si };
}

/** Crack from the weld toe into the plate of an eye, at its foot. */
export const fatigueEyeFoot: Check = {
  ...fatigueCheck,
  id: 'fatigue-eye-foot',
  title: 'Fatigue of an eye: weld toe at its foot',
  source: detailSources('Table 8.5, detail 1, categories 80 to 56'),
  places: eyePlaces,
  applies: isSuspended,
  inputs: {
    ...eyeSwing('F_z', 'F_l', 'F_q'),
    ...{ t_e, h_e, l_e },
    z: restOfPlate,
    ...damageInputs(classAt, 'opposite', () => fatigueEyeFoot),
  },
  steps: underBoth([stress('up'), stress('dn'), ...damageSteps('opposite')]),
  second: damageBounds('opposite'),
  cautions: [...fatigueCautions, eyeFatigueCaution],
};

function stress(at: 'up' | 'dn'): Step {
  return {
    symbol: `s_${at}`,
    expression: `F_z_${at} / (t_e * l_e) + 6 * F_l_${at} * h_e / (t_e * l_e^2) + 6 * F_q_${at} * h_e / (l_e * t_e^2)`,
    unit: 'MPa',
    meaning: `pull, bending in the plane and across it, force ${at === 'up' ? 'up' : 'down'}`,
  };
}
