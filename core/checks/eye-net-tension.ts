import type { Check } from './check.ts';
import { eyeCautions, eyeForceInputs, eyeInputs, eyePlaces, eyePulled, eyeYieldFactor } from './eye-inputs.ts';
import { basisFactor, constant } from './inputs.ts';
import { solvedLegs } from './solved-inputs.ts';

const { F } = eyeForceInputs;
const { t_e, d_0, c_e, f_y, f_u } = eyeInputs;

/** Eye torn across its hole: the cheeks to either side. */
export const eyeNetTension: Check = {
  id: 'eye-net-tension',
  title: 'Eye torn across its hole',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '3.13.1, Table 3.9, type A', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'D5.1(a) and (d)', safety: 'allowable stress' },
  ],
  places: eyePlaces,
  applies: eyePulled,
  inputs: {
    ...{ F, t_e, d_0, c_e, f_y, f_u },
    b_16: { ...constant(16, 'mm', 'part of the effective width', 'AISC 360, D5.1'), only: 'allowable stress' },
    gamma_M0: eyeYieldFactor,
    Omega_J: basisFactor('Omega_J', 'safety factor on rupture', 'allowable stress'),
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      {
        symbol: 'F_Rd',
        expression: '2 * t_e * f_y * (c_e - d_0 / 3) / gamma_M0',
        unit: 'kN',
        meaning: 'pull for which the cheeks are wide enough',
      },
    ],
    'allowable stress': [
      { symbol: 'b_eff', expression: 'min(2 * t_e + b_16, c_e)', unit: 'mm', meaning: 'effective width of a cheek' },
      {
        symbol: 'F_Rd',
        expression: 'min(2 * t_e * b_eff * f_u / Omega_J, (2 * c_e + d_0) * t_e * f_y / Omega_b)',
        unit: 'kN',
        meaning: 'allowable pull: tearing of the cheeks (D5-1), yielding of the whole width',
      },
    ],
  },
  solved: { inputs: solvedLegs },
  demand: 'F',
  capacity: 'F_Rd',
  second: {
    title: 'the rule for pin-connected plates of lifting gear, its design factor and clearance left out',
    source: [
      {
        document: 'ASME BTH-1',
        edition: '2008',
        clause: '3-3.3.1, static strength of the plates: effective width by 4 t and by tests (Duerr, 2006)',
      },
    ],
    steps: [
      {
        symbol: 'b_B',
        expression: 'min(c_e, 4 * t_e, 0.6 * f_u / f_y * sqrt(c_e * d_0))',
        unit: 'mm',
        meaning: 'effective width of a cheek: wide cheeks tear one after the other, thin ones dish',
      },
      { symbol: 'F_high', expression: '2 * t_e * b_B * f_u', unit: 'kN', meaning: 'mean pull at which tests tore' },
    ],
    of: 'F_Rd',
    high: 'F_high',
  },
  cautions: [...eyeCautions],
};
