import type { Check } from './check.ts';
import { fieldInputs, fieldPlaces } from './field-inputs.ts';
import { directionalSteps, lineForceSteps, simplifiedResistance, throatStressSteps } from './fillet-steps.ts';
import { basisFactor, constant } from './inputs.ts';
import { weldForceCautions, weldForceSteps } from './weld-force-steps.ts';
import { judgedBy, weldForceInputs, weldRule, weldStrengthInputs } from './weld-inputs.ts';
import { solvedWeldForces } from './solved-inputs.ts';

const { p, a, b, t, E, nu } = fieldInputs;

/** Weld along a panel's edge by the directional method. */
export const weldDirectional: Check = {
  id: 'weld-directional',
  title: 'Weld of a panel, directional method',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.3.2, 4.12', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J2.4, from public summaries', safety: 'allowable stress' },
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'J4.2; K5 (no rise for direction)',
      safety: 'allowable stress',
      memory: true,
    },
  ],
  places: fieldPlaces,
  applies: judgedBy('directional', 'the document judges its welds by the simplified method'),
  rule: weldRule,
  inputs: {
    ...{ p, a, b, t, E, nu },
    ...weldForceInputs,
    ...weldStrengthInputs,
    gamma_M2: basisFactor('gamma_M2', 'partial factor on welds', 'partial factors'),
    theta: {
      ...constant(
        0,
        'rad',
        'angle of force and weld that a rise is taken for: none on the wall of a hollow section',
        'AISC 360, K5',
      ),
      only: 'allowable stress',
    },
    Omega_J: basisFactor('Omega_J', 'safety factor on welds and rupture', 'allowable stress'),
    Omega_v: basisFactor('Omega_v', 'safety factor on yielding in shear', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...weldForceSteps,
      ...throatStressSteps({ along: false, root: true }),
      ...lineForceSteps({ along: false, root: true }),
      simplifiedResistance,
      ...directionalSteps,
    ],
    'allowable stress': [
      ...weldForceSteps,
      ...lineForceSteps({ along: false, root: true }),
      {
        symbol: 'F_nw',
        expression: '0.6 * F_EXX * (1 + 0.5 * sin(theta)^1.5)',
        unit: 'MPa',
        meaning: 'nominal stress of the filler (J2-5)',
      },
      {
        symbol: 'f_Rd',
        expression: 'min(F_nw * a_w / Omega_J, 0.6 * f_u * t_b / Omega_J, 0.6 * f_yb * t_b / Omega_v)',
        unit: 'N/mm',
        meaning: 'allowable force per length: filler, tearing and yielding of the thinner part',
      },
      { symbol: 'u', expression: 'f_w / f_Rd', unit: '1', meaning: 'force over allowable force' },
      { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
    ],
  },
  solved: solvedWeldForces,
  demand: 'u',
  capacity: 'u_Rd',
  second: {
    title: 'simplified method: the resultant whatever its direction, an upper bound; and its 1/√3, a lower one',
    source: [{ document: 'EN 1993-1-8', edition: '2005', clause: '4.5.3.3' }],
    steps: [
      { symbol: 'u_high', expression: 'f_w / f_Rd', unit: '1', meaning: 'simplified method' },
      {
        symbol: 'u_low',
        expression: 'f_r / (sqrt(3) * f_Rd)',
        unit: '1',
        meaning: 'all of the resultant square to the throat',
      },
    ],
    of: 'u',
    low: 'u_low',
    high: 'u_high',
  },
  cautions: [...weldForceCautions],
};
