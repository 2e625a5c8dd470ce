import type { Check } from './check.ts';
import { eyeCautions, eyeForceInputs, eyeInputs, eyePlaces, eyePulled, eyeYieldFactor } from './eye-inputs.ts';
import { basisFactor } from './inputs.ts';
import { onlyUnder } from './only-under.ts';
import { solvedLegs } from './solved-inputs.ts';

const { F } = eyeForceInputs;
const { t_e, d_0, d, a_e, f_y, f_u } = eyeInputs;

/** Pin torn out through the edge, on two planes of shear. */
export const eyeTearOut: Check = {
  id: 'eye-tear-out',
  title: 'Pin torn out of the eye',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '3.13.1, Table 3.9, type A', safety: 'partial factors' },
    { document: 'two planes of shear at the yield stress in shear, common practice', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'D5.1(b)', safety: 'allowable stress' },
  ],
  places: eyePlaces,
  applies: eyePulled,
  inputs: {
    ...{ F, t_e, d_0, d, a_e, f_u },
    ...onlyUnder('partial factors', { f_y }),
    gamma_M0: eyeYieldFactor,
    Omega_J: basisFactor('Omega_J', 'safety factor on rupture', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      {
        symbol: 'F_g',
        expression: '2 * t_e * f_y * (a_e - 2 * d_0 / 3) / gamma_M0',
        unit: 'kN',
        meaning: 'pull for which the edge is far enough (Table 3.9)',
      },
      {
        symbol: 'F_s',
        expression: '2 * t_e * a_e * f_y / (sqrt(3) * gamma_M0)',
        unit: 'kN',
        meaning: 'two planes of shear, from the rim of the hole',
      },
      { symbol: 'F_Rd', expression: 'min(F_g, F_s)', unit: 'kN', meaning: 'the smaller' },
    ],
    'allowable stress': [
      {
        symbol: 'F_Rd',
        expression: '0.6 * f_u * 2 * t_e * (a_e + d / 2) / Omega_J',
        unit: 'kN',
        meaning: 'allowable pull, shear rupture (D5-2)',
      },
    ],
  },
  solved: { inputs: solvedLegs },
  demand: 'F',
  capacity: 'F_Rd',
  second: {
    title: 'the rule for pin-connected plates of lifting gear, its design factor left out',
    source: [
      { document: 'ASME BTH-1', edition: '2008', clause: '3-3.3.1, double plane shear beyond the hole' },
      { document: 'ASME BTH-1', clause: 'where the planes leave the hole, 55° d / d_0', memory: true },
    ],
    steps: [
      {
        symbol: 'phi',
        expression: '55 * pi / 180 * d / d_0',
        unit: '1',
        meaning: 'where the planes leave the hole: 55° for a pin that fills it',
      },
      {
        symbol: 'l_s',
        expression: 'a_e + d / 2 * (1 - cos(phi))',
        unit: 'mm',
        meaning: 'length of a plane of shear',
      },
      {
        symbol: 'F_high',
        expression: '0.7 * f_u * 2 * t_e * l_s / 1.2',
        unit: 'kN',
        meaning: 'pull that tests bear out: 0.70 F_u on both planes over 1.20',
      },
    ],
    of: 'F_Rd',
    high: 'F_high',
  },
  cautions: [...eyeCautions],
};
