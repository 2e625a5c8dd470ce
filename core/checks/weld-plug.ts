import type { Check } from './check.ts';
import { fieldInputs, fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { weldForceSteps } from './weld-force-steps.ts';
import { weldForceInputs, weldRule, weldStrengthInputs } from './weld-inputs.ts';
import { plugCautions, plugged, plugInputs } from './weld-plug-inputs.ts';

const { a, b, t, E, nu, p } = fieldInputs;
const { h_x, h_y } = weldForceInputs;
const { f_u, beta_w, F_EXX } = weldStrengthInputs;

const pull = weldForceSteps.filter(({ symbol }) => symbol === 'L_n' || symbol === 'N_pull');
const shear = [
  ...pull,
  { symbol: 'F_v', expression: 'N_pull * p_far', unit: 'kN', meaning: 'pull in the plane over the largest pitch of plugs' },
  { symbol: 'A_w', expression: 'pi / 4 * d_p^2', unit: 'mm^2', meaning: 'area of a plug where panel and tube meet' },
] as const; // prettier-ignore

/** A plug weld in shear: the panel's pull in its plane, as if the weld of the edge took none of it. */
export const weldPlug: Check = {
  id: 'weld-plug',
  title: 'Plug welds in shear',
  limitState: 'strength',
  source: [
    {
      document: 'EN 1993-1-8',
      edition: '2005',
      clause: '4.3.5, 4.5.3.3, 4.6',
      safety: 'partial factors',
      memory: true,
    },
    { document: 'AISC 360', edition: '2016', clause: 'J2.3a, Table J2.5', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: plugged,
  rule: (model, bay) => weldRule(model, bay),
  inputs: {
    ...{ p, a, b, t, E, nu, h_x, h_y, f_u, beta_w, F_EXX },
    ...{ d_p: plugInputs.d_p, p_far: plugInputs.p_far },
    gamma_M2: basisFactor('gamma_M2', 'partial factor on welds', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on welds', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...shear,
      {
        symbol: 'F_w_Rd',
        expression: 'f_u / (sqrt(3) * beta_w * gamma_M2) * A_w',
        unit: 'kN',
        meaning: 'shear resistance of a plug',
      },
    ],
    'allowable stress': [
      ...shear,
      { symbol: 'F_w_Rd', expression: '0.6 * F_EXX * A_w / Omega_J', unit: 'kN', meaning: 'allowable shear of a plug' },
    ],
  },
  demand: 'F_v',
  capacity: 'F_w_Rd',
  second: {
    title: 'stress on the plug: the old allowable 0.30 of the tensile strength, and shear rupture without a factor',
    source: [
      { document: 'AWS D1.1', clause: 'allowable shear of plug welds, 0.30 of the tensile strength', memory: true },
      { document: 'von Mises, rupture in pure shear', clause: 'f_u/√3', memory: true },
    ],
    steps: [
      { symbol: 'F_low', expression: '0.29 * f_u * A_w', unit: 'kN', meaning: 'old allowable force, rounded down' },
      { symbol: 'F_high', expression: 'f_u / sqrt(3) * A_w', unit: 'kN', meaning: 'shear rupture of the plug' },
    ],
    of: 'F_w_Rd',
    low: 'F_low',
    high: 'F_high',
  },
  cautions: plugCautions,
};
