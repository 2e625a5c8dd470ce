import type { Model } from '../model.ts';
import type { Check, Missing, Step } from './check.ts';
import {
  footBoltInputs,
  footLevers,
  footOf,
  footPlateInputs,
  footPrying,
  footPull,
  stemRange,
} from './eye-foot-plate-inputs.ts';
import { eyeAt, eyePlaces } from './eye-inputs.ts';
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
import { eyeFatigueCaution, eyeSwing, isSuspended } from './fatigue-eye-force.ts';
import { carbonSteel } from './fatigue-steel.ts';
import { restOfPlate } from './fatigue-swing.ts';
import { constant } from './inputs.ts';

const { t_e, h_e, a_w, w_f, e, p_f, n_p } = footPlateInputs;
const { only: _, ...A_s } = footBoltInputs.A_s;

function classAt(model: Model, id: string): DetailClass | Missing {
  const foot = footOf(model, id);
  const { family, title } = model.catalogue.boltClass(foot.class);
  return carbonSteel({ family, title }) ?? { category: 50, thickness: model.catalogue.bolt(foot.bolt).diameter };
}

/** Crack across a bolt of an eye's foot, at its thread. */
export const fatigueEyeFootBolts: Check = {
  ...fatigueCheck,
  id: 'fatigue-eye-foot-bolts',
  title: 'Fatigue of the bolts of an eye’s foot: thread',
  source: detailSources('Table 8.1, detail 14, category 50, size effect from 30 mm', true),
  places: eyePlaces,
  applies: (model, id) =>
    eyeAt(model, id).eye.footPlate ? isSuspended(model, id) : 'the eye is welded to its tube: its foot has no bolts',
  inputs: {
    ...eyeSwing('F_z', 'F_l', 'F_q'),
    ...{ t_e, h_e, a_w, w_f, e, p_f, n_p },
    A_s,
    z: restOfPlate,
    ...damageInputs(classAt, 'opposite', () => fatigueEyeFootBolts),
    t_ref: constant(30, 'mm', 'diameter up to which the category holds', 'EN 1993-1-9, Table 8.1, from memory'),
    k_x: constant(0.25, '1', 'exponent of the size effect', 'EN 1993-1-9, Table 8.1, from memory'),
  },
  steps: underBoth([...footLevers, ...thread('up'), ...thread('dn'), ...damageSteps('opposite')]),
  range: stemRange,
  second: damageBounds('opposite'),
  cautions: [
    ...fatigueCautions,
    eyeFatigueCaution,
    'No preload is counted: bolts that stay preloaded above their tension feel a part of this only. The push of a strut is counted as a pull.',
    'Shear of these bolts that turns round is not in it: fit them, or let friction carry it. Bolts above class 8.8 under cathodic protection take up hydrogen, and crack without a cycle.',
  ],
};

/** Stress in the thread of the worst bolt at one end of the cycle: the moments as pulls, and the prying of its strength check. */
function thread(at: 'up' | 'dn'): readonly Step[] {
  const end = `force ${at === 'up' ? 'up' : 'down'}`;
  return [
    {
      symbol: `N_${at}`,
      expression: footPull(`_${at}`),
      unit: 'kN',
      meaning: `pull off the tube, the moments as pulls, ${end}`,
    },
    {
      symbol: `s_${at}`,
      expression: `${footPrying(`N_${at}`)} / A_s`,
      unit: 'MPa',
      meaning: `stress in the thread, all the prying of a flange bent both ways in it, ${end}`,
    },
  ];
}
