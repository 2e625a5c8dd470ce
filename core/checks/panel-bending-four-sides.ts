import type { Check, Step } from './check.ts';
import { fieldInputs, fieldPlaces, spansAt, panelYieldFactor } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { edgesHoldAsLines, edgeStiffness, EI_edge, h, thinPlateCaution } from './panel-edge-inputs.ts';

const plate = ['a', 'b', 't', 'E', 'nu', 'p'] as const;

const stresses: readonly Step[] = [
  {
    symbol: 'sigma_hinged',
    kernel: 'plate.hinged.stress',
    arguments: plate,
    unit: 'MPa',
    meaning: 'largest stress, edges hinged',
  },
  {
    symbol: 'sigma_held',
    kernel: 'plate.held.stress',
    arguments: plate,
    unit: 'MPa',
    meaning: 'largest stress, edges held',
  },
  edgeStiffness,
  {
    symbol: 'r_M',
    kernel: 'plate.onEdgeBeams.momentRatio',
    arguments: [...plate, 'EI_edge'],
    unit: '1',
    meaning: 'moment on tubes that sink over that on edges that do not',
  },
  {
    symbol: 'sigma_Ed',
    expression: '(h > 0 ? sigma_held : sigma_hinged) + max(r_M - 1, 0) * sigma_hinged',
    unit: 'MPa',
    meaning: 'largest stress of the edges relied on, and what the sinking of the tubes adds',
  },
];

/** Bending of a panel field that bears on four line supports, first yield of the thin plate. */
export const panelBendingFourSides: Check = {
  id: 'panel-bending-four-sides',
  title: 'Panel in bending, borne on four sides',
  limitState: 'strength',
  source: [
    {
      document: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells',
      edition: '2nd',
      clause: 'art. 30, 44, 49',
    },
    { document: 'EN 1993-1-1', edition: '2005', clause: '6.2.1(5)', safety: 'partial factors', memory: true },
    { document: 'AISC 360', edition: '2016', clause: 'F11', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: (model, bay, situation) =>
    spansAt(model, bay, situation).supports === 'four sides' ||
    `in this direction the panel is held by ${spansAt(model, bay, situation).supports}`,
  inputs: {
    ...fieldInputs,
    h,
    EI_edge,
    gamma_M0: panelYieldFactor,
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...stresses,
      { symbol: 'sigma_Rd', expression: 'f_y / gamma_M0', unit: 'MPa', meaning: 'design yield stress' },
    ],
    'allowable stress': [
      ...stresses,
      { symbol: 'sigma_Rd', expression: 'f_y / Omega_b', unit: 'MPa', meaning: 'allowable stress at first yield' },
    ],
  },
  demand: 'sigma_Ed',
  capacity: 'sigma_Rd',
  range: [edgesHoldAsLines],
  second: {
    title: 'yield lines below (no plate yields later than it collapses), a hinged strip across the shorter span above',
    source: [
      { document: 'K. W. Johansen, Yield-line Theory', edition: '1962', memory: true },
      { document: 'beam theory' },
    ],
    steps: [
      {
        symbol: 'p_y',
        kernel: 'yieldLine.hinged',
        arguments: ['a', 'b', 't', 'f_y'],
        unit: 'kPa',
        meaning: 'collapse pressure by yield lines, edges hinged; held edges carry twice',
      },
      {
        symbol: 'sigma_low',
        expression: 'p / (2 / sqrt(3) * (1 + h) * p_y) * f_y',
        unit: 'MPa',
        meaning: 'stress if first yield came as late as collapse; 2/sqrt(3) for von Mises steel along a yield line',
      },
      {
        symbol: 'sigma_high',
        expression: '0.75 * p * min(a, b)^2 / t^2 * max(r_M, 1)',
        unit: 'MPa',
        meaning: 'hinged strip of the shorter span',
      },
    ],
    of: 'sigma_Ed',
    low: 'sigma_low',
    high: 'sigma_high',
  },
  cautions: [thinPlateCaution],
};
