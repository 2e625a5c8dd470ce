import { missing, type Check, type Step } from './check.ts';
import { braceAt, braceForceInputs, crossingPlaces, crossingSizeInputs, isFlush } from './crossing-inputs.ts';
import { crossingWeldInputs, tubesAt } from './crossing-weld-inputs.ts';
import { basisFactor } from './inputs.ts';
import { sectionAtEnd } from './tube-inputs.ts';
import { cannotBeWelded } from './weld-strength.ts';
import { solvedCrossingForces } from './solved-inputs.ts';

const { b_1, h_1 } = crossingSizeInputs;

/** Fillet weld all round the end of a cross tube on the side of a main tube. */
export const crossingThroat: Check = {
  id: 'crossing-throat',
  title: 'Weld all round a cross tube at a flush crossing',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.3.3', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J2.4, K5', safety: 'allowable stress', memory: true },
  ],
  places: crossingPlaces,
  applies: (model) => isFlush(model),
  rule: (model, id) => cannotBeWelded(tubesAt(model, id)),
  inputs: {
    ...braceForceInputs,
    ...crossingWeldInputs,
    b_1: {
      ...b_1,
      read: (model, id) =>
        braceAt(model, id).section.shape === 'round'
          ? missing('a rule for the weld round a round tube: the one held here is for rectangular sections')
          : sectionAtEnd(model, braceAt(model, id).id).height,
    },
    h_1,
    t_1: {
      only: 'allowable stress',
      unit: 'mm',
      meaning: 'wall of the cross tube, end of life',
      from: 'catalogue: sections; document: corrosion',
      read: (model, id) => sectionAtEnd(model, braceAt(model, id).id).wall,
    },
    gamma_M2: basisFactor('gamma_M2', 'partial factor on welds', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on welds', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...ring(),
      {
        symbol: 'f_Rd',
        expression: 'f_u / (sqrt(3) * beta_w * gamma_M2) * a_w',
        unit: 'N/mm',
        meaning: 'resistance per length',
      },
    ],
    'allowable stress': [
      ...ring(),
      {
        symbol: 'f_Rd',
        expression: 'min(0.6 * f_u * a_w, 0.6 * f_u * t_1) / Omega_J',
        unit: 'N/mm',
        meaning: 'allowable force per length, weld and wall',
      },
    ],
  },
  solved: { inputs: solvedCrossingForces },
  demand: 'f_w',
  capacity: 'f_Rd',
  second: {
    title: 'ring of weld by statics: all of it plastic; and the level runs alone as a couple',
    source: [
      { document: 'derived by hand: plastic modulus of a ring b²/2 + b h, shear shared by all of it' },
      { document: 'derived by hand: moment as a couple of the two level runs, lever b' },
    ],
    steps: [
      {
        symbol: 'f_low',
        expression: 'max(N_1 / (2 * (b_1 + h_1)) + M_1 / (b_1 * (b_1 / 2 + h_1)), V_1 / (2 * (b_1 + h_1)))',
        unit: 'N/mm',
        meaning: 'plastic: larger of pull with moment, and shear',
      },
      {
        symbol: 'f_high',
        expression: 'sqrt((N_1 / (2 * (b_1 + h_1)) + M_1 / (b_1 * h_1))^2 + (V_1 / (2 * b_1))^2)',
        unit: 'N/mm',
        meaning: 'level runs alone against the moment, upright runs alone against shear',
      },
    ],
    of: 'f_w',
    low: 'f_low',
    high: 'f_high',
  },
  cautions: [
    'EN 1993-1-8, 7.3.1, asks for a weld as strong as the wall of the cross tube, because the face of the main tube gives way unevenly: a throat of about the wall or more.',
    'The filler is taken at least as strong as the tubes.',
  ],
};

function ring(): readonly Step[] {
  return [
    {
      symbol: 'f_n',
      expression: 'N_1 / (2 * (b_1 + h_1)) + M_1 / (b_1^2 / 3 + b_1 * h_1)',
      unit: 'N/mm',
      meaning: 'pull per length at the corner of the ring',
    },
    { symbol: 'f_v', expression: 'V_1 / (2 * b_1)', unit: 'N/mm', meaning: 'shear per length along the upright sides' },
    { symbol: 'f_w', expression: 'sqrt(f_n^2 + f_v^2)', unit: 'N/mm', meaning: 'force per length' },
  ];
}
