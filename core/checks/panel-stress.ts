import type { Check, Step } from './check.ts';
import { fieldInputs, fieldPlaces, panelYieldFactor } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { bucklingFactor, ofPanel, partLost, thicknessAsMade } from './solved-inputs.ts';

const { p, a, b, t, f_y } = fieldInputs;

/** Stress of a panel as part of the whole plate: bent by its pressure and by its tubes, and stretched. */
export const panelStress: Check = {
  id: 'panel-stress',
  title: 'Panel stress by the whole plate’s solution',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-1', edition: '2005', clause: '6.2.1(5); 5.2.1(3)', safety: 'partial factors', memory: true },
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'F11; Appendix 8, B1 = 1/(1 - P_r/P_e1)',
      safety: 'allowable stress',
      memory: true,
    },
  ],
  places: fieldPlaces,
  applies: (model, _, situation) => {
    if (model.solved === null) return 'the document takes its forces by hand';
    return partLost(model, situation) ?? true;
  },
  inputs: {
    sigma_n: ofPanel(
      'MPa',
      'largest von Mises stress of the panel as made, clear of bolts and notches',
      ({ stress }) => stress,
    ),
    alpha_n: bucklingFactor,
    t_n: thicknessAsMade,
    ...{ p, a, b, t, f_y },
    gamma_M0: panelYieldFactor,
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...stresses(),
      { symbol: 'sigma_Rd', expression: 'f_y / gamma_M0', unit: 'MPa', meaning: 'design yield stress' },
    ],
    'allowable stress': [
      ...stresses(),
      { symbol: 'sigma_Rd', expression: 'f_y / Omega_b', unit: 'MPa', meaning: 'allowable stress at first yield' },
    ],
  },
  demand: 'sigma_Ed',
  capacity: 'sigma_Rd',
  range: [{ holds: 'alpha_e > 1', otherwise: 'something buckles before this loading is reached' }],
  second: {
    title: 'no field yields later than it collapses with all its edges held',
    source: [{ document: 'K. W. Johansen, Yield-line Theory', edition: '1962', memory: true }],
    steps: [
      {
        symbol: 'p_y',
        kernel: 'yieldLine.hinged',
        arguments: ['a', 'b', 't', 'f_y'],
        unit: 'kPa',
        meaning: 'collapse pressure by yield lines, edges hinged; held edges carry twice',
      },
      {
        symbol: 'sigma_low',
        expression: 'p / (4 / sqrt(3) * p_y) * f_y',
        unit: 'MPa',
        meaning: 'stress if first yield came as late as collapse; 2/sqrt(3) for von Mises steel along a yield line',
      },
    ],
    of: 'sigma_Ed',
    low: 'sigma_low',
  },
  cautions: [
    'Nearer to a bolt than one washer and twice the thickness no stress is read: the checks of forces in bolts, bearing and pull-through judge there.',
    'Small deflections: a panel that dips by more than half its thickness stretches and bends less.',
  ],
};

function stresses(): readonly Step[] {
  return [
    {
      symbol: 'alpha_e',
      expression: 'alpha_n * (t / t_n)^3',
      unit: '1',
      meaning: 'buckling factor at the end of life',
    },
    {
      symbol: 'k_2',
      expression: 'alpha_e >= 10 ? 1 : abs(alpha_e / (alpha_e - 1))',
      unit: '1',
      meaning: 'what pressing in the plane adds to bending: nothing from a factor of 10 on',
    },
    {
      symbol: 'sigma_Ed',
      expression: 'k_2 * sigma_n * (t_n / t)^2',
      unit: 'MPa',
      meaning: 'stress at the end of life, all of it taken as bending',
    },
  ];
}
