import { bolted, boltInputs, factorOfEither } from './bolt-inputs.ts';
import { boltForceCautions, shearBound, shearInputs, shearSteps } from './bolt-force-steps.ts';
import { boltSecondOpinion } from './bolt-second-opinion.ts';
import type { Check, SecondOpinion, Step } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedBoltForces } from './solved-inputs.ts';

const { A_s, A_b, threads, f_ub, alpha_v, F_nv } = boltInputs;

export const boltShearInputs = {
  A_s: { ...A_s, only: 'partial factors' },
  A_b,
  threads: { ...threads, only: 'partial factors' },
  f_ub: { ...f_ub, only: 'partial factors' },
  alpha_v,
  F_nv,
} as const;

/** Shear resistance of a bolt with one shear plane, F_v_Rd, for each kind of basis. */
export const boltShearResistance = {
  'partial factors': [
    { symbol: 'A_v', expression: 'threads > 0 ? A_s : A_b', unit: 'mm^2', meaning: 'area in the shear plane' },
    { symbol: 'F_v_Rd', expression: 'alpha_v * f_ub * A_v / gamma_M2', unit: 'kN', meaning: 'shear resistance' },
  ],
  'allowable stress': [
    {
      symbol: 'F_v_Rd',
      expression: 'F_nv * A_b / Omega_J',
      unit: 'kN',
      meaning: 'allowable shear, on the shank whatever the threads',
    },
  ],
} as const satisfies Record<string, readonly Step[]>;

/** Inputs of `boltShearBounds` beside those of the resistance. */
export const boltShearBoundsInputs = {
  ...{ A_s, A_b, threads, f_ub },
  gamma_R: factorOfEither('gamma_M2', 'Omega_J', 'factor on bolts, of either kind of basis'),
} as const;

/** Bounds of F_v_Rd: a flow rule on the least area below, tests of bolts above. */
export const boltShearBounds: SecondOpinion = {
  title:
    'Resistance: below, the tensile stress area at Tresca’s half of the strength; above, 0.62 of it, the mean of tests, on the area at the pitch diameter, or on the shank',
  source: [
    { document: 'H. Tresca’s flow rule' },
    {
      document: 'Kulak, Fisher & Struik, Guide to Design Criteria for Bolted and Riveted Joints',
      edition: '2nd',
      clause: 'shear strength of bolts',
      memory: true,
    },
    { document: 'ISO 724, ASME B1.1', clause: 'd_2 = d - 0.6495 P, from public copies' },
  ],
  steps: [
    { symbol: 'R_low', expression: '0.5 * f_ub * A_s / gamma_R', unit: 'kN', meaning: 'smaller resistance' },
    {
      symbol: 'A_2',
      expression: 'threads > 0 ? ((sqrt(A_b) + 2 * sqrt(A_s)) / 3)^2 : A_b',
      unit: 'mm^2',
      meaning:
        'area in the shear plane: at (d + 2 d_s) / 3, the pitch diameter (of ISO threads a little more), or the shank',
    },
    { symbol: 'R_high', expression: '0.62 * f_ub * A_2 / gamma_R', unit: 'kN', meaning: 'larger resistance' },
  ],
  of: 'F_v_Rd',
  low: 'R_low',
  high: 'R_high',
};

/** Shear of the worst bolt of a panel field. */
export const boltShear: Check = {
  id: 'bolt-shear',
  title: 'Bolt in shear',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.4', safety: 'partial factors' },
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'J3.6, Table J3.2, read in the edition of 2010',
      safety: 'allowable stress',
    },
  ],
  places: fieldPlaces,
  applies: bolted,
  inputs: {
    ...shearInputs,
    ...boltShearInputs,
    ...boltShearBoundsInputs,
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on bolts', 'allowable stress'),
  },
  steps: {
    'partial factors': [...shearSteps, ...boltShearResistance['partial factors']],
    'allowable stress': [...shearSteps, ...boltShearResistance['allowable stress']],
  },
  solved: { inputs: solvedBoltForces, second: boltShearBounds },
  demand: 'F_v',
  capacity: 'F_v_Rd',
  second: boltSecondOpinion(shearBound, boltShearBounds),
  cautions: boltForceCautions,
};
