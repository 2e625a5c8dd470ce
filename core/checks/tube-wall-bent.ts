import type { Check } from './check.ts';
import { basisFactor } from './inputs.ts';
import { depthInputs, sealed, sealedWallSteps, poisson } from './sealed-wall-steps.ts';
import { solvedTubeForces } from './solved-inputs.ts';
import { tubeForceInputs, tubeInputs, tubePlaces } from './tube-inputs.ts';

const { M } = tubeForceInputs;
const { round, H, B, t, W_el, E, f_y } = tubeInputs;

const togetherSteps = [
  ...sealedWallSteps,
  { symbol: 'sigma_x', expression: 'M / W_el', unit: 'MPa', meaning: 'stress along the tube by its bending' },
  {
    symbol: 'sigma_v',
    expression: 'sqrt(sigma_x^2 + sigma_x * sigma + sigma^2)',
    unit: 'MPa',
    meaning: 'both, square to each other and of opposite sign, by von Mises',
  },
] as const;

/** A sealed tube bends as a beam while the water bends its walls. */
export const tubeWallBent: Check = {
  id: 'tube-wall-bent',
  title: 'Wall of a sealed tube, pressure with bending',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-1', edition: '2005', clause: '6.2.1(5), first yield by von Mises', safety: 'partial factors', memory: true },
    { document: 'AISC 360', edition: '2016', clause: 'F11, allowable stress at first yield', safety: 'allowable stress', memory: true },
  ], // prettier-ignore
  places: tubePlaces,
  applies: (model, id, { loadCase }) =>
    loadCase === 'lift in air' || loadCase === 'support on deck' ? 'no water presses on it in air' : sealed(model, id),
  inputs: {
    ...depthInputs,
    ...{ M, round, H, B, t, W_el, E, f_y },
    ...poisson,
    gamma_M0: basisFactor('gamma_M0', 'partial factor on yielding', 'partial factors'),
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...togetherSteps,
      { symbol: 'sigma_Rd', expression: 'f_y / gamma_M0', unit: 'MPa', meaning: 'design yield stress' },
    ],
    'allowable stress': [
      ...togetherSteps,
      { symbol: 'sigma_Rd', expression: 'f_y / Omega_b', unit: 'MPa', meaning: 'allowable stress at first yield' },
    ],
  },
  solved: { inputs: solvedTubeForces },
  demand: 'sigma_v',
  capacity: 'sigma_Rd',
  second: {
    title: 'no less than the bending alone, no more than bending and a wall hinged at its corners one on the other',
    source: [{ document: 'von Mises against Tresca; beam tables', memory: true }],
    steps: [
      { symbol: 'sigma_low', expression: 'M / W_el', unit: 'MPa', meaning: 'bending alone' },
      {
        symbol: 'sigma_high',
        expression:
          'M / W_el + gamma_F * rho * g * z * (round > 0 ? H / t : 0.75 * max(B - 2 * t, H - 2 * t)^2 / t^2 + max(B, H) / (2 * t))',
        unit: 'MPa',
        meaning: 'sum, with the wall hinged at its corners',
      },
    ],
    of: 'sigma_v',
    low: 'sigma_low',
    high: 'sigma_high',
  },
  cautions: [
    'The largest moment is taken at the middle of a wall: no wall is everywhere as bad as this.',
    'The pressure comes and goes with every deployment: for fatigue it counts one cycle each time.',
  ],
};
