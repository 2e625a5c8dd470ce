import { missing, type Check, type Step } from './check.ts';
import { fieldInputs, fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';

const { a, b, t, E, nu } = fieldInputs;

/** Buckling of a panel field in its plane. */
export const panelBuckling: Check = {
  id: 'panel-buckling',
  title: 'Panel buckling in its plane',
  limitState: 'stability',
  source: [
    {
      document: 'Timoshenko and Gere, Theory of Elastic Stability',
      edition: '2nd',
      clause: 'ch. 9, hinged edges',
      memory: true,
    },
  ],
  places: fieldPlaces,
  applies: () => true,
  once: true,
  inputs: {
    ...{ a, b, t, E, nu },
    gamma_M1: basisFactor('gamma_M1', 'partial factor on stability', 'partial factors'),
    Omega_b: basisFactor('Omega_b', 'safety factor on stability', 'allowable stress'),
    sigma_c: {
      unit: 'MPa',
      meaning: 'compression of the panel in its plane',
      from: 'solve: plate as one structure',
      read: () => missing('in-plane forces of the panel: they need the plate solved as one structure'),
    },
  },
  steps: {
    'partial factors': [
      ...buckling(),
      {
        symbol: 'sigma_Rd',
        expression: 'sigma_cr / gamma_M1',
        unit: 'MPa',
        meaning: 'design buckling stress, elastic',
      },
    ],
    'allowable stress': [
      ...buckling(),
      {
        symbol: 'sigma_Rd',
        expression: 'sigma_cr / Omega_b',
        unit: 'MPa',
        meaning: 'allowable buckling stress, elastic',
      },
    ],
  },
  demand: 'sigma_c',
  capacity: 'sigma_Rd',
  second: {
    title: 'a long plate as wide as the longer side, k = 4',
    source: [{ document: 'Bryan, 1891', memory: true }],
    steps: [
      {
        symbol: 'sigma_low',
        expression: 'pi^2 * E / (3 * (1 - nu^2)) * (t / max(a, b))^2',
        unit: 'MPa',
        meaning: 'k = 4 on the longer side',
      },
    ],
    of: 'sigma_cr',
    low: 'sigma_low',
  },
  cautions: [
    'Panels that are fixed to the tubes take part in the bending of the grid and are pressed in their plane; nothing here says how much.',
    'Side pressure and out-of-flatness lower the buckling stress.',
  ],
};

function buckling(): readonly Step[] {
  return [
    {
      symbol: 'sigma_cr_x',
      kernel: 'plate.buckling.compression.hinged',
      arguments: ['a', 'b', 't', 'E', 'nu'],
      unit: 'MPa',
      meaning: 'buckling stress, pressed along x, hinged edges',
    },
    {
      symbol: 'sigma_cr_y',
      kernel: 'plate.buckling.compression.hinged',
      arguments: ['b', 'a', 't', 'E', 'nu'],
      unit: 'MPa',
      meaning: 'buckling stress, pressed along y, hinged edges',
    },
    { symbol: 'sigma_cr', expression: 'min(sigma_cr_x, sigma_cr_y)', unit: 'MPa', meaning: 'the smaller' },
  ];
}
