import type { Check, Step } from './check.ts';
import { braceForceInputs, chordAt, crossingPlaces, crossingSizeInputs, jointOf } from './crossing-inputs.ts';
import { chordRange, chordSteps, chordStressInputs, gamma_M5 } from './crossing-joint.ts';
import { basisFactor } from './inputs.ts';
import { solvedCrossingForces } from './solved-inputs.ts';
import { tubeAt } from './tube-inputs.ts';

const { M_1, N_1 } = braceForceInputs;

/** Face at 0.85 of its width, where its formulas end; f_d is its strength. */
const face: readonly Step[] = [
  {
    symbol: 'eta',
    expression: 'h_1 / b_0',
    unit: '1',
    meaning: 'length of the cross tube along the face over its width',
  },
  {
    symbol: 'N_face',
    expression: 'f_d * t_0^2 / 0.15 * (2 * eta + 4 * sqrt(0.15))',
    unit: 'kN',
    meaning: 'face yielding at a width ratio of 0.85',
  },
  {
    symbol: 'M_face',
    expression: 'f_d * t_0^2 * (h_1 * 1.85 / 0.3 + sqrt(2 * b_0 * 0.85 * b_0 * 1.85 / 0.15))',
    unit: 'kN*m',
    meaning: 'the same for a moment about the axis of the main tube',
  },
];

