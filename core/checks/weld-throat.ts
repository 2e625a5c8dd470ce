import type { Check } from './check.ts';
import { fieldInputs, fieldPlaces } from './field-inputs.ts';
import { lineForceSteps, simplifiedResistance, throatStressSteps } from './fillet-steps.ts';
import { basisFactor } from './inputs.ts';
import { weldForceCautions, weldForceSteps } from './weld-force-steps.ts';
import { judgedBy, weldForceInputs, weldRule, weldStrengthInputs } from './weld-inputs.ts';
import { solvedWeldForces } from './solved-inputs.ts';

const { p, a, b, t, E, nu } = fieldInputs;

/** Weld along a panel's edge by the simplified method: one force on the throat, whatever its direction. */
export const weldThroat: Check = {
  id: 'weld-throat',
  title: 'Weld of a panel, simplified method',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.3.3, 4.12', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J2.4, from public summaries', safety: 'allowable stress' },
    { document: 'AISC 360', edition: '2016', clause: 'J4.2', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: judgedBy('throat', 'the document judges its welds by the directional method'),
  rule: weldRule,
  inputs: {
    ...{ p, a, b, t, E, nu },
    ...weldForceInputs,
    ...weldStrengthInputs,
    gamma_M2: basisFactor('gamma_M2', 'partial factor on welds', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on welds and rupture', 'allowable stress'),
    Omega_v: basisFactor('Omega_v', 'safety factor on yielding in shear', 'allowable stress'),
  },
  steps: {
    'partial factors': [...weldForceSteps, ...lineForceSteps({ along: false, root: true }), simplifiedResistance],
    'allowable stress': [
      ...weldForceSteps,
      ...lineForceSteps({ along: false, root: true }),
      {
        symbol: 'f_Rd',
        expression: 'min(0.6 * F_EXX * a_w / Omega_J, 0.6 * f_u * t_b / Omega_J, 0.6 * f_yb * t_b / Omega_v)',
        unit: 'N/mm',
        meaning: 'allowable force per length: filler, tearing and yielding of the thinner part',
      },
    ],
  },
  solved: solvedWeldForces,
  demand: 'f_w',
  capacity: 'f_Rd',
  second: {
    title: 'equivalent stress of the directional method: its throat force lies between 1/√3 and 2/√3 of it',
    source: [{ document: 'EN 1993-1-8', edition: '2005', clause: '4.5.3.2; bounds derived by hand' }],
    steps: [
      ...throatStressSteps({ along: false, root: true }),
      { symbol: 'f_low', expression: 'sigma_v * a_w / sqrt(3)', unit: 'N/mm', meaning: 'all of it shear' },
      {
        symbol: 'f_high',
        expression: '2 * sigma_v * a_w / sqrt(3)',
        unit: 'N/mm',
        meaning: 'bound for pull and shear together',
      },
    ],
    of: 'f_w',
    low: 'f_low',
    high: 'f_high',
  },
  cautions: [...weldForceCautions],
};
