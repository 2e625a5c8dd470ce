import type { Check } from './check.ts';
import { basisFactor } from './inputs.ts';
import { onlyUnder } from './only-under.ts';
import { f_235 } from './tube-class-steps.ts';
import { tubeForceInputs, tubeInputs, tubePlaces } from './tube-inputs.ts';
import { solvedTubeForces } from './solved-inputs.ts';

const { V } = tubeForceInputs;
const { round, H, t, A, A_v, E, f_y } = tubeInputs;

/** Shear of a tube. */
export const tubeShear: Check = {
  id: 'tube-shear',
  title: 'Tube in shear',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-1', edition: '2005', clause: '6.2.6', safety: 'partial factors', memory: true },
    { document: 'AISC 360', edition: '2016', clause: 'G4, G5', safety: 'allowable stress', memory: true },
  ],
  places: tubePlaces,
  applies: () => true,
  inputs: {
    ...{ V, round, H, t, f_y },
    ...onlyUnder('partial factors', { A_v, f_235 }),
    ...onlyUnder('allowable stress', { A, E }),
    gamma_M0: basisFactor('gamma_M0', 'partial factor on yielding', 'partial factors'),
    Omega_v: basisFactor('Omega_v', 'safety factor on shear', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      {
        symbol: 'r_w',
        expression: 'round > 0 ? 0 : (H - 3 * t) / t / (72 * sqrt(f_235 / f_y))',
        unit: '1',
        meaning: 'slenderness of the web over the limit of shear buckling',
      },
      { symbol: 'tau_Rd', expression: 'f_y / (sqrt(3) * gamma_M0)', unit: 'MPa', meaning: 'design shear stress' },
      { symbol: 'V_Rd', expression: 'A_v * tau_Rd', unit: 'kN', meaning: 'shear resistance' },
    ],
    'allowable stress': [
      {
        symbol: 'r_w',
        expression: 'round > 0 ? 0 : (H - 3 * t) / t / (1.1 * sqrt(5 * E / f_y))',
        unit: '1',
        meaning: 'slenderness of the web over the limit of shear buckling',
      },
      {
        symbol: 'F_cr',
        expression: 'round > 0 ? min(0.6 * f_y, 0.78 * E / (H / t)^1.5) : 0.6 * f_y',
        unit: 'MPa',
        meaning: 'nominal shear stress (G5-2b for a round wall)',
      },
      { symbol: 'tau_Rd', expression: 'F_cr / Omega_v', unit: 'MPa', meaning: 'allowable shear stress' },
      {
        symbol: 'V_Rd',
        expression: 'round > 0 ? A / 2 * tau_Rd : 2 * (H - 3 * t) * t * tau_Rd',
        unit: 'kN',
        meaning: 'allowable shear force',
      },
    ],
  },
  solved: { inputs: solvedTubeForces },
  demand: 'V',
  capacity: 'V_Rd',
  range: [{ holds: 'r_w <= 1', otherwise: 'the webs are slender: they could buckle in shear, which is another rule' }],
  second: {
    title: 'the two webs alone: over their full height, and three quarters of their flat height',
    source: [{ document: 'derived by hand from the shape' }],
    steps: [
      { symbol: 'V_high', expression: '2 * H * t * tau_Rd', unit: 'kN', meaning: 'full height' },
      {
        symbol: 'V_low',
        expression: '1.5 * (H - 4 * t) * t * tau_Rd',
        unit: 'kN',
        meaning: 'three quarters of the flat height',
      },
    ],
    of: 'V_Rd',
    low: 'V_low',
    high: 'V_high',
  },
  cautions: ['Local force at a crossing or an eye is checked by itself.'],
};
