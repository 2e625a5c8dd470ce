import { bolted, boltInputs, nothingLeft } from './bolt-inputs.ts';
import { boltForceCautions, tensionBounds, tensionInputs, tensionSteps } from './bolt-force-steps.ts';
import type { Check } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';

const { d_m, f_u } = boltInputs;

/** Punching of the head through the panel. */
export const boltPullThrough: Check = {
  id: 'bolt-pull-through',
  title: 'Panel pulled over the bolt head',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.4, punching shear', safety: 'partial factors' },
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
    ...{ d_m, f_u },
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on rupture', 'allowable stress'),
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
  demand: 'F_t',
  capacity: 'B_p_Rd',
  second: tensionBounds,
  cautions: [...boltForceCautions, 'A washer under the head is not counted here, which is safe.'],
};
