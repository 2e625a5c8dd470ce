import type { Check, Step } from './check.ts';
import { fieldInputs, fieldPlaces, spansAt } from './field-inputs.ts';
import { deflectionLimit, inService, servicePressure, tooFarForThinPlate } from './panel-deflection-steps.ts';
import { h, stripSpan } from './panel-edge-inputs.ts';
import { solvedDip } from './solved-inputs.ts';

const { t, E, nu } = fieldInputs;
const plate = ['L', 'B', 't', 'E', 'nu', 'p_ser'] as const;

const steps: readonly Step[] = [
  {
    symbol: 'w_hinged',
    kernel: 'plate.twoSided.hinged.deflection',
    arguments: plate,
    unit: 'mm',
    meaning: 'largest deflection, supports hinged: at the free edge',
  },
  {
    symbol: 'w_held',
    kernel: 'plate.twoSided.held.deflection',
    arguments: plate,
    unit: 'mm',
    meaning: 'largest deflection, supports held',
  },
  {
    symbol: 'w_Ed',
    expression: 'h > 0 ? w_held : w_hinged',
    unit: 'mm',
    meaning: 'largest deflection of the supports relied on',
  },
  { symbol: 'w_lim', expression: 'L / k_w', unit: 'mm', meaning: 'part of the span' },
];

/** Deflection of a panel field on two opposite line supports. */
export const panelDeflectionTwoSides: Check = {
  id: 'panel-deflection-two-sides',
  title: 'Deflection of the panel, borne on two sides',
  limitState: 'serviceability',
  source: [
    { document: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells', edition: '2nd', clause: 'art. 48' },
  ],
  places: fieldPlaces,
  applies: (model, bay, situation) => {
    const { supports } = spansAt(model, bay, situation);
    return supports === 'main tubes' || supports === 'cross tubes'
      ? inService(situation)
      : `in this direction the panel is held by ${supports}`;
  },
  inputs: { ...{ p_ser: servicePressure, t, E, nu, ...stripSpan, h }, k_w: deflectionLimit },
  steps: { 'partial factors': steps, 'allowable stress': steps },
  solved: solvedDip,
  demand: 'w_Ed',
  capacity: 'w_lim',
  second: {
    title: 'strips: held as a plate below, above, hinged over 1 - nu for the free edge that curls',
    source: [{ document: 'beam theory' }],
    steps: [
      {
        symbol: 'D',
        expression: 'E * t^3 / (12 * (1 - nu^2))',
        unit: 'N*m',
        meaning: 'bending stiffness of the panel per width',
      },
      { symbol: 'w_low', expression: 'p_ser * L^4 / (384 * D)', unit: 'mm', meaning: 'held strip of a wide plate' },
      {
        symbol: 'w_high',
        expression: '5 / 384 * p_ser * L^4 / (D * (1 - nu))',
        unit: 'mm',
        meaning: 'hinged strip over 1 - nu: more than the curl of a free edge adds',
      },
    ],
    of: 'w_Ed',
    low: 'w_low',
    high: 'w_high',
  },
  cautions: [tooFarForThinPlate],
};
