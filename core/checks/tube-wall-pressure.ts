import type { Check, Step } from './check.ts';
import { basisFactor } from './inputs.ts';
import { depthInputs, poisson, sealed, sealedWallSteps } from './sealed-wall-steps.ts';
import { tubeInputs, tubePlaces } from './tube-inputs.ts';

const { round, H, B, t, E, f_y } = tubeInputs;

const deflection: Step = {
  symbol: 'w_m',
  expression:
    'round > 0 ? p * H^2 / (4 * t * E) : (5 * p * max(b_w, h_w)^4 / 384 - m_c * max(b_w, h_w)^2 / 8) * 12 * (1 - nu^2) / (E * t^3)',
  unit: 'mm',
  meaning: 'deflection in the middle of the larger wall (round: of the radius); for the reader, no limit is set on it',
};

/** Wall of a sealed tube under the water's pressure at depth: the section as a closed frame, or hoop stress. */
export const tubeWallPressure: Check = {
  id: 'tube-wall-pressure',
  title: 'Wall of a sealed tube under water pressure',
  limitState: 'strength',
  source: [
    {
      document: 'beam tables: closed rectangular frame under even pressure',
      clause: 'M = p (b² - b h + h²)/12 at the corners',
      memory: true,
    },
    {
      document: 'Timoshenko and Gere, Theory of Elastic Stability',
      edition: '2nd',
      clause: 'long tube under outside pressure',
      memory: true,
    },
    { document: 'EN 1993-1-1', edition: '2005', clause: '6.2.1(4)', safety: 'partial factors', memory: true },
    { document: 'AISC 360', edition: '2016', clause: 'F11', safety: 'allowable stress', memory: true },
  ],
  places: tubePlaces,
  applies: sealed,
  once: true,
  inputs: {
    ...depthInputs,
    ...{ round, H, B, t, E, f_y },
    ...poisson,
    gamma_M0: basisFactor('gamma_M0', 'partial factor on yielding', 'partial factors'),
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...sealedWallSteps,
      deflection,
      { symbol: 'sigma_Rd', expression: 'f_y / gamma_M0', unit: 'MPa', meaning: 'design yield stress' },
    ],
    'allowable stress': [
      ...sealedWallSteps,
      deflection,
      { symbol: 'sigma_Rd', expression: 'f_y / Omega_b', unit: 'MPa', meaning: 'allowable stress at first yield' },
    ],
  },
  demand: 'sigma',
  capacity: 'sigma_Rd',
  range: [
    {
      holds: 'round == 0 or 3 * p <= p_cr',
      otherwise:
        'the pressure is above a third of the elastic buckling pressure of a perfect round tube: another rule decides',
    },
  ],
  second: {
    title: 'larger wall as a strip: hinged above; below, even with its moments shared out at best',
    source: [
      { document: 'beam tables; equilibrium', clause: 'p b²/8 is the sum of corner and middle moment', memory: true },
    ],
    steps: [
      {
        symbol: 'sigma_high',
        expression: 'round > 0 ? 2 * sigma_n : 6 * p * max(b_w, h_w)^2 / (8 * t^2) + sigma_n',
        unit: 'MPa',
        meaning: 'hinged at the corners',
      },
      {
        symbol: 'sigma_low',
        expression: 'round > 0 ? sigma_n / 2 : 6 * p * max(b_w, h_w)^2 / (16 * t^2)',
        unit: 'MPa',
        meaning: 'corner and middle share the moment evenly',
      },
    ],
    of: 'sigma',
    low: 'sigma_low',
    high: 'sigma_high',
  },
  cautions: [
    'This stress adds to that of bending, and comes back with every deployment: see fatigue.',
    'A leak floods a sealed tube unseen: the plate then weighs more, and the trapped water may stay under pressure when it is lifted. Vent before cutting or heating.',
    'Ends and welds of a sealed tube are pressure boundaries and are not judged here.',
  ],
};