const between: readonly Step[] = [
  {
    symbol: 'x',
    expression: '(beta - 0.85) / 0.15',
    unit: '1',
    meaning: 'place between 0.85 (0) and the whole width (1)',
  },
  { symbol: 'N_Rd', expression: 'N_face + x * (N_wall - N_face)', unit: 'kN', meaning: 'resistance to a pull or push' },
  {
    symbol: 'M_Rd',
    expression: 'min(M_face + x * (M_wall - M_face), M_dist)',
    unit: 'kN*m',
    meaning: 'resistance to a moment',
  },
  { symbol: 'u', expression: 'N_1 / N_Rd + M_1 / M_Rd', unit: '1', meaning: 'interaction' },
  { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
];

const distortion = (factor: 'gamma_M5' | 'Omega_b'): Step => ({
  symbol: 'M_dist',
  expression: `2 * f_y0 * t_0 * (h_1 * t_0 + sqrt(b_0 * h_0 * t_0 * (b_0 + h_0))) / ${factor}`,
  unit: 'kN*m',
  meaning: 'the main tube pushed out of square by the moment',
});

/** Side walls of a main tube under a cross tube nearly or quite as wide as its face. */
export const crossingSideWall: Check = {
  id: 'crossing-side-wall',
  title: 'Side walls of the main tube under a wide cross tube',
  limitState: 'strength',
  source: [
    {
      document: 'EN 1993-1-8',
      edition: '2005',
      clause: 'Table 7.11, 7.5.2: interpolation above 0.85 and buckling of side walls, read in a public copy',
      safety: 'partial factors',
    },
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 7.14', safety: 'partial factors', memory: true },
    { document: 'AISC 360', edition: '2010', clause: 'K2.3, K3.3', safety: 'allowable stress', memory: true },
  ],
  places: crossingPlaces,
  applies: (model, id) => jointOf('side wall', model, id),
  inputs: {
    ...{ M_1, N_1 },
    ...crossingSizeInputs,
    ...chordStressInputs,
    E: {
      unit: 'GPa',
      meaning: 'modulus of elasticity of the main tube',
      from: 'catalogue: materials',
      read: (model, id) => chordAt(model, id).material.youngModulus,
    },
    alpha: {
      unit: '1',
      meaning: 'imperfection: 0.21 hot finished (curve a), 0.49 cold formed (curve c)',
      from: 'EN 1993-1-1, Tables 6.1 and 6.2',
      only: 'partial factors',
      read: (model, id) => (tubeAt(model, chordAt(model, id).id).section.process === 'hot finished' ? 0.21 : 0.49),
    },
    gamma_M5,
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
    Omega_J: basisFactor('Omega_J', 'safety factor on crippling', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...chordSteps['partial factors'],
      { symbol: 'f_d', expression: 'k_n * f_y0 / gamma_M5', unit: 'MPa', meaning: 'design strength of the face' },
      ...face,
      {
        symbol: 'lambda',
        expression: '3.46 * (h_0 / t_0 - 2) / (pi * sqrt(E / f_y0))',
        unit: '1',
        meaning: 'slenderness of a side wall',
      },
      {
        symbol: 'Phi',
        expression: '0.5 * (1 + alpha * (lambda - 0.2) + lambda^2)',
        unit: '1',
        meaning: 'for the buckling curve',
      },
      {
        symbol: 'chi',
        expression: 'lambda <= 0.2 ? 1 : 1 / (Phi + sqrt(Phi^2 - lambda^2))',
        unit: '1',
        meaning: 'reduction for buckling, taken for pulls too',
      },
      {
        symbol: 'N_wall',
        expression: '0.8 * chi * f_y0 * t_0 * (2 * h_1 + 10 * t_0) / gamma_M5',
        unit: 'kN',
        meaning: 'both side walls, loaded from both sides (X-joint)',
      },
      {
        symbol: 'M_wall',
        expression: '0.8 * f_y0 * t_0 * (b_0 - t_0) * (h_1 + 5 * t_0) / gamma_M5',
        unit: 'kN*m',
        meaning: 'side walls crushed by a moment',
      },
      distortion('gamma_M5'),
      ...between,
    ],
    'allowable stress': [
      ...chordSteps['allowable stress'],
      { symbol: 'f_d', expression: 'k_n * f_y0 / Omega_b', unit: 'MPa', meaning: 'allowable strength of the face' },
      ...face,
      {
        symbol: 'N_yield',
        expression: '2 * f_y0 * t_0 * (5 * t_0 + h_1) / Omega_b',
        unit: 'kN',
        meaning: 'both side walls yielding, corners counted as one wall',
      },
      {
        symbol: 'N_crip',
        expression:
          'min(1.6 * t_0^2 * (1 + 3 * h_1 / (h_0 - 3 * t_0)), 48 * t_0^3 / (h_0 - 3 * t_0)) * sqrt(E * f_y0) * k_n / Omega_J',
        unit: 'kN',
        meaning: 'side walls crippling or buckling, loaded from both sides',
      },
      { symbol: 'N_wall', expression: 'min(N_yield, N_crip)', unit: 'kN', meaning: 'the lesser, taken for pulls too' },
      {
        symbol: 'M_wall',
        expression: '0.8 * f_y0 * t_0 * (b_0 - t_0) * (h_1 + 5 * t_0) / Omega_b',
        unit: 'kN*m',
        meaning: 'side walls crushed by a moment',
      },
      distortion('Omega_b'),
      ...between,
    ],
  },
  solved: { inputs: solvedCrossingForces },
  demand: 'u',
  capacity: 'u_Rd',
  range: chordRange,
  second: {
    title:
      'below, a pull at one point of the face (fan of yield lines); above, both side walls yielding with a spread of 1 to 2.5 down to the far face, and the face at 0.85',
    source: [
      { document: 'yield-line theory of plates', clause: 'P = 4 pi m_p with m_p = f t²/4, rim held', memory: true },
      { document: 'spread of a load under a flange, 1 to 2.5', clause: 'EN 1993-1-5, 3.2.3', memory: true },
    ],
    steps: [
      { symbol: 'N_fan', expression: 'pi * f_d * t_0^2', unit: 'kN', meaning: 'pull at a point' },
      {
        symbol: 'N_high',
        expression: 'max(N_face, 2 * f_y0 * t_0 * (h_1 + 5 * h_0))',
        unit: 'kN',
        meaning: 'larger resistance, no factor taken',
      },
    ],
    of: 'N_Rd',
    low: 'N_fan',
    high: 'N_high',
  },
  cautions: [
    'Every such joint is taken as loaded from both sides (X-joint) and every pull as a push: both are safe.',
    'At the whole width the sides of the cross tube land on the corner radius of the main tube: the weld there is a flare weld (see its throat).',
    'Moments in plan, about the upright axis, are not in the forces of the grid by hand.',
  ],
};
