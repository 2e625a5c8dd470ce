import type { Model } from '../model.ts';
import type { Situation } from '../loads/situation.ts';
import { missing, type Check, type Step } from './check.ts';
import { fieldInputs, fieldPlaces, panelAt } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { bucklingFactor, membraneStress, ofPanel, partLost, thicknessAsMade } from './solved-inputs.ts';

const { a, b, t, E, nu, f_y } = fieldInputs;

const needed = 'in-plane forces of the panel: they need the plate solved as one structure';

/** Buckling of a panel in its plane, by the whole plate's buckling factor. */
export const panelBuckling: Check = {
  id: 'panel-buckling',
  title: 'Panel buckling in its plane',
  limitState: 'stability',
  source: [
    {
      document: 'EN 1993-1-5',
      edition: '2006',
      clause: '10 (reduced stress method) with 4.5.3 (column-like, alpha = 0.21)',
      safety: 'partial factors',
      memory: true,
    },
    { document: 'AISC 360', edition: '2016', clause: 'E3, E7', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: (model, _, situation) => {
    // By hand nothing says how a panel is pressed: one row a field says so, not one for each case.
    if (model.solved === null) return situation === model.loads.situations[0] || needed;
    return partLost(situation) ?? true;
  },
  inputs: {
    sigma_n: {
      ...membraneStress,
      read: (model, bay, situation) =>
        model.solved === null ? missing(needed) : membraneStress.read(model, bay, situation),
    },
    alpha_n: bucklingFactor,
    own: ofPanel(
      '1',
      'this panel is the part that gives way first (1) or another is (0)',
      (_, model, bay, { buckling }) => (buckling?.part === panelAt(model, bay).id ? 1 : 0),
    ),
    t_n: thicknessAsMade,
    ...{ a, b, t, E, nu },
    f_y: {
      ...f_y,
      read: (model: Model, bay: string, situation: Situation) => {
        const { material } = panelAt(model, bay);
        return material.family === 'carbon steel' || material.family === 'stainless steel'
          ? f_y.read(model, bay, situation)
          : missing(`a rule for the buckling of plates of ${material.title}: those held here are for steel`);
      },
    },
    gamma_M1: basisFactor('gamma_M1', 'partial factor on stability', 'partial factors'),
    Omega_b: basisFactor('Omega_b', 'safety factor on stability', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...pressed(),
      {
        symbol: 'lambda_p',
        expression: 'sqrt(alpha_ult / alpha_cr)',
        unit: '1',
        meaning: 'slenderness of the plate (10.2)',
      },
      {
        symbol: 'phi',
        expression: '0.5 * (1 + 0.21 * (lambda_p - 0.2) + lambda_p^2)',
        unit: '1',
        meaning: 'of the buckling curve for plates without stiffeners',
      },
      {
        symbol: 'chi_c',
        expression: 'min(1, 1 / (phi + sqrt(phi^2 - lambda_p^2)))',
        unit: '1',
        meaning: 'reduction as a column: the least of all that 4.4, 4.5 and 5.3 give, no strength after buckling',
      },
      { symbol: 'sigma_Rd', expression: 'chi_c * f_y / gamma_M1', unit: 'MPa', meaning: 'design stress (10.1)' },
    ],
    'allowable stress': [
      ...pressed(),
      {
        symbol: 'n_e',
        expression: 'alpha_ult / alpha_cr',
        unit: '1',
        meaning: 'yield strength over elastic buckling stress, F_y / F_e',
      },
      {
        symbol: 'F_cr',
        expression: 'n_e <= 2.25 ? 0.658^n_e * f_y : 0.877 * f_y / n_e',
        unit: 'MPa',
        meaning: 'critical stress (E3-2, E3-3), no strength after buckling',
      },
      { symbol: 'sigma_Rd', expression: 'F_cr / Omega_b', unit: 'MPa', meaning: 'allowable stress' },
    ],
  },
  demand: 'sigma_m',
  capacity: 'sigma_Rd',
  second: {
    title:
      'where this panel gives way first: a field on hinged lines, pressed both ways everywhere as hard as its worst place can be',
    source: [
      {
        document: 'Timoshenko and Gere, Theory of Elastic Stability',
        edition: '2nd',
        clause: 'ch. 9, hinged edges, equal compression both ways',
        memory: true,
      },
    ],
    steps: [
      {
        symbol: 'sigma_e',
        expression: 'pi^2 * E * t^2 / (12 * (1 - nu^2)) * (1 / a^2 + 1 / b^2)',
        unit: 'MPa',
        meaning: 'buckling stress of the field, equal both ways',
      },
      {
        symbol: 'alpha_low',
        expression: 'own > 0 ? sqrt(3) / 2 * sigma_e / sigma_m : 0 * alpha_cr',
        unit: '1',
        meaning: 'over the largest principal stress that goes with the von Mises stress, 2/sqrt(3) of it',
      },
    ],
    of: 'alpha_cr',
    low: 'alpha_low',
  },
  cautions: [
    'The factor is the lowest of the whole plate under this loading, whichever panel gives way: another panel is judged with less than it has.',
    'Elastic, from a flat start and linear: contact that was closed stays closed. The buckling curve stands for first bow and welding stress.',
    'Side pressure bends the panel besides: what it adds is judged as panel stress, enlarged by the same factor.',
  ],
};

function pressed(): readonly Step[] {
  return [
    {
      symbol: 'sigma_m',
      expression: 'sigma_n * t_n / t',
      unit: 'MPa',
      meaning: 'stress in the plane at the end of life',
    },
    {
      symbol: 'alpha_cr',
      expression: 'alpha_n * (t / t_n)^3',
      unit: '1',
      meaning: 'buckling factor at the end of life: the same forces on a thinner plate',
    },
    {
      symbol: 'alpha_ult',
      expression: 'f_y / sigma_m',
      unit: '1',
      meaning: 'factor at which the plane yields (10.3)',
    },
  ];
}
