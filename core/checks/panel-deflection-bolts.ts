import type { Check, Step } from './check.ts';
import { fieldPlaces, spansAt } from './field-inputs.ts';
import { boltedPlateInputs, boltedPlateSteps } from './panel-bolted-steps.ts';
import { deflectionLimit, inService, servicePressure, tooFarForThinPlate } from './panel-deflection-steps.ts';

const steps: readonly Step[] = [
  ...boltedPlateSteps,
  {
    symbol: 'w_Ed',
    kernel: 'plate.bolted.deflection',
    arguments: ['a_p', 'b_p', 't', 'E', 'nu', 'p_ser', 'n_x', 'n_y', 'i_x', 'i_y', 'r_b'],
    unit: 'mm',
    meaning: 'largest deflection of the plate hung on its bolts',
  },
  {
    symbol: 'w_lim',
    expression: 'min(a_b, b_b) / k_w',
    unit: 'mm',
    meaning: 'part of the shorter distance between rows',
  },
];

/** Deflection of a panel field that hangs on discrete bolts. */
export const panelDeflectionBolts: Check = {
  id: 'panel-deflection-bolts',
  title: 'Deflection of the panel, hung on its bolts',
  limitState: 'serviceability',
  source: [
    {
      document: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells',
      edition: '2nd',
      clause: 'art. 51 to 53',
    },
  ],
  places: fieldPlaces,
  applies: (model, bay, situation) =>
    spansAt(model, bay, situation).supports === 'bolts'
      ? inService(situation)
      : 'in this direction the panel bears on lines',
  inputs: { p_ser: servicePressure, ...boltedPlateInputs, k_w: deflectionLimit },
  steps: { 'partial factors': steps, 'allowable stress': steps },
  demand: 'w_Ed',
  capacity: 'w_lim',
  second: {
    title:
      'below, the square of the shorter side held (T&WK Table 35, 0.00126); above, strips of both spans on top of each other at 1.5 times their share',
    source: [
      {
        document: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells',
        edition: '2nd',
        clause: 'Table 35',
        memory: true,
      },
      { document: 'common practice, no source' },
    ],
    steps: [
      {
        symbol: 'D',
        expression: 'E * t^3 / (12 * (1 - nu^2))',
        unit: 'N*m',
        meaning: 'bending stiffness of the panel per width',
      },
      {
        symbol: 'w_low',
        expression: '0.00126 * p_ser * min(a_b, b_b)^4 / D',
        unit: 'mm',
        meaning: 'held square between the rows',
      },
      {
        symbol: 'w_high',
        expression: '1.5 * 5 / 384 * p_ser * (a_p^4 + b_p^4) / D',
        unit: 'mm',
        meaning: 'hinged strips of both spans, one hung on the other',
      },
    ],
    of: 'w_Ed',
    low: 'w_low',
    high: 'w_high',
  },
  cautions: [tooFarForThinPlate],
};
