import type { Check, Step } from './check.ts';
import { fieldInputs, fieldPlaces, spansAt, panelYieldFactor } from './field-inputs.ts';
import { boltForceInputs, nothingLeft } from './bolt-inputs.ts';
import { basisFactor } from './inputs.ts';
import { boltedPlateInputs, boltedPlateSteps } from './panel-bolted-steps.ts';
import { thinPlateCaution } from './panel-edge-inputs.ts';

const stress: readonly Step[] = [
  ...boltedPlateSteps,
  {
    symbol: 'sigma_rows',
    kernel: 'plate.bolted.stress',
    arguments: ['a_p', 'b_p', 't', 'E', 'nu', 'p', 'n_x', 'n_y', 'i_x', 'i_y', 'r_b'],
    unit: 'MPa',
    meaning: 'largest stress of the plate hung on its bolts, outside r_b round each',
  },
  { symbol: 'p_lost', expression: 'lost * p', unit: 'kPa', meaning: 'pressure with a row of bolts lost' },
  {
    symbol: 'sigma_lost',
    kernel: 'bolts.rowLost.stress',
    arguments: ['a_b', 'b_b', 't', 'E', 'nu', 'p_lost', 'n_x', 'n_y', 'i_x', 'i_y', 'r_b'],
    unit: 'MPa',
    meaning: 'with a row lost, the worst of them: the same on the bolts that are left',
  },
  {
    symbol: 'sigma_Ed',
    expression: 'max(sigma_rows, sigma_lost)',
    unit: 'MPa',
    meaning: 'largest stress of the plate',
  },
];

/** Bending of a panel field that is pulled off its tubes and hangs on discrete bolts. */
export const panelBendingBolts: Check = {
  id: 'panel-bending-bolts',
  title: 'Panel in bending, hung on its bolts',
  limitState: 'strength',
  source: [
    {
      document: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells',
      edition: '2nd',
      clause: 'art. 51 to 53',
    },
    { document: 'EN 1993-1-1', edition: '2005', clause: '6.2.1(5)', safety: 'partial factors', memory: true },
    { document: 'AISC 360', edition: '2016', clause: 'F11', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: (model, bay, situation) => {
    const { supports } = spansAt(model, bay, situation);
    return (
      supports === 'bolts' ||
      (supports === 'four sides'
        ? 'in this direction the panel is held along four sides'
        : `in this direction the panel is held by ${supports}`)
    );
  },
  rule: nothingLeft,
  inputs: {
    p: fieldInputs.p,
    ...boltedPlateInputs,
    lost: boltForceInputs.lost,
    f_y: fieldInputs.f_y,
    gamma_M0: panelYieldFactor,
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...stress,
      { symbol: 'sigma_Rd', expression: 'f_y / gamma_M0', unit: 'MPa', meaning: 'design yield stress' },
    ],
    'allowable stress': [
      ...stress,
      { symbol: 'sigma_Rd', expression: 'f_y / Omega_b', unit: 'MPa', meaning: 'allowable stress at first yield' },
    ],
  },
  demand: 'sigma_Ed',
  capacity: 'sigma_Rd',
  second: {
    title:
      'yield lines of a plate held along the rows below; above, a strip of the longer span that takes 1.5 times its share, as a flat slab on columns, or a cantilever with a row lost',
    source: [
      { document: 'K. W. Johansen, Yield-line Theory', edition: '1962', memory: true },
      { document: 'common practice, no source' },
    ],
    steps: [
      {
        symbol: 'p_y',
        kernel: 'yieldLine.held',
        arguments: ['a_b', 'b_b', 't', 'f_y'],
        unit: 'kPa',
        meaning: 'collapse pressure by yield lines, held along the rows: more than points can hold',
      },
      {
        symbol: 'sigma_low',
        expression: 'p / (2 / sqrt(3) * p_y) * f_y',
        unit: 'MPa',
        meaning: 'stress if first yield came as late as collapse',
      },
      {
        symbol: 'sigma_high',
        expression: '1.5 * (lost > 0 ? 3 : 0.75) * p * max(a_b, b_b)^2 / t^2 + 3 * p * max(i_x, i_y)^2 / t^2',
        unit: 'MPa',
        meaning: 'strip of the longer span (a cantilever with a row lost), and the overhang as a cantilever',
      },
    ],
    of: 'sigma_Ed',
    low: 'sigma_low',
    high: 'sigma_high',
  },
  cautions: [thinPlateCaution, 'Bolts as rigid points at even pitches.'],
};
