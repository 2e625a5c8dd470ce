import { boltInputs, factorOfEither, holeInTube } from './bolt-inputs.ts';
import { bearingBounds, bearingSource, bearingStrength } from './bolt-bearing-steps.ts';
import { boltForceCautions, shearBound, shearInputs, shearSteps } from './bolt-force-steps.ts';
import { boltSecondOpinion } from './bolt-second-opinion.ts';
import type { Check } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedBoltForces } from './solved-inputs.ts';

const { d, d_0, e_w, p_1, p_2, f_ub, t_w, f_yw, f_uw, stainless_w, k_hw } = boltInputs;

/** Bearing of a bolt on the hole in the tube's wall. */
export const boltBearingTube: Check = {
  id: 'bolt-bearing-tube',
  title: "Bolt bearing on the tube's wall",
  limitState: 'strength',
  source: bearingSource,
  places: fieldPlaces,
  applies: holeInTube,
  inputs: {
    ...shearInputs,
    ...{ d, d_0, e_w, p_1, t_w, f_yw, f_uw, stainless_w },
    p_2: { ...p_2, only: 'partial factors' },
    f_ub: { ...f_ub, only: 'partial factors' },
    k_h: { ...k_hw, only: 'partial factors' },
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on bolts', 'allowable stress'),
    gamma_R: factorOfEither('gamma_M2', 'Omega_J', 'factor on bolts, of either kind of basis'),
  },
  steps: {
    'partial factors': [
      ...shearSteps,
      bearingStrength('f_yw', 'f_uw', 'stainless_w'),
      {
        symbol: 'alpha_b',
        expression: 'min(e_w / (3 * d_0), p_1 / (3 * d_0) - 1 / 4, f_ub / f_b, 1)',
        unit: '1',
        meaning: 'along the force, an end of the tube taken as an edge',
      },
      {
        symbol: 'k_1',
        expression: 'min(1.4 * p_2 / d_0 - 1.7, 2.5)',
        unit: '1',
        meaning: 'across the force; the wall goes round the corner, so it has no edge there',
      },
      {
        symbol: 'F_b_Rd',
        expression: 'min(k_h * k_1 * alpha_b, 1.5) * f_b * d * t_w / gamma_M2',
        unit: 'kN',
        meaning: 'bearing resistance, one row of bolts in a single lap',
      },
    ],
    'allowable stress': [
      ...shearSteps,
      bearingStrength('f_yw', 'f_uw', 'stainless_w'),
      {
        symbol: 'l_c',
        expression: 'min(e_w - d_0 / 2, p_1 - d_0)',
        unit: 'mm',
        meaning: 'clear steel before the hole, towards the end of the tube or the next hole',
      },
      {
        symbol: 'F_b_Rd',
        expression: 'min(1.2 * l_c, 2.4 * d) * t_w * f_b / Omega_J',
        unit: 'kN',
        meaning: 'allowable bearing and tear-out',
      },
    ],
  },
  solved: { inputs: solvedBoltForces, second: bearingBounds('e_w', 't_w', 'f_yw', 'f_uw') },
  demand: 'F_v',
  capacity: 'F_b_Rd',
  second: boltSecondOpinion(shearBound, bearingBounds('e_w', 't_w', 'f_yw', 'f_uw')),
  cautions: [...boltForceCautions, 'The hole weakens the tube as a beam: that is checked with the tube, not here.'],
};
