import { boltForceCautions, shearBound, shearInputs, shearSteps } from './bolt-force-steps.ts';
import { factorOfEither } from './bolt-inputs.ts';
import { intoPad, padInputs, padParts } from './bolt-pad-inputs.ts';
import { boltSecondOpinion } from './bolt-second-opinion.ts';
import type { Check, SecondOpinion } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { cannotBeWelded } from './weld-strength.ts';
import { solvedBoltForces } from './solved-inputs.ts';

const { b_d, a_d, f_uj, beta_w } = padInputs;

/** Bounds of F_w_Rd. */
const bounds: SecondOpinion = {
  title: 'Resistance: below, two runs at Tresca’s half of the strength; above, all four runs breaking by von Mises',
  source: [{ document: 'H. Tresca’s and R. von Mises’ flow rules; runs counted by hand' }],
  steps: [
    { symbol: 'R_low', expression: 'a_d * b_d * f_uj / gamma_R', unit: 'kN', meaning: 'smaller resistance' },
    {
      symbol: 'R_high',
      expression: '4 * a_d * b_d * f_uj / (sqrt(3) * gamma_R)',
      unit: 'kN',
      meaning: 'larger resistance',
    },
  ],
  of: 'F_w_Rd',
  low: 'R_low',
  high: 'R_high',
};

/** Weld round a tapped pad: the bolt passes the wall with clearance, so its shear comes to the wall by this weld. */
export const boltPadWeld: Check = {
  id: 'bolt-pad-weld',
  title: 'Weld of the tapped pad',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.3.3', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J2.4', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: intoPad,
  rule: (model, bay) => cannotBeWelded(padParts(model, bay)),
  inputs: {
    ...shearInputs,
    ...{ b_d, a_d, f_uj, beta_w },
    gamma_M2: basisFactor('gamma_M2', 'partial factor on welds', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on welds', 'allowable stress'),
    gamma_R: factorOfEither('gamma_M2', 'Omega_J', 'factor on welds, of either kind of basis'),
  },
  steps: {
    'partial factors': [
      ...shearSteps,
      {
        symbol: 'F_w_Rd',
        expression: '2 * a_d * b_d * f_uj / (sqrt(3) * beta_w * gamma_M2)',
        unit: 'kN',
        meaning: 'two runs along the force',
      },
    ],
    'allowable stress': [
      ...shearSteps,
      {
        symbol: 'F_w_Rd',
        expression: '0.6 * f_uj * 2 * a_d * b_d / Omega_J',
        unit: 'kN',
        meaning: 'two runs along the force',
      },
    ],
  },
  solved: { inputs: solvedBoltForces },
  demand: 'F_v',
  capacity: 'F_w_Rd',
  second: boltSecondOpinion(shearBound, bounds),
  cautions: [
    ...boltForceCautions,
    'Pulled, the pad leans on the wall from inside and the weld is not loaded. The pad must be welded in before the tube is closed, and its hole sealed: a sealed tube floods through it.',
  ],
};
