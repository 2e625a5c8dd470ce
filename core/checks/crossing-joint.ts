import type { Check, Input, Step } from './check.ts';
import {
  braceForceInputs,
  chordAt,
  crossingPlaces,
  crossingSizeInputs,
  jointOf,
  yieldOfChord,
} from './crossing-inputs.ts';
import { basisFactor, constant } from './inputs.ts';
import { sectionAtEnd, tubeForces } from './tube-inputs.ts';
import { solvedCrossingForces } from './solved-inputs.ts';

const { M_1, N_1 } = braceForceInputs;

export const gamma_M5: Input = {
  ...constant(1, '1', 'partial factor on joints of hollow sections', 'EN 1993-1-8, Table 2.1'),
  only: 'partial factors',
};

/** What the stress of the main tube follows from, by symbol. */
export const chordStressInputs = {
  f_y0: {
    unit: 'MPa',
    meaning: 'yield strength of the main tube',
    from: 'catalogue: materials',
    read: yieldOfChord,
  },
  M_0: {
    unit: 'kN*m',
    meaning: 'largest moment of the main tube, taken at the crossing',
    from: 'loads: grid of tubes',
    read: (model, id, situation) => tubeForces(situation, chordAt(model, id).id, ({ moment }) => Math.abs(moment)),
  },
  N_0: {
    unit: 'kN',
    meaning: 'largest axial force of the main tube, taken as compression',
    from: 'loads: grid of tubes',
    read: (model, id, situation) => tubeForces(situation, chordAt(model, id).id, ({ axial }) => Math.abs(axial)),
  },
  W_0: {
    unit: 'cm^3',
    meaning: 'elastic modulus of the main tube, end of life',
    from: 'catalogue: sections; document: corrosion',
    read: (model, id) => sectionAtEnd(model, chordAt(model, id).id).elasticY,
  },
  A_0: {
    unit: 'cm^2',
    meaning: 'area of the main tube, end of life',
    from: 'catalogue: sections; document: corrosion',
    read: (model, id) => sectionAtEnd(model, chordAt(model, id).id).area,
  },
} as const satisfies Readonly<Record<string, Input>>;

const chord = (strength: string, of: string): readonly Step[] => [
  { symbol: 'beta', expression: 'b_1 / b_0', unit: '1', meaning: 'width ratio' },
  {
    symbol: 'n',
    expression: `(N_0 / A_0 + M_0 / W_0) / ${strength}`,
    unit: '1',
    meaning: `stress of the main tube over ${of}its yield strength`,
  },
  {
    symbol: 'k_n',
    expression: 'min(1, 1.3 - 0.4 * n / beta)',
    unit: '1',
    meaning: 'for the stress of the main tube',
  },
];

/** Width ratio and the factor for the stress of the main tube: beta, n, k_n. */
export const chordSteps = {
  'partial factors': chord('f_y0', ''),
  'allowable stress': chord('(0.6 * f_y0)', '0.6 of '),
} as const;

/** The main tube within EN 1993-1-8, Table 7.8, and not spent by its own stress. */
export const chordRange = [
  {
    holds: 'b_0 / t_0 <= 35 and h_0 / t_0 <= 35',
    otherwise: 'the main tube is thinner than 1/35 of its side, outside EN 1993-1-8, Table 7.8',
  },
  {
    holds: '0.5 <= h_0 / b_0 and h_0 / b_0 <= 2',
    otherwise: 'the main tube is flatter than 1 to 2, outside EN 1993-1-8, Table 7.8',
  },
  { holds: 'k_n > 0', otherwise: 'the main tube itself is beyond its strength' },
] as const satisfies Check['range'];

/** Wall of a main tube where a cross tube ends on its side: a T-joint of rectangular hollow sections, yielding of the face. */
export const crossingJoint: Check = {
  id: 'crossing-joint',
  title: 'Wall of the main tube at a flush crossing',
  limitState: 'strength',
  source: [
    {
      document: 'EN 1993-1-8',
      edition: '2005',
      clause: 'Table 7.10: k_n, and the face under a square tube',
      safety: 'partial factors',
    },
    {
      document: 'EN 1993-1-8',
      edition: '2005',
      clause: '7.5.2, Tables 7.8, 7.11 and 7.14',
      safety: 'partial factors',
      memory: true,
    },
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'K3, K4 (chord plastification)',
      safety: 'allowable stress',
      memory: true,
    },
  ],
  places: crossingPlaces,
  applies: (model, id) => jointOf('face', model, id),
  inputs: {
    ...{ M_1, N_1 },
    ...crossingSizeInputs,
    ...chordStressInputs,
    gamma_M5,
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...chordSteps['partial factors'],
      { symbol: 'f_d', expression: 'k_n * f_y0 / gamma_M5', unit: 'MPa', meaning: 'design strength of the face' },
      ...face(),
    ],
    'allowable stress': [
      ...chordSteps['allowable stress'],
      { symbol: 'f_d', expression: 'k_n * f_y0 / Omega_b', unit: 'MPa', meaning: 'allowable strength of the face' },
      ...face(),
    ],
  },
  solved: { inputs: solvedCrossingForces },
  demand: 'u',
  capacity: 'u_Rd',
  range: [
    {
      holds: 'beta >= 0.25',
      otherwise: 'the cross tube is narrower than a quarter of the face, outside EN 1993-1-8, Table 7.8',
    },
    ...chordRange,
  ],
  second: {
    title: 'a pull at one point of the face: fan of yield lines',
    source: [
      { document: 'yield-line theory of plates', clause: 'P = 4 pi m_p with m_p = f t²/4, rim held', memory: true },
    ],
    steps: [{ symbol: 'N_fan', expression: 'pi * f_d * t_0^2', unit: 'kN', meaning: 'pull at a point' }],
    of: 'N_Rd',
    low: 'N_fan',
  },
  cautions: [
    'Up to 0.85 of the face its yielding decides; beyond, side walls, brace and punching are judged.',
    'Moments in plan, about the upright axis, are not in the forces of the grid by hand.',
    'Tops are level, so a lower cross tube sits off the middle of the face; the formula is for the middle, where the face is weakest.',
    'AISC 360 K has a safety factor of 1.50 on this; the larger factor on yielding is taken.',
  ],
};

function face(): readonly Step[] {
  return [
    {
      symbol: 'eta',
      expression: 'h_1 / b_0',
      unit: '1',
      meaning: 'length of the cross tube along the face over its width',
    },
    {
      symbol: 'N_Rd',
      expression: 'f_d * t_0^2 / (1 - beta) * (2 * eta + 4 * sqrt(1 - beta))',
      unit: 'kN',
      meaning: 'resistance to a pull or push',
    },
    {
      symbol: 'M_Rd',
      expression: 'f_d * t_0^2 * (h_1 * (1 + beta) / (2 * (1 - beta)) + sqrt(2 * b_0 * b_1 * (1 + beta) / (1 - beta)))',
      unit: 'kN*m',
      meaning: "resistance to a moment about the main tube's axis",
    },
    { symbol: 'u', expression: 'N_1 / N_Rd + M_1 / M_Rd', unit: '1', meaning: 'interaction' },
    { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
  ];
}
