import { boltAt, boltInputs, factorOfEither, nothingLeft } from './bolt-inputs.ts';
import { boltForceCautions, tensionBounds, tensionInputs, tensionSteps } from './bolt-force-steps.ts';
import { intoPad, padInputs } from './bolt-pad-inputs.ts';
import { boltSecondOpinion } from './bolt-second-opinion.ts';
import type { Check, SecondOpinion, Step } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedBoltForces } from './solved-inputs.ts';

const { d, f_ub } = boltInputs;
const { L_e, f_ud } = padInputs;

const strip = (factor: 'gamma_M2' | 'Omega_J'): readonly Step[] => [
  { symbol: 'd_2', expression: 'd - 3 * sqrt(3) / 8 * P', unit: 'mm', meaning: 'pitch diameter' },
  { symbol: 'D_1', expression: 'd - 5 * sqrt(3) / 8 * P', unit: 'mm', meaning: 'minor diameter of the pad’s thread' },
  {
    symbol: 'A_sb',
    expression: 'pi * D_1 * L_e * (1 / 2 + (d_2 - D_1) / (sqrt(3) * P))',
    unit: 'mm^2',
    meaning: 'area in which the bolt’s thread strips, at the minor diameter',
  },
  {
    symbol: 'A_sp',
    expression: 'pi * d * L_e * (1 / 2 + (d - d_2) / (sqrt(3) * P))',
    unit: 'mm^2',
    meaning: 'area in which the pad’s thread strips, at the diameter of the bolt',
  },
  {
    symbol: 'F_th_Rd',
    expression: `0.6 * min(f_ub * A_sb, f_ud * A_sp) / ${factor}`,
    unit: 'kN',
    meaning: 'resistance of the thread, in shear',
  },
];

/** Bounds of F_th_Rd by plain cylinders. */
const bounds: SecondOpinion = {
  title:
    'Resistance: below, half of a plain cylinder at the minor diameter by Tresca; above, a whole cylinder at the bolt’s diameter by von Mises',
  source: [{ document: 'H. Tresca’s and R. von Mises’ flow rules; cylinders derived by hand' }],
  steps: [
    {
      symbol: 'R_low',
      expression: 'pi * (d - 1.1 * P) * L_e * min(f_ub, f_ud) / (4 * gamma_R)',
      unit: 'kN',
      meaning: 'smaller resistance',
    },
    {
      symbol: 'R_high',
      expression: 'pi * d * L_e * min(f_ub, f_ud) / (sqrt(3) * gamma_R)',
      unit: 'kN',
      meaning: 'larger resistance',
    },
  ],
  of: 'F_th_Rd',
  low: 'R_low',
  high: 'R_high',
};

/** Stripping of the thread in a tapped pad. */
export const boltThreadEngagement: Check = {
  id: 'bolt-thread-engagement',
  title: 'Thread engaged in the tapped pad',
  limitState: 'strength',
  source: [
    { document: 'FED-STD-H28/2', clause: 'areas of thread in shear, basic sizes', memory: true },
    { document: 'ISO 724', clause: 'd_2 and D_1, from public copies' },
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.4, 0.6 in shear', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J4.2(b)', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: intoPad,
  rule: nothingLeft,
  inputs: {
    ...tensionInputs,
    ...{ d, f_ub, L_e, f_ud },
    P: {
      unit: 'mm',
      meaning: 'pitch of the thread',
      from: 'catalogue: fasteners',
      read: (model, bay) => boltAt(model, bay).pitch,
    },
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on rupture', 'allowable stress'),
    gamma_R: factorOfEither('gamma_M2', 'Omega_J', 'factor on rupture, of either kind of basis'),
  },
  steps: {
    'partial factors': [...tensionSteps, ...strip('gamma_M2')],
    'allowable stress': [...tensionSteps, ...strip('Omega_J')],
  },
  solved: { inputs: solvedBoltForces },
  demand: 'F_t',
  capacity: 'F_th_Rd',
  second: boltSecondOpinion(tensionBounds, bounds),
  cautions: [
    ...boltForceCautions,
    'Basic sizes: tolerances of thread and hole, wear and galling take a fifth and more. Use an insert where the bolt is taken out often.',
    'The whole pad is taken as threaded and the bolt as reaching through it.',
  ],
};
