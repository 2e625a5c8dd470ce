import { bolted, boltInputs, factorOfEither, nothingLeft } from './bolt-inputs.ts';
import { boltForceCautions, boltForcesInputs, boltForcesSteps } from './bolt-force-steps.ts';
import { boltShearInputs, boltShearResistance } from './bolt-shear.ts';
import { boltTensionInputs, boltTensionResistance } from './bolt-tension.ts';
import type { Check } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor, constant } from './inputs.ts';
import { solvedBoltForces } from './solved-inputs.ts';

const { A_s, A_b, f_ub } = boltInputs;

/** Shear and tension in one bolt. */
export const boltCombined: Check = {
  id: 'bolt-combined',
  title: 'Bolt in shear and tension',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.4', safety: 'partial factors' },
    {
      document: 'AISC 360',
      edition: '2016',
      clause: "J3.7, read in the edition of 2010: F'_nt = 1.3 F_nt - Omega F_nt f_rv / F_nv, divided through",
      safety: 'allowable stress',
    },
  ],
  places: fieldPlaces,
  applies: bolted,
  rule: nothingLeft,
  inputs: {
    ...boltForcesInputs,
    ...boltTensionInputs,
    ...boltShearInputs,
    ...{ A_s, A_b, f_ub },
    u_Rd: constant(1, '1', 'limit of the sum', 'rule'),
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on bolts', 'allowable stress'),
    gamma_R: factorOfEither('gamma_M2', 'Omega_J', 'factor on bolts, of either kind of basis'),
  },
  steps: {
    'partial factors': [
      ...boltForcesSteps,
      ...boltShearResistance['partial factors'],
      ...boltTensionResistance['partial factors'],
      {
        symbol: 'u',
        expression: 'F_v / F_v_Rd + F_t / (1.4 * F_t_Rd)',
        unit: '1',
        meaning: 'shear and tension together',
      },
    ],
    'allowable stress': [
      ...boltForcesSteps,
      ...boltShearResistance['allowable stress'],
      ...boltTensionResistance['allowable stress'],
      {
        symbol: 'u',
        expression: '(F_v / F_v_Rd + F_t / F_t_Rd) / 1.3',
        unit: '1',
        meaning: 'shear and tension together',
      },
    ],
  },
  solved: { inputs: solvedBoltForces },
  demand: 'u',
  capacity: 'u_Rd',
  second: {
    title:
      'an ellipse, from which any straight rule strays by a part at the most: through both resistances, and through those that flow and tests of bolts give below and above',
    source: [
      { document: 'AISC 360 Commentary', edition: '2016', clause: 'J3.7', memory: true },
      { document: 'bounds of shear and tension alone, as those checks name them' },
    ],
    steps: [
      {
        symbol: 'u_e',
        expression: 'sqrt((F_v / F_v_Rd)^2 + (F_t / F_t_Rd)^2)',
        unit: '1',
        meaning: 'ellipse through both resistances',
      },
      {
        symbol: 'u_most',
        expression: 'sqrt((F_v / 0.5)^2 + (F_t / 0.56)^2) * gamma_R / (f_ub * A_s)',
        unit: '1',
        meaning: 'ellipse through the smaller ones: 0.5 f_ub A_s across; 0.8 of the preload 0.7 f_ub A_s along',
      },
      {
        symbol: 'u_least',
        expression: 'sqrt((F_v / 0.62)^2 + F_t^2) * gamma_R / (f_ub * A_b)',
        unit: '1',
        meaning: 'ellipse through the larger ones: 0.62 f_ub across and f_ub along, on the shank',
      },
      {
        symbol: 'u_low',
        expression: 'max(u_e, u_least) / 1.4',
        unit: '1',
        meaning: 'where there is tension alone, or where both are alike',
      },
      {
        symbol: 'u_high',
        expression: '1.25 * min(u_e, u_most)',
        unit: '1',
        meaning: 'the most by which a straight rule lies above it',
      },
    ],
    of: 'u',
    low: 'u_low',
    high: 'u_high',
  },
  cautions: [...boltForceCautions, 'Shear alone and tension alone are checked by themselves as well.'],
};
