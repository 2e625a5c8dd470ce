import type { Check, Step } from './check.ts';
import { fieldInputs, fieldPlaces, spansAt } from './field-inputs.ts';
import { deflectionLimit, inService, servicePressure, tooFarForThinPlate } from './panel-deflection-steps.ts';
import { edgesHoldAsLines, EI_edge, h } from './panel-edge-inputs.ts';

const { a, b, t, E, nu } = fieldInputs;
const plate = ['a', 'b', 't', 'E', 'nu', 'p_ser'] as const;

const steps: readonly Step[] = [
  {
    symbol: 'w_hinged',
    kernel: 'plate.hinged.deflection',
    arguments: plate,
    unit: 'mm',
    meaning: 'largest deflection, edges hinged',
  },
  {
    symbol: 'w_held',
    kernel: 'plate.held.deflection',
    arguments: plate,
    unit: 'mm',
    meaning: 'largest deflection, edges held',
  },
  {
    symbol: 'g',
    kernel: 'plate.onEdgeBeams.g',
    arguments: [...plate, 'EI_edge'],
    unit: '1',
    meaning: 'stiffness of the tubes over that of the panel, E I / (s D) with s the shorter side',
  },
  {
    symbol: 'r_w',
    kernel: 'plate.onEdgeBeams.deflectionRatio',
    arguments: [...plate, 'EI_edge'],
    unit: '1',
    meaning: 'deflection on tubes that sink over that on edges that do not',
  },
  {
    symbol: 'w_Ed',
    expression: '(h > 0 ? w_held : w_hinged) + max(r_w - 1, 0) * w_hinged',
    unit: 'mm',
    meaning: 'largest deflection of the edges relied on, and what the sinking of the tubes adds',
  },
  { symbol: 'w_lim', expression: 'min(a, b) / k_w', unit: 'mm', meaning: 'part of the shorter span' },
];

/** Deflection of a panel field that bears on four line supports. */
export const panelDeflectionFourSides: Check = {
  id: 'panel-deflection-four-sides',
  title: 'Deflection of the panel, borne on four sides',
  limitState: 'serviceability',
  source: [
    {
      document: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells',
      edition: '2nd',
      clause: 'art. 30, 44, 49',
    },
  ],
  places: fieldPlaces,
  applies: (model, bay, situation) =>
    spansAt(model, bay, situation).supports === 'four sides'
      ? inService(situation)
      : `in this direction the panel is held by ${spansAt(model, bay, situation).supports}`,
  inputs: { ...{ p_ser: servicePressure, a, b, t, E, nu, h, EI_edge }, k_w: deflectionLimit },
  steps: { 'partial factors': steps, 'allowable stress': steps },
  demand: 'w_Ed',
  capacity: 'w_lim',
  range: [edgesHoldAsLines],
  second: {
    title:
      'below, the square of the shorter side held on edges that cannot move (large deflections, where tabled); above, a hinged strip',
    source: [
      { document: 'S. Levy, NACA Reports 737 and 740', edition: '1942', memory: true },
      { document: 'beam theory' },
    ],
    steps: [
      {
        symbol: 'w_low',
        kernel: 'plate.largeSquareWithin',
        arguments: plate,
        unit: 'mm',
        meaning: 'stretched square inside the field',
      },
      {
        symbol: 'D',
        expression: 'E * t^3 / (12 * (1 - nu^2))',
        unit: 'N*m',
        meaning: 'bending stiffness of the panel per width',
      },
      {
        symbol: 'w_high',
        expression: '5 / 380 * p_ser * min(a, b)^4 / D * max(r_w, 1)',
        unit: 'mm',
        meaning: 'hinged strip of the shorter span (5/384), one percent up',
      },
    ],
    of: 'w_Ed',
    low: 'w_low',
    high: 'w_high',
  },
  cautions: [tooFarForThinPlate],
};
