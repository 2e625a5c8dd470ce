import { aluminiumPanel, bolted, boltAt, boltInputs, factorOfEither, nothingLeft } from './bolt-inputs.ts';
import { boltForceCautions, tensionBounds, tensionInputs, tensionSteps } from './bolt-force-steps.ts';
import { boltSecondOpinion } from './bolt-second-opinion.ts';
import type { Check, SecondOpinion } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedBoltForces } from './solved-inputs.ts';

const { d_m, f_u, f_yp } = boltInputs;

/** Bounds of B_p_Rd: a cylinder inside the head and one round it. */
const bounds: SecondOpinion = {
  title:
    'Resistance: below, a cylinder of the head’s size across flats that begins to flow in shear; above, one across its corners that breaks in shear, both by von Mises',
  source: [{ document: 'R. von Mises’ flow rule; cylinders derived by hand' }],
  steps: [
    {
      symbol: 'R_low',
      expression: 'pi * s_h * t * f_yp / (sqrt(3) * gamma_R)',
      unit: 'kN',
      meaning: 'smaller resistance',
    },
    {
      symbol: 'R_high',
      expression: 'pi * e_h * t * f_u / (sqrt(3) * gamma_R)',
      unit: 'kN',
      meaning: 'larger resistance',
    },
  ],
  of: 'B_p_Rd',
  low: 'R_low',
  high: 'R_high',
};

/** Punching of the head through the panel. */
export const boltPullThrough: Check = {
  id: 'bolt-pull-through',
  title: 'Panel pulled over the bolt head',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.4, punching shear', safety: 'partial factors' },
    aluminiumPanel('Table 8.5: the same punching shear of aluminium'),
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'J4.2(b), shear rupture round the head',
      safety: 'allowable stress',
      memory: true,
    },
  ],
  places: fieldPlaces,
  applies: bolted,
  rule: nothingLeft,
  inputs: {
    ...tensionInputs,
    ...{ d_m, f_u, f_yp },
    s_h: {
      unit: 'mm',
      meaning: "head's size across flats",
      from: 'catalogue: fasteners',
      read: (model, bay) => boltAt(model, bay).headAcrossFlats,
    },
    e_h: {
      unit: 'mm',
      meaning: "head's size across corners, the least that the standards allow",
      from: 'catalogue: fasteners',
      read: (model, bay) => boltAt(model, bay).headAcrossCorners,
    },
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on rupture', 'allowable stress'),
    gamma_R: factorOfEither('gamma_M2', 'Omega_J', 'factor on rupture, of either kind of basis'),
  },
  steps: {
    'partial factors': [
      ...tensionSteps,
      {
        symbol: 'B_p_Rd',
        expression: '0.6 * pi * d_m * t * f_u / gamma_M2',
        unit: 'kN',
        meaning: 'punching resistance',
      },
    ],
    'allowable stress': [
      ...tensionSteps,
      {
        symbol: 'B_p_Rd',
        expression: '0.6 * pi * d_m * t * f_u / Omega_J',
        unit: 'kN',
        meaning: 'allowable punching force',
      },
    ],
  },
  solved: { inputs: solvedBoltForces, second: bounds },
  demand: 'F_t',
  capacity: 'B_p_Rd',
  second: boltSecondOpinion(tensionBounds, bounds),
  cautions: [...boltForceCautions, 'A washer under the head is not counted here, which is safe.'],
};
