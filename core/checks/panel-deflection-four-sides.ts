import type { Check, Step } from './check.ts';
import { fieldInputs, fieldPlaces, spansAt } from './field-inputs.ts';
import { deflectionLimit, inService, servicePressure } from './panel-deflection-steps.ts';
import { edgesHoldAsLines, EI_edge, h } from './panel-edge-inputs.ts';
import { solvedDip } from './solved-inputs.ts';

const { a, b, t, E, nu } = fieldInputs;
const plate = ['a', 'b', 't', 'E', 'nu', 'p_ser'] as const;

const steps: readonly Step[] = [
  {
    symbol: 'w_hinged',
    kernel: 'plate.hinged.deflection',
    arguments: plate,
    unit: 'mm',
    meaning: 'largest deflection, edges hinged, small deflections',
  },
  {
    symbol: 'w_slides',
    kernel: 'plate.sliding.deflection',
    arguments: plate,
    unit: 'mm',
    meaning:
      'the same with the membrane effect, edges that slide in the plane of the panel: no way to hold them lets it deflect more',
  },
  {
    symbol: 'w_held',
    kernel: 'plate.held.deflection',
    arguments: plate,
    unit: 'mm',
    meaning: 'largest deflection, edges held, small deflections',
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
    expression: '(h > 0 ? w_held : w_slides) + max(r_w - 1, 0) * w_hinged',
    unit: 'mm',
    meaning: 'largest deflection of the edges relied on, and what the sinking of the tubes adds to small deflections',
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
      clause: 'art. 30, 44, 49, 102',
    },
    { document: 'ASTM E1300', edition: '2016', clause: 'app. X1, edges free to slip', memory: true },
    { document: 'S. Levy, NACA Report 737', edition: '1942', memory: true },
  ],
  places: fieldPlaces,
  applies: (model, bay, situation) =>
    spansAt(model, bay, situation).supports === 'four sides'
      ? inService(situation)
      : `in this direction the panel is held by ${spansAt(model, bay, situation).supports}`,
  inputs: { ...{ p_ser: servicePressure, a, b, t, E, nu, h, EI_edge }, k_w: deflectionLimit },
  steps: { 'partial factors': steps, 'allowable stress': steps },
  solved: solvedDip,
  demand: 'w_Ed',
  capacity: 'w_lim',
  range: [edgesHoldAsLines],
  second: {
    title:
      'below, the square of the shorter side between edges that cannot move: its bending and its membrane side by side; above, small deflections by the first term of a series or a hinged strip, 2 % up',
    source: [
      {
        document: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells',
        edition: '2nd',
        clause: 'art. 28, 101; Tables 8, 35',
        memory: true,
      },
      { document: 'beam theory' },
    ],
    steps: [
      {
        symbol: 'D',
        expression: 'E * t^3 / (12 * (1 - nu^2))',
        unit: 'N*m',
        meaning: 'bending stiffness of the panel per width',
      },
      { symbol: 's_w', expression: 'min(a, b)', unit: 'mm', meaning: 'shorter side' },
      {
        symbol: 'k_plate',
        expression: 'D / ((h > 0 ? 0.00126 : 0.00406) * s_w^4)',
        unit: 'kPa/mm',
        meaning: 'pressure over small deflection of the square of that side, held or hinged',
      },
      {
        symbol: 'k_sheet',
        expression: 'cbrt(p_ser^2 * E * t / (s_w / 2)) / (0.802 * s_w / 2)',
        unit: 'kPa/mm',
        meaning: 'pressure over deflection of the same square as a membrane, w = 0.802 (s/2) cbrt(p (s/2) / (E t))',
      },
      {
        symbol: 'w_low',
        expression: 'p_ser / (k_plate + k_sheet)',
        unit: 'mm',
        meaning: 'as if both were as stiff for their part of the pressure as under all of it, and edges could not move',
      },
      {
        symbol: 'w_high',
        expression: '1.02 * min(5 / 384, 16 / (pi^6 * (1 + (s_w / max(a, b))^2)^2)) * p_ser * s_w^4 / D * max(r_w, 1)',
        unit: 'mm',
        meaning:
          'hinged: strip of the shorter span or first term of the series; 2 % for edges compressed as they slide',
      },
    ],
    of: 'w_Ed',
    low: 'w_low',
    high: 'w_high',
  },
  cautions: [
    'Membrane effect by von Kármán’s equations for hinged edges that slide, sides up to 1 : 5; longer panels, edges held and the sinking of the tubes by small deflections, which is safe for the panel alone.',
  ],
};
