import { bolted, nothingLeft } from './bolt-inputs.ts';
import { boltForceCautions, boltForcesInputs, boltForcesSteps } from './bolt-force-steps.ts';
import { boltShearInputs, boltShearResistance } from './bolt-shear.ts';
import { boltTensionInputs, boltTensionResistance } from './bolt-tension.ts';
import type { Check } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor, constant } from './inputs.ts';

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
    u_Rd: constant(1, '1', 'limit of the sum', 'rule'),
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on bolts', 'allowable stress'),
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
  demand: 'u',
  capacity: 'u_Rd',
  second: {
    title: 'an ellipse through both resistances: any of the straight rules stays between a part and a multiple of it',
    source: [{ document: 'AISC 360 Commentary', edition: '2016', clause: 'J3.7', memory: true }],
    steps: [
      {
        symbol: 'u_e',
        expression: 'sqrt((F_v / F_v_Rd)^2 + (F_t / F_t_Rd)^2)',
        unit: '1',
        meaning: 'elliptic interaction',
      },
      {
        symbol: 'u_low',
        expression: 'u_e / 1.4',
        unit: '1',
        meaning: 'where there is tension alone, or where both are alike',
      },
      {
        symbol: 'u_high',
        expression: '1.25 * u_e',
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
