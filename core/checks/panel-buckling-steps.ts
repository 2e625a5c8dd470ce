import type { Situation } from '../loads/situation.ts';
import type { Model } from '../model.ts';
import type { Safety, Source } from '../source.ts';
import { missing, type Input, type Step } from './check.ts';
import { fieldInputs, materialsOfPanel, panelAt } from './field-inputs.ts';
import { partialFactor } from './partial-factor.ts';
import { basisFactor } from './inputs.ts';

export const bucklingSources: readonly Source[] = [
  {
    document: 'EN 1993-1-5',
    edition: '2006',
    clause: '10 (reduced stress method) with 4.5.3 (column-like, alpha = 0.21)',
    safety: 'partial factors',
    memory: true,
  },
  { document: 'AISC 360', edition: '2016', clause: 'E3, E7', safety: 'allowable stress', memory: true },
];

const { f_y } = fieldInputs;

export const bucklingInputs = {
  f_y: {
    ...f_y,
    read: (model: Model, bay: string, situation: Situation) => {
      const { material } = panelAt(model, bay);
      return material.family === 'carbon steel' || material.family === 'stainless steel'
        ? f_y.read(model, bay, situation)
        : missing(`a rule for the buckling of plates of ${material.title}: those held here are for steel`);
    },
  },
  gamma_M1: partialFactor('gamma_M1', 'partial factor on stability', materialsOfPanel),
  Omega_b: basisFactor('Omega_b', 'safety factor on stability', 'allowable stress'),
} as const satisfies Readonly<Record<string, Input>>;

const yielding: Step = {
  symbol: 'alpha_ult',
  expression: 'f_y / sigma_m',
  unit: '1',
  meaning: 'factor at which the plane yields (10.3)',
};

/** Strength of a panel pressed in its plane by `sigma_m`, von Mises, which buckles at `alpha_cr` times that. */
export const bucklingResistance: Readonly<Record<Safety, readonly Step[]>> = {
  'partial factors': [
    yielding,
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
    yielding,
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
};
