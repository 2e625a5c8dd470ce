import type { Check, Step } from './check.ts';
import { fieldInputs, fieldPlaces, spansAt, panelYieldFactor } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { h, stripSpan, thinPlateCaution } from './panel-edge-inputs.ts';

const { p, t, E, nu, f_y } = fieldInputs;
const plate = ['L', 'B', 't', 'E', 'nu', 'p'] as const;

const stresses: readonly Step[] = [
  {
    symbol: 'sigma_hinged',
    kernel: 'plate.twoSided.hinged.stress',
    arguments: plate,
    unit: 'MPa',
    meaning: 'largest stress, supports hinged: at the free edge',
  },
  {
    symbol: 'sigma_held',
    kernel: 'plate.twoSided.held.stress',
    arguments: plate,
    unit: 'MPa',
    meaning: 'largest stress, supports held',
  },
  {
    symbol: 'sigma_Ed',
    expression: 'h > 0 ? sigma_held : sigma_hinged',
    unit: 'MPa',
    meaning: 'largest stress of the supports relied on',
  },
];

/** Bending of a panel field on two opposite line supports with two free edges: between a plate and a strip. */
export const panelBendingTwoSides: Check = {
  id: 'panel-bending-two-sides',
  title: 'Panel in bending, borne on two sides',
  limitState: 'strength',
  source: [
    { document: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells', edition: '2nd', clause: 'art. 48' },
    { document: 'EN 1993-1-1', edition: '2005', clause: '6.2.1(5)', safety: 'partial factors', memory: true },
    { document: 'AISC 360', edition: '2016', clause: 'F11', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: (model, bay, situation) => {
    const { supports } = spansAt(model, bay, situation);
    return (
      supports === 'main tubes' || supports === 'cross tubes' || `in this direction the panel is held by ${supports}`
    );
  },
  inputs: {
    ...{ p, t, E, nu, f_y, ...stripSpan, h },
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
  second: {
    title:
      'statics: p L²/8 between mid-span and supports at the least; above, a hinged strip over 1 - nu for the free edge that curls',
    source: [{ document: 'beam statics, derived by hand' }],
    steps: [
      {
        symbol: 'sigma_low',
        expression: '0.75 * sqrt(3) / 2 * p * L^2 / t^2 / (1 + h)',
        unit: 'MPa',
        meaning:
          'mean moment of the section, shared by span and supports when held; sqrt(3)/2 for a cross moment that helps',
      },
      {
        symbol: 'sigma_high',
        expression: '0.75 * p * L^2 / t^2 / (1 - nu)',
        unit: 'MPa',
        meaning: 'hinged strip over 1 - nu: more than the curl of a free edge adds',
      },
    ],
    of: 'sigma_Ed',
    low: 'sigma_low',
    high: 'sigma_high',
  },
  cautions: [
    thinPlateCaution,
    'Where a held support meets a free edge the stress of a thin plate has no limit: it is read a twentieth of the shorter side away.',
  ],
};
