import type { Model } from '../model.ts';
import { missing, type Check, type Step } from './check.ts';
import { eyeAt, eyeCautions, eyeForceInputs, eyeInputs, eyePlaces, eyePulled, materialOfEye } from './eye-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedLegs } from './solved-inputs.ts';
import { cannotBeWelded, correlationOfParts, ultimateOfParts, type WeldedPart } from './weld-strength.ts';

const { F } = eyeForceInputs;
const { t_e, t_c } = eyeInputs;

const cheekOf = (model: Model, id: string) => eyeAt(model, id).eye.cheek!;

const partsOf = (model: Model, id: string): readonly WeldedPart[] =>
  [eyeAt(model, id).eye.thickness.si, cheekOf(model, id).thickness.si].map((thickness) => ({
    material: materialOfEye(model, id),
    thickness,
  }));

const share: readonly Step[] = [
  {
    symbol: 'F_c',
    expression: 'F * t_c / (t_e + 2 * t_c)',
    unit: 'kN',
    meaning: 'part of the pull that one cheek plate takes off the pin, by its thickness',
  },
  { symbol: 'l_c', expression: 'pi * D_c / 2', unit: 'mm', meaning: 'half of its ring, the half towards the pull' },
  { symbol: 'f_c', expression: 'F_c / l_c', unit: 'N/mm', meaning: 'force per length of the weld' },
];

/** Fillet round a cheek plate: it hands its part of the pin's pressure to the eye. */
export const eyeCheekWeld: Check = {
  id: 'eye-cheek-weld',
  title: 'Weld of a cheek plate',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.3.3, simplified method', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J2.4', safety: 'allowable stress', memory: true },
    { document: 'share by thickness, half of the ring: common practice' },
  ],
  places: eyePlaces,
  applies: (model, id, situation) =>
    eyeAt(model, id).eye.cheek ? eyePulled(model, id, situation) : 'the eye has no cheek plates',
  rule: (model, id) => cannotBeWelded(partsOf(model, id)),
  inputs: {
    ...{ F, t_e, t_c },
    D_c: {
      unit: 'mm',
      meaning: 'diameter of a cheek plate',
      from: 'document: eye',
      read: (model, id) => cheekOf(model, id).diameter.si,
    },
    a_w: {
      unit: 'mm',
      meaning: 'throat at the end of life',
      from: 'document: eye, corrosion',
      read: (model, id) => {
        const left = cheekOf(model, id).weldThroat.si - model.document.protection.lossPerFace.tubeOutside.si;
        return left > 0 ? left : missing('a throat: corrosion takes all of it within the life');
      },
    },
    f_u: {
      unit: 'MPa',
      meaning: 'ultimate strength of the weaker part',
      from: 'catalogue: materials',
      read: (model, id) => ultimateOfParts(partsOf(model, id)),
    },
    beta_w: {
      unit: '1',
      meaning: 'correlation factor of fillet welds',
      from: 'catalogue: materials',
      only: 'partial factors',
      read: (model, id) => correlationOfParts(partsOf(model, id)),
    },
    gamma_M2: basisFactor('gamma_M2', 'partial factor on welds', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on welds', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...share,
      {
        symbol: 'f_Rd',
        expression: 'f_u / (sqrt(3) * beta_w * gamma_M2) * a_w',
        unit: 'N/mm',
        meaning: 'resistance per length, whatever the direction',
      },
    ],
    'allowable stress': [
      ...share,
      { symbol: 'f_Rd', expression: '0.6 * f_u * a_w / Omega_J', unit: 'N/mm', meaning: 'allowable force per length' },
    ],
  },
  solved: { inputs: solvedLegs },
  demand: 'f_c',
  capacity: 'f_Rd',
  second: {
    title: 'between the whole ring and its projection across the pull',
    source: [{ document: 'statics', clause: 'derived by hand' }],
    steps: [
      { symbol: 'f_low', expression: 'F_c / (pi * D_c)', unit: 'N/mm', meaning: 'spread over the whole ring' },
      { symbol: 'f_high', expression: 'F_c / D_c', unit: 'N/mm', meaning: 'on its width across the pull' },
    ],
    of: 'f_c',
    low: 'f_low',
    high: 'f_high',
  },
  cautions: [
    ...eyeCautions,
    'Cheek plates count for bearing alone: tearing out, tearing across and fatigue are checked without them.',
    'The pin must bear on eye and cheeks at once: bore them together after welding.',
  ],
};
