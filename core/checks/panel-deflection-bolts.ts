import type { Check, Step } from './check.ts';
import { fieldPlaces, spansAt } from './field-inputs.ts';
import { boltedPlateInputs, boltedPlateSteps } from './panel-bolted-steps.ts';
import { deflectionLimit, inService, servicePressure, tooFarForThinPlate } from './panel-deflection-steps.ts';
import { solvedDip } from './solved-inputs.ts';

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
  solved: solvedDip,
  demand: 'w_Ed',
  capacity: 'w_lim',
  second: {
    title:
      'strips and tables: below, the plate on line supports half its overhang nearer, or its widest gap between rows as a strip; above, the plate on lines and the rows as strips between bolts, or one way only, and the overhang as a cantilever',
    source: [
      {
        document: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells',
        edition: '2nd',
        clause: 'art. 28, Table 8',
        memory: true,
      },
      { document: 'beam theory; compared with plates on 2 to 12 bolts a row, overhangs to 0.6 of the span' },
    ],
    steps: [
      {
        symbol: 'D',
        expression: 'E * t^3 / (12 * (1 - nu^2))',
        unit: 'N*m',
        meaning: 'bending stiffness of the panel per width',
      },
      { symbol: 's_x', expression: 'a_b / (n_x - 1)', unit: 'mm', meaning: 'pitch of the rows along x' },
      { symbol: 's_y', expression: 'b_b / (n_y - 1)', unit: 'mm', meaning: 'pitch of the rows along y' },
      {
        symbol: 'a_r',
        expression: 'max(a_b - i_x, a_b / 100)',
        unit: 'mm',
        meaning: 'span along x less half the overhang at each end',
      },
      {
        symbol: 'b_r',
        expression: 'max(b_b - i_y, b_b / 100)',
        unit: 'mm',
        meaning: 'span along y less half the overhang at each end',
      },
      {
        symbol: 'w_lines',
        expression: 'p_ser / D * max(0.00406 * min(a_r, b_r)^4, 5 / 384 * (a_r * b_r)^4 / (a_r^2 + b_r^2)^2)',
        unit: 'mm',
        meaning: 'hinged on lines: no less than the square, nor than strips whose stiffness adds as 1/a^2 + 1/b^2',
      },
      {
        symbol: 'w_gap',
        expression: 'p_ser / (384 * D) * max((n_x < 3 ? 5 * a_r^4 : s_x^4), (n_y < 3 ? 5 * b_r^4 : s_y^4))',
        unit: 'mm',
        meaning: 'widest gap as a strip: hinged where no bolt stands between the corners, held otherwise',
      },
      {
        symbol: 'w_low',
        expression: '0.98 * max(w_lines, w_gap)',
        unit: 'mm',
        meaning: 'the larger, with 2 % for the digits',
      },
      {
        symbol: 'w_both',
        expression: 'p_ser / D * min(5 / 384 * min(a_b, b_b)^4, 16 / pi^6 * (a_b * b_b)^4 / (a_b^2 + b_b^2)^2)',
        unit: 'mm',
        meaning: 'hinged on lines: no more than a strip, nor than the first term of the series',
      },
      {
        symbol: 'w_row_x',
        expression: '1.2 * 5 / 32 * p_ser / (E * t^3) * max(s_x, b_p) * s_x^3',
        unit: 'mm',
        meaning:
          'sag of the rows along x: hinged strips as wide as half the pitch that carry half the panel, 1.2 times',
      },
      {
        symbol: 'w_row_y',
        expression: '1.2 * 5 / 32 * p_ser / (E * t^3) * max(s_y, a_p) * s_y^3',
        unit: 'mm',
        meaning: 'the same of the rows along y',
      },
      {
        symbol: 'w_over',
        expression: '1.2 * 12 * p_ser / (E * t^3) * (i_x^3 * (i_x / 8 + a_b / 4) + i_y^3 * (i_y / 8 + b_b / 4))',
        unit: 'mm',
        meaning: 'tips of the overhangs: cantilevers on the slope that their own moment gives the span, 1.2 times',
      },
      {
        symbol: 'w_high',
        expression:
          '1.02 * min(w_both + w_row_x + w_row_y, 5 / 384 * p_ser * a_b^4 / (D * (1 - nu)) + w_row_y, 5 / 384 * p_ser * b_b^4 / (D * (1 - nu)) + w_row_x) + w_over',
        unit: 'mm',
        meaning: 'carried both ways, or one way alone with free edges that curl, 2 % up',
      },
    ],
    of: 'w_Ed',
    low: 'w_low',
    high: 'w_high',
  },
  cautions: [tooFarForThinPlate],
};
