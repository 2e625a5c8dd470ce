import { bolted, boltInputs } from './bolt-inputs.ts';
import { boltForceCautions, shearBound, shearInputs, shearSteps } from './bolt-force-steps.ts';
import type { Check, Step } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';

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

/** Shear of the worst bolt of a panel field. */
export const boltShear: Check = {
  id: 'bolt-shear',
  title: 'Bolt in shear',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.4', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J3.6, Table J3.2', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: bolted,
  inputs: {
    ...shearInputs,
    ...boltShearInputs,
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on bolts', 'allowable stress'),
  },
  steps: {
    'partial factors': [...shearSteps, ...boltShearResistance['partial factors']],
    'allowable stress': [...shearSteps, ...boltShearResistance['allowable stress']],
  },
  demand: 'F_v',
  capacity: 'F_v_Rd',
  second: shearBound,
  cautions: boltForceCautions,
};
