import type { Check, Input, Step } from './check.ts';
import { fieldInputs, fieldPlaces, spansAt, panelYieldFactor } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { stripSpan } from './panel-edge-inputs.ts';

const plate = ['a', 'b', 't', 'E', 'nu', 'p'] as const;

const four: Input = {
  unit: '1',
  meaning: 'held on four sides (1) or on two (0)',
  from: 'geometry',
  read: (model, bay, situation) => (spansAt(model, bay, situation).supports === 'four sides' ? 1 : 0),
};

const shear: readonly Step[] = [
  {
    symbol: 'V_hinged',
    kernel: 'plate.hinged.reaction',
    arguments: plate,
    unit: 'kN/m',
    meaning: 'largest edge reaction, four edges hinged',
  },
  {
    symbol: 'V_held',
    kernel: 'plate.held.reaction',
    arguments: plate,
    unit: 'kN/m',
    meaning: 'largest edge reaction, four edges held',
  },
  {
    symbol: 'V_Ed',
    expression: 'four > 0 ? max(V_hinged, V_held) : p * L / 2',
    unit: 'kN/m',
    meaning: 'largest shear of the panel at its support, per length',
  },
  { symbol: 'tau_Ed', expression: 'V_Ed / t', unit: 'MPa', meaning: 'mean shear stress through the thickness' },
];

/** Shear of the panel where it leaves its line support. */
export const panelShear: Check = {
  id: 'panel-shear',
  title: 'Panel in shear at its support',
  limitState: 'strength',
  source: [
    {
      document: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells',
      edition: '2nd',
      clause: 'art. 30, 44',
    },
    { document: 'EN 1993-1-1', edition: '2005', clause: '6.2.6(2)', safety: 'partial factors', memory: true },
    { document: 'AISC 360', edition: '2016', clause: 'G2, J4.2(a)', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: (model, bay, situation) =>
    spansAt(model, bay, situation).supports !== 'bolts' ||
    'the panel hangs on its bolts: pull-through is checked instead',
  inputs: {
    ...fieldInputs,
    ...{ four, L: stripSpan.L },
    gamma_M0: panelYieldFactor,
    Omega_v: basisFactor('Omega_v', 'safety factor on shear', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...shear,
      { symbol: 'tau_Rd', expression: 'f_y / (sqrt(3) * gamma_M0)', unit: 'MPa', meaning: 'design shear yield stress' },
    ],
    'allowable stress': [
      ...shear,
      { symbol: 'tau_Rd', expression: '0.6 * f_y / Omega_v', unit: 'MPa', meaning: 'allowable shear stress' },
    ],
  },
  demand: 'tau_Ed',
  capacity: 'tau_Rd',
  second: {
    title: 'equilibrium: mean of the edges below, 0.6 of the load of a strip of the span above',
    source: [{ document: 'equilibrium of the panel, derived by hand' }],
    steps: [
      {
        symbol: 'tau_low',
        expression: '(four > 0 ? p * a * b / (2 * (a + b)) : p * L / 2) / t',
        unit: 'MPa',
        meaning: 'load over the length of its supports',
      },
      {
        symbol: 'tau_high',
        expression: '0.6 * p * (four > 0 ? min(a, b) : L) / t',
        unit: 'MPa',
        meaning: 'a little more than the half of a strip',
      },
    ],
    of: 'tau_Ed',
    low: 'tau_low',
    high: 'tau_high',
  },
  cautions: ['The corners of a panel hinged on four sides lift: what holds them down is in the bolts or welds.'],
};
