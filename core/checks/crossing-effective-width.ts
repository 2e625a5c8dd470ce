import type { Check, Step } from './check.ts';
import {
  braceForceInputs,
  braceInputs,
  crossingPlaces,
  crossingSizeInputs,
  jointOf,
  yieldOfChord,
} from './crossing-inputs.ts';
import { gamma_M5 } from './crossing-joint.ts';
import { basisFactor, constant } from './inputs.ts';
import { solvedCrossingForces } from './solved-inputs.ts';

const { M_1, N_1 } = braceForceInputs;
const { b_0, t_0, b_1, h_1 } = crossingSizeInputs;

const effective = (factor: 'gamma_M5' | 'Omega_b'): readonly Step[] => [
  { symbol: 'beta', expression: 'b_1 / b_0', unit: '1', meaning: 'width ratio' },
  {
    symbol: 'b_eff',
    expression: 'min(b_1, 10 * t_0 / b_0 * f_y0 * t_0 / (f_y1 * t_1) * b_1)',
    unit: 'mm',
    meaning: 'width of each wall across that carries, next to the stiff sides',
  },
  {
    symbol: 'b_ep',
    expression: 'min(b_1, 10 * t_0 / b_0 * b_1)',
    unit: 'mm',
    meaning: 'the same for punching',
  },
  {
    symbol: 'N_b',
    expression: `f_y1 * t_1 * (2 * h_1 - 4 * t_1 + 2 * b_eff) / ${factor}`,
    unit: 'kN',
    meaning: 'cross tube giving way where it is stiffly held',
  },
  {
    symbol: 'N_p',
    expression: `beta <= 1 - 2 * t_0 / b_0 ? f_y0 * t_0 / sqrt(3) * (2 * h_1 + 2 * b_ep) / ${factor} : N_b`,
    unit: 'kN',
    meaning: 'punched out of the face, where it is inside the side walls',
  },
  { symbol: 'N_Rd', expression: 'min(N_b, N_p)', unit: 'kN', meaning: 'the lesser' },
  {
    symbol: 'M_Rd',
    expression: `f_y1 * (W_1 - 0.5 * (1 - b_eff / b_1)^2 * b_1^2 * t_1) / ${factor}`,
    unit: 'kN*m',
    meaning: 'cross tube bent about the axis of the main tube, its walls across not counted in full',
  },
  { symbol: 'u', expression: 'N_1 / N_Rd + M_1 / M_Rd', unit: '1', meaning: 'interaction' },
  { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
];

/** A wide cross tube that is held unevenly by the face it ends on: effective width, and punching. */
export const crossingEffectiveWidth: Check = {
  id: 'crossing-effective-width',
  title: 'Wide cross tube held unevenly at its end',
  limitState: 'strength',
  source: [
    {
      document: 'EN 1993-1-8',
      edition: '2005',
      clause: 'Tables 7.11 and 7.14',
      safety: 'partial factors',
      memory: true,
    },
    { document: 'AISC 360', edition: '2010', clause: 'K2.3, K3.3', safety: 'allowable stress', memory: true },
  ],
  places: crossingPlaces,
  applies: (model, id) => jointOf('side wall', model, id),
  inputs: {
    ...{ M_1, N_1 },
    ...{ b_0, t_0, b_1, h_1 },
    ...braceInputs,
    f_y0: {
      unit: 'MPa',
      meaning: 'yield strength of the main tube',
      from: 'catalogue: materials',
      read: yieldOfChord,
    },
    slim: constant(35, '1', 'largest side over wall', 'EN 1993-1-8, Table 7.8'),
    gamma_M5,
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
  },
  steps: { 'partial factors': effective('gamma_M5'), 'allowable stress': effective('Omega_b') },
  solved: { inputs: solvedCrossingForces },
  demand: 'u',
  capacity: 'u_Rd',
  range: [
    {
      holds: 'b_1 / t_1 <= slim and h_1 / t_1 <= slim and b_0 / t_0 <= slim',
      otherwise: 'a tube is thinner than 1/35 of its side, outside EN 1993-1-8, Table 7.8',
    },
  ],
  second: {
    title:
      'below, its two walls along the main tube alone, in shear; above, all four walls at their yield strength, no factor taken',
    source: [{ document: 'areas of the walls, counted by hand; H. Tresca’s flow rule' }],
    steps: [
      {
        symbol: 'N_low',
        expression: 'min(f_y1 * t_1 * (h_1 - 2 * t_1), f_y0 * t_0 * h_1 / 2)',
        unit: 'kN',
        meaning: 'half of the walls along',
      },
      { symbol: 'N_high', expression: 'f_y1 * t_1 * 2 * (h_1 + b_1)', unit: 'kN', meaning: 'all walls' },
    ],
    of: 'N_Rd',
    low: 'N_low',
    high: 'N_high',
  },
  cautions: [
    'The walls of the cross tube along the main tube are stiffly held, those across hang on the soft face: weld all of them, but count what is near the corners.',
  ],
};
