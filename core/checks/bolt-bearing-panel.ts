import { aluminiumPanel, bolted, boltInputs, factorOfEither } from './bolt-inputs.ts';
import { bearingBounds, bearingSource, bearingStrength } from './bolt-bearing-steps.ts';
import { boltForceCautions, shearBound, shearInputs, shearSteps } from './bolt-force-steps.ts';
import { boltSecondOpinion } from './bolt-second-opinion.ts';
import type { Check } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedBoltForces } from './solved-inputs.ts';

const { d, d_0, e_1, e_2, p_1, p_2, f_ub, f_yp, f_u, stainless, k_h } = boltInputs;

/** Bearing of a bolt on the panel's hole. */
export const boltBearingPanel: Check = {
  id: 'bolt-bearing-panel',
  title: 'Bolt bearing on the panel',
  limitState: 'strength',
  source: [...bearingSource, aluminiumPanel('8.5.5, Table 8.5: the same formulas for aluminium')],
  places: fieldPlaces,
  applies: bolted,
  inputs: {
    ...shearInputs,
    ...{ d, d_0, e_1, e_2, p_1, f_yp, f_u, stainless },
    p_2: { ...p_2, only: 'partial factors' },
    f_ub: { ...f_ub, only: 'partial factors' },
    k_h,
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on bolts', 'allowable stress'),
    gamma_R: factorOfEither('gamma_M2', 'Omega_J', 'factor on bolts, of either kind of basis'),
  },
  steps: {
    'partial factors': [
      ...shearSteps,
      bearingStrength('f_yp', 'f_u', 'stainless'),
      {
        symbol: 'alpha_b',
        expression: 'min(e_1 / (3 * d_0), p_1 / (3 * d_0) - 1 / 4, f_ub / f_b, 1)',
        unit: '1',
        meaning: 'along the force',
      },
      {
        symbol: 'k_1',
        expression: 'min(2.8 * e_2 / d_0 - 1.7, 1.4 * p_2 / d_0 - 1.7, 2.5)',
        unit: '1',
        meaning: 'across the force',
      },
      {
        symbol: 'F_b_Rd',
        expression: 'min(k_h * k_1 * alpha_b, 1.5) * f_b * d * t / gamma_M2',
        unit: 'kN',
        meaning: 'bearing resistance, one row of bolts in a single lap',
      },
    ],
    'allowable stress': [
      ...shearSteps,
      bearingStrength('f_yp', 'f_u', 'stainless'),
      {
        symbol: 'l_c',
        expression: 'min(min(e_1, e_2) - d_0 / 2, p_1 - d_0)',
        unit: 'mm',
        meaning: 'clear steel before the hole, towards an edge or the next hole',
      },
      {
        symbol: 'F_b_Rd',
        expression: 'k_h * min(1.2 * l_c, 2.4 * d) * t * f_b / Omega_J',
        unit: 'kN',
        meaning: 'allowable bearing and tear-out',
      },
    ],
  },
  solved: { inputs: solvedBoltForces, second: bearingBounds('e_1', 't', 'f_yp', 'f_u', 'k_h * ') },
  demand: 'F_v',
  capacity: 'F_b_Rd',
  second: boltSecondOpinion(shearBound, bearingBounds('e_1', 't', 'f_yp', 'f_u', 'k_h * ')),
  cautions: [
    ...boltForceCautions,
    'Put a washer under the head and under the nut: the rule for one row of bolts asks for it.',
  ],
};
