import { bolted, boltInputs, nothingLeft } from './bolt-inputs.ts';
import { boltForceCautions, tensionBounds, tensionInputs, tensionSteps } from './bolt-force-steps.ts';
import type { Check, Step } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';

const { A_s, A_b, f_ub, k_2, F_nt } = boltInputs;

export const boltTensionInputs = {
  A_s: { ...A_s, only: 'partial factors' },
  A_b: { ...A_b, only: 'allowable stress' },
  f_ub: { ...f_ub, only: 'partial factors' },
  k_2,
  F_nt,
} as const;

/** Tension resistance of a bolt, F_t_Rd, for each kind of basis. */
export const boltTensionResistance = {
  'partial factors': [
    { symbol: 'F_t_Rd', expression: 'k_2 * f_ub * A_s / gamma_M2', unit: 'kN', meaning: 'tension resistance' },
  ],
  'allowable stress': [
    { symbol: 'F_t_Rd', expression: 'F_nt * A_b / Omega_J', unit: 'kN', meaning: 'allowable tension' },
  ],
} as const satisfies Record<string, readonly Step[]>;

/** Tension in the worst bolt of a panel field, prying included. */
export const boltTension: Check = {
  id: 'bolt-tension',
  title: 'Bolt in tension',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.4', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J3.6, Table J3.2', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: bolted,
  rule: nothingLeft,
  inputs: {
    ...tensionInputs,
    ...boltTensionInputs,
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on bolts', 'allowable stress'),
  },
  steps: {
    'partial factors': [...tensionSteps, ...boltTensionResistance['partial factors']],
    'allowable stress': [...tensionSteps, ...boltTensionResistance['allowable stress']],
  },
  demand: 'F_t',
  capacity: 'F_t_Rd',
  second: tensionBounds,
  cautions: boltForceCautions,
};
