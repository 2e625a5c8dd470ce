import type { Check } from './check.ts';
import { eyeCautions, eyeForceInputs, eyeInputs, eyePlaces, eyePulled, pinRule, eyeYieldFactor } from './eye-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedLegs } from './solved-inputs.ts';

const { F } = eyeForceInputs;
const { t_p: t_e, d_0, d, f_y, f_u } = eyeInputs;

/** Pin bearing on the eye. */
export const eyeBearing: Check = {
  id: 'eye-bearing',
  title: 'Pin bearing on the eye',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '3.13.2, Table 3.10', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'D5.1(c), J7', safety: 'allowable stress' },
  ],
  places: eyePlaces,
  applies: eyePulled,
  rule: pinRule,
  inputs: {
    ...{ F, t_e, d_0, d, f_y, f_u },
    gamma_M0: eyeYieldFactor,
    Omega_J: basisFactor('Omega_J', 'safety factor on bearing', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      {
        symbol: 'F_Rd',
        expression: '1.5 * t_e * d * f_y / gamma_M0',
        unit: 'kN',
        meaning: 'bearing resistance of the eye',
      },
    ],
    'allowable stress': [
      {
        symbol: 'F_Rd',
        expression: '1.8 * f_y * t_e * d / Omega_J',
        unit: 'kN',
        meaning: 'allowable bearing force of the eye',
      },
    ],
  },
  solved: { inputs: solvedLegs },
  demand: 'F',
  capacity: 'F_Rd',
  range: [
    {
      holds: 'd >= 0.9 * d_0',
      otherwise: 'the pin is smaller than nine tenths of its hole: it bears on a line, which is another rule',
    },
  ],
  second: {
    title: 'projected area at three quarters of the yield strength, and at one and a half times the ultimate strength',
    source: [{ document: 'common practice, no source' }],
    steps: [
      { symbol: 'F_low', expression: '0.75 * t_e * d * f_y', unit: 'kN', meaning: 'lower bound' },
      { symbol: 'F_high', expression: '1.5 * t_e * d * f_u', unit: 'kN', meaning: 'upper bound' },
    ],
    of: 'F_Rd',
    low: 'F_low',
    high: 'F_high',
  },
  cautions: [
    ...eyeCautions,
    'The pin or shackle itself is judged by its certificate: working load limit against the pull without load factor.',
    'A pin that is to be taken out again asks for more (EN 1993-1-8, 3.13.2(3)): less bearing stress, so that the hole stays round.',
  ],
};
