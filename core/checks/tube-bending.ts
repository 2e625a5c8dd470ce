import type { Check } from './check.ts';
import { handbook, wallLimitsRead } from './handbook.ts';
import { basisFactor } from './inputs.ts';
import { onlyUnder } from './only-under.ts';
import {
  bendingClassSteps,
  drilledStrengthStep,
  f_235,
  flangeLeft,
  nominalMomentSteps,
  notSlender,
  ruptureMomentSteps,
} from './tube-class-steps.ts';
import { tubeForceInputs, tubeInputs, tubePlaces } from './tube-inputs.ts';
import { solvedTubeForces } from './solved-inputs.ts';

const { M, V, M_statics } = tubeForceInputs;
const { round, H, B, t, A_v, W_el, W_pl, n_h, d_h, E, f_y, f_u } = tubeInputs;

/** Bending of a tube as a beam of the grid, shear at the same section included. */
export const tubeBending: Check = {
  id: 'tube-bending',
  title: 'Tube in bending',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-1', edition: '2005', clause: 'Table 5.2, flat walls', safety: 'partial factors' },
    {
      document: 'EN 1993-1-1',
      edition: '2005',
      clause: 'Table 5.2, round walls, 6.2.5, 6.2.8',
      safety: 'partial factors',
      memory: true,
    },
    { document: 'AISC 360', edition: '2016', clause: 'Table B4.1b, F7, F8, F13.1', safety: 'allowable stress' },
    wallLimitsRead,
    handbook('5.5.5 to 5.5.8'),
  ],
  places: tubePlaces,
  applies: () => true,
  inputs: {
    ...{ M, M_statics, round, H, B, t, W_el, W_pl, n_h, d_h, f_y, f_u },
    ...onlyUnder('partial factors', { V, A_v, f_235 }),
    ...onlyUnder('allowable stress', { E }),
    gamma_M0: basisFactor('gamma_M0', 'partial factor on yielding', 'partial factors'),
    gamma_M2: basisFactor('gamma_M2', 'partial factor on rupture at holes', 'partial factors'),
    Omega_b: basisFactor('Omega_b', 'safety factor on bending', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...bendingClassSteps,
      {
        symbol: 'V_pl',
        expression: 'A_v * f_y / (sqrt(3) * gamma_M0)',
        unit: 'kN',
        meaning: 'plastic shear resistance',
      },
      {
        symbol: 'rho',
        expression: 'V > 0.5 * V_pl ? (2 * V / V_pl - 1)^2 : 0',
        unit: '1',
        meaning: 'part of the strength that shear takes up',
      },
      drilledStrengthStep,
      { symbol: 'M_Rd', expression: '(1 - rho) * W * f_d', unit: 'kN*m', meaning: 'moment resistance' },
    ],
    'allowable stress': [
      ...nominalMomentSteps,
      ...ruptureMomentSteps,
      { symbol: 'M_Rd', expression: 'M_r / Omega_b', unit: 'kN*m', meaning: 'allowable moment' },
    ],
  },
  solved: { inputs: solvedTubeForces },
  demand: 'M',
  capacity: 'M_Rd',
  range: [notSlender, flangeLeft],
  second: {
    title: 'statics of the loads alone',
    source: [{ document: 'equilibrium, no source' }],
    steps: [{ symbol: 'M_high', expression: 'M_statics', unit: 'kN*m', meaning: 'bound on the moment' }],
    of: 'M',
    high: 'M_high',
  },
  cautions: [
    'Holes of bolts are always taken off, in both flanges and at the section of the largest moment, which is safe.',
    'Shear, where it matters, is taken off the whole section, which is safe (EN 1993-1-1 takes it off the shear area).',
    'Lateral buckling is left out: a hollow section in a braced grid does not twist away.',
  ],
};
