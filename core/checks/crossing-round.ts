import type { Check, Step } from './check.ts';
import {
  braceAt,
  braceForceInputs,
  braceInputs,
  crossingPlaces,
  crossingSizeInputs,
  jointOf,
} from './crossing-inputs.ts';
import { chordStressInputs, gamma_M5 } from './crossing-joint.ts';
import { basisFactor } from './inputs.ts';
import { solvedCrossingForces } from './solved-inputs.ts';
import { sectionAtEnd } from './tube-inputs.ts';

const { M_1, N_1 } = braceForceInputs;

/** Numbers of the formulas in each code: T-joint 2.8 + 14.2 beta², X-joint 5.2, moment 2.7. */
interface Numbers {
  readonly strength: string;
  readonly t: readonly [string, string];
  readonly x: string;
  readonly m: string;
  readonly punch: string;
  readonly factor: 'gamma_M5' | 'Omega_b';
}

const joint = ({ strength, t, x, m, punch, factor }: Numbers): readonly Step[] => [
  { symbol: 'beta', expression: 'd_1 / d_0', unit: '1', meaning: 'ratio of diameters' },
  { symbol: 'gamma', expression: 'd_0 / (2 * t_0)', unit: '1', meaning: 'half the diameter over the wall' },
  {
    symbol: 'n_p',
    expression: `(N_0 / A_0 + M_0 / W_0) / ${strength}`,
    unit: '1',
    meaning: 'stress of the main tube over its strength',
  },
  {
    symbol: 'k_p',
    expression: 'min(1, 1 - 0.3 * n_p * (1 + n_p))',
    unit: '1',
    meaning: 'for the stress of the main tube',
  },
  { symbol: 'f_d', expression: `k_p * f_y0 / ${factor}`, unit: 'MPa', meaning: 'strength of the wall' },
  {
    symbol: 'N_T',
    expression: `gamma^0.2 * f_d * t_0^2 * (${t[0]} + ${t[1]} * beta^2)`,
    unit: 'kN',
    meaning: 'wall yielding, loaded from one side (T-joint)',
  },
  {
    symbol: 'N_X',
    expression: `${x} * f_d * t_0^2 / (1 - 0.81 * beta)`,
    unit: 'kN',
    meaning: 'wall yielding, loaded from both sides (X-joint)',
  },
  {
    symbol: 'N_P',
    expression: `d_1 <= d_0 - 2 * t_0 ? ${punch} * f_y0 * t_0 * pi * d_1 / ${factor} : min(N_T, N_X)`,
    unit: 'kN',
    meaning: 'punching, where the cross tube is narrower than the bore',
  },
  { symbol: 'N_Rd', expression: 'min(N_T, N_X, N_P)', unit: 'kN', meaning: 'the least' },
  {
    symbol: 'M_Y',
    expression: `${m} * f_d * t_0^2 * d_1 / (1 - 0.81 * beta)`,
    unit: 'kN*m',
    meaning: 'wall yielding under a moment about the axis of the main tube',
  },
  {
    symbol: 'M_Rd',
    expression: `d_1 <= d_0 - 2 * t_0 ? min(M_Y, ${punch} * f_y0 * t_0 * d_1^2 / ${factor}) : M_Y`,
    unit: 'kN*m',
    meaning: 'the lesser of yielding and punching',
  },
  { symbol: 'u', expression: 'N_1 / N_Rd + M_1 / M_Rd', unit: '1', meaning: 'interaction' },
  { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
];

/** Wall of a round main tube where a round cross tube ends on it. */
export const crossingRound: Check = {
  id: 'crossing-round',
  title: 'Wall of the main tube at a flush crossing of round tubes',
  limitState: 'strength',
  source: [
    {
      document: 'EN 1993-1-8',
      edition: '2005',
      clause: '7.4.2, Tables 7.1, 7.2 and 7.5',
      safety: 'partial factors',
      memory: true,
    },
    { document: 'AISC 360', edition: '2010', clause: 'K2.2, K3.2', safety: 'allowable stress', memory: true },
  ],
  places: crossingPlaces,
  applies: (model, id) => jointOf('round', model, id),
  inputs: {
    ...{ M_1, N_1 },
    ...chordStressInputs,
    d_0: { ...crossingSizeInputs.b_0, meaning: 'diameter of the main tube' },
    t_0: crossingSizeInputs.t_0,
    d_1: {
      ...crossingSizeInputs.b_1,
      meaning: 'diameter of the cross tube',
      read: (model, id) => sectionAtEnd(model, braceAt(model, id).id).height,
    },
    t_1: braceInputs.t_1,
    gamma_M5,
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
  },
  steps: {
    'partial factors': joint({ strength: 'f_y0', t: ['2.8', '14.2'], x: '5.2', m: '2.7', punch: '1 / sqrt(3)', factor: 'gamma_M5' }), // prettier-ignore
    'allowable stress': joint({ strength: '(0.6 * f_y0)', t: ['3.1', '15.6'], x: '5.7', m: '3', punch: '0.6', factor: 'Omega_b' }), // prettier-ignore
  },
  solved: { inputs: solvedCrossingForces },
  demand: 'u',
  capacity: 'u_Rd',
  range: [
    { holds: 'beta >= 0.2', otherwise: 'the cross tube is narrower than a fifth of the main tube, outside Table 7.1' },
    {
      holds: '10 <= d_0 / t_0 and d_0 / t_0 <= 40',
      otherwise: 'the main tube is not between 10 and 40 walls across, outside EN 1993-1-8, Table 7.1, for X-joints',
    },
    { holds: '10 <= d_1 / t_1 and d_1 / t_1 <= 50', otherwise: 'the cross tube is not between 10 and 50 walls across' },
    { holds: 'k_p > 0', otherwise: 'the main tube itself is beyond its strength' },
  ],
  second: {
    title:
      'below, a pull at one point of a flat wall (fan of yield lines); above, the wall torn all round the cross tube at its yield strength',
    source: [
      { document: 'yield-line theory of plates', clause: 'P = 4 pi m_p with m_p = f t²/4, rim held', memory: true },
      { document: 'area of the cut, counted by hand' },
    ],
    steps: [
      { symbol: 'N_fan', expression: 'pi * f_d * t_0^2', unit: 'kN', meaning: 'pull at a point' },
      {
        symbol: 'N_torn',
        expression: 'pi * d_1 * t_0 * f_y0',
        unit: 'kN',
        meaning: 'larger resistance, no factor taken',
      },
    ],
    of: 'N_Rd',
    low: 'N_fan',
    high: 'N_torn',
  },
  cautions: [
    'Every such joint is taken as loaded from both sides where that is weaker, and every stress of the main tube as compression: both are safe.',
    'A round end must be cut to the saddle of the other tube before it is welded.',
    'Moments in plan, about the upright axis, are not in the forces of the grid by hand.',
  ],
};
