import { aluminiumPanel, bolted, boltInputs, factorOfEither } from './bolt-inputs.ts';
import { boltForceCautions, shearBound, shearInputs, shearSteps } from './bolt-force-steps.ts';
import { boltSecondOpinion } from './bolt-second-opinion.ts';
import type { Check, SecondOpinion, Step } from './check.ts';
import { fieldPlaces, panelYieldFactor } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedBoltForces } from './solved-inputs.ts';

const { d_0, e_1, f_yp, f_u } = boltInputs;

const net: Step = {
  symbol: 'A_nv',
  expression: '2 * (e_1 - d_0 / 2) * t',
  unit: 'mm^2',
  meaning: 'two planes from the hole to the edge',
};

/** Bounds of V_eff_Rd by other flow rules and other planes. */
const bounds: SecondOpinion = {
  title:
    'Resistance: below, the planes left beside the hole at Tresca’s half of the yield strength; above, planes from the hole’s centre at 1/√3 of the ultimate strength',
  source: [{ document: 'H. Tresca’s and R. von Mises’ flow rules; planes of shear derived by hand' }],
  steps: [
    {
      symbol: 'R_low',
      expression: 'f_yp * (e_1 - d_0 / 2) * t / gamma_R',
      unit: 'kN',
      meaning: 'smaller resistance',
    },
    {
      symbol: 'R_high',
      expression: '2 / sqrt(3) * f_u * e_1 * t / gamma_R',
      unit: 'kN',
      meaning: 'larger resistance',
    },
  ],
  of: 'V_eff_Rd',
  low: 'R_low',
  high: 'R_high',
};

/** Tearing of the panel's edge before a bolt, on two shear planes. */
export const boltTearOut: Check = {
  id: 'bolt-tear-out',
  title: 'Bolt tearing out of the panel',
  limitState: 'strength',
  source: [
    {
      document: 'EN 1993-1-8',
      edition: '2005',
      clause: '3.10.2, the shear planes of a single bolt; read in Steel Buildings in Europe, Part 5, 2.2.5.3',
      safety: 'partial factors',
    },
    aluminiumPanel('8.5.2.2: the same planes with γ_M1 on aluminium'),
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'J4.3 without its plane in tension, from a public copy',
      safety: 'allowable stress',
    },
  ],
  places: fieldPlaces,
  applies: bolted,
  inputs: {
    ...shearInputs,
    ...{ d_0, e_1, f_yp, f_u },
    gamma_M0: panelYieldFactor,
    Omega_J: basisFactor('Omega_J', 'safety factor on rupture', 'allowable stress'),
    gamma_R: factorOfEither(panelYieldFactor, 'Omega_J', 'factor on the planes, of either kind of basis'),
  },
  steps: {
    'partial factors': [
      ...shearSteps,
      net,
      {
        symbol: 'V_eff_Rd',
        expression: 'f_yp * A_nv / (sqrt(3) * gamma_M0)',
        unit: 'kN',
        meaning: 'resistance of both planes',
      },
    ],
    'allowable stress': [
      ...shearSteps,
      net,
      { symbol: 'A_gv', expression: '2 * e_1 * t', unit: 'mm^2', meaning: 'the same without the hole' },
      {
        symbol: 'V_eff_Rd',
        expression: 'min(0.6 * f_u * A_nv, 0.6 * f_yp * A_gv) / Omega_J',
        unit: 'kN',
        meaning: 'allowable force of both planes',
      },
    ],
  },
  solved: { inputs: solvedBoltForces, second: bounds },
  demand: 'F_v',
  capacity: 'V_eff_Rd',
  second: boltSecondOpinion(shearBound, bounds),
  cautions: boltForceCautions,
};
