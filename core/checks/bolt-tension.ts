import { bolted, boltInputs, factorOfEither, fixingAt, nothingLeft } from './bolt-inputs.ts';
import { boltForceCautions, tensionBounds, tensionInputs, tensionSteps } from './bolt-force-steps.ts';
import { boltSecondOpinion } from './bolt-second-opinion.ts';
import type { Check, SecondOpinion, Step } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedBoltForces } from './solved-inputs.ts';

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

/** Bounds of F_t_Rd: what a bolt can be tightened to below, more steel than any thread leaves above. */
const bounds: SecondOpinion = {
  title:
    'Resistance: below, the preload 0.7 f_ub A_s that a bolt bears while it is tightened (a countersunk head 80 % of it); above, the whole strength on the area at the pitch diameter',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '3.6.1(2), preload' },
    { document: 'ISO 724, ASME B1.1', clause: 'd_2 = d - 0.6495 P, from public copies' },
    { document: 'ISO 898-1', clause: 'bolts of reduced loadability: 80 %', memory: true },
  ],
  steps: [
    {
      symbol: 'R_low',
      expression: '(countersunk > 0 ? 0.8 : 1) * 0.7 * f_ub * A_s / gamma_R',
      unit: 'kN',
      meaning: 'smaller resistance',
    },
    {
      symbol: 'A_2',
      expression: '((sqrt(A_b) + 2 * sqrt(A_s)) / 3)^2',
      unit: 'mm^2',
      meaning: 'area at (d + 2 d_s) / 3, the pitch diameter (of ISO threads a little more)',
    },
    { symbol: 'R_high', expression: 'f_ub * A_2 / gamma_R', unit: 'kN', meaning: 'larger resistance' },
  ],
  of: 'F_t_Rd',
  low: 'R_low',
  high: 'R_high',
};

/** Tension in the worst bolt of a panel field, prying included. */
export const boltTension: Check = {
  id: 'bolt-tension',
  title: 'Bolt in tension',
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
  rule: nothingLeft,
  inputs: {
    ...tensionInputs,
    ...boltTensionInputs,
    ...{ A_s, A_b, f_ub },
    countersunk: {
      unit: '1',
      meaning: 'countersunk head (1) or hexagon (0)',
      from: 'document: fixing',
      read: (model, bay) => (fixingAt(model, bay).countersunk ? 1 : 0),
    },
    gamma_R: factorOfEither('gamma_M2', 'Omega_J', 'factor on bolts, of either kind of basis'),
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on bolts', 'allowable stress'),
  },
  steps: {
    'partial factors': [...tensionSteps, ...boltTensionResistance['partial factors']],
    'allowable stress': [...tensionSteps, ...boltTensionResistance['allowable stress']],
  },
  solved: { inputs: solvedBoltForces, second: bounds },
  demand: 'F_t',
  capacity: 'F_t_Rd',
  second: boltSecondOpinion(tensionBounds, bounds),
  cautions: boltForceCautions,
};
