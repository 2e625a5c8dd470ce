import type { Model } from '../model.ts';
import type { Check, Missing, Step } from './check.ts';
import { eyeAt, eyeInputs, eyePlaces, pinRule } from './eye-inputs.ts';
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

const { t_e, d_0, c_e } = eyeInputs;

const classAt = (model: Model, id: string): DetailClass | Missing =>
  steelOfEye(model, id) ?? { category: 125, thickness: eyeAt(model, id).eye.thickness.si };

/** Crack from the rim of an eye's hole, at the sides of the pin. */
export const fatigueEyeHole: Check = {
  ...fatigueCheck,
  id: 'fatigue-eye-hole',
  title: 'Fatigue of an eye: rim of its hole',
  source: [
    ...detailSources('Table 8.1, detail 5, category 125 for the cut rim, with the stress at the rim itself', true),
    {
      document: "Peterson's Stress Concentration Factors",
      edition: '3rd',
      clause: 'chart for round-ended lugs, fit of K_te in d/H',
      memory: true,
    },
  ],
  places: eyePlaces,
  applies: isSuspended,
  rule: pinRule,
  inputs: {
    ...eyeSwing('F'),
    ...{ t_e, d_0, c_e },
    z: restOfPlate,
    ...damageInputs(classAt, 'opposite', () => fatigueEyeHole),
  },
  steps: underBoth([
    { symbol: 'r_d', expression: 'd_0 / (2 * c_e + d_0)', unit: '1', meaning: 'hole over the width of the eye' },
    {
      symbol: 'K_t',
      expression: '12.882 - 52.714 * r_d + 89.762 * r_d^2 - 51.667 * r_d^3',
      unit: '1',
      meaning: 'stress at the rim over the mean stress beside the hole, pin a close fit',
    },
    stress('up'),
    stress('dn'),
    ...damageSteps('opposite'),
  ]),
  range: [
    {
      holds: '0.15 <= r_d and r_d <= 0.75',
      otherwise:
        'the hole is below 0.15 or above 0.75 of the eye’s width: the chart of stress concentrations ends there',
    },
  ],
  second: damageBounds('opposite'),
  cautions: [
    ...fatigueCautions,
    eyeFatigueCaution,
    'A loose pin, a worn rim or fretting under the pin raises the stress at the rim further.',
  ],
};

function stress(at: 'up' | 'dn'): Step {
  return {
    symbol: `s_${at}`,
    expression: `K_t * F_${at} / (2 * c_e * t_e)`,
    unit: 'MPa',
    meaning: `stress at the rim, force ${at === 'up' ? 'up' : 'down'}`,
  };
}
