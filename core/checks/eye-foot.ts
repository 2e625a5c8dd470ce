import type { Check, Step } from './check.ts';
import { eyeCautions, eyeForceInputs, eyeInputs, eyePlaces, eyePulled, eyeYieldFactor } from './eye-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedLegs } from './solved-inputs.ts';

const { F_z, F_l, F_q } = eyeForceInputs;
const { t_e, h_e, l_e, f_y } = eyeInputs;

/** Plate of the eye at its foot: pull with bending in its plane and across it. */
export const eyeFoot: Check = {
  id: 'eye-foot',
  title: 'Eye plate at its foot',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-1', edition: '2005', clause: '6.2.1(5)', safety: 'partial factors', memory: true },
    { document: 'AISC 360', edition: '2016', clause: 'H1.2, F11, elastic', safety: 'allowable stress', memory: true },
  ],
  places: eyePlaces,
  applies: eyePulled,
  inputs: {
    ...{ F_z, F_l, F_q, t_e, h_e, l_e, f_y },
    gamma_M0: eyeYieldFactor,
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...section(),
      { symbol: 'sigma_Rd', expression: 'f_y / gamma_M0', unit: 'MPa', meaning: 'design yield stress' },
    ],
    'allowable stress': [
      ...section(),
      { symbol: 'sigma_Rd', expression: 'f_y / Omega_b', unit: 'MPa', meaning: 'allowable stress at first yield' },
    ],
  },
  solved: { inputs: solvedLegs },
  demand: 'sigma_v',
  capacity: 'sigma_Rd',
  second: {
    title: 'plastic: the whole rectangle yields; and by the largest shear stress (Tresca)',
    source: [
      {
        document: 'AISC 360',
        edition: '2016',
        clause: 'F11: plastic moment up to 1.6 times first yield; only a reference to that limit was read',
      },
      { document: 'plastic modulus of a rectangle, derived by hand' },
      {
        document: 'Timoshenko, Strength of Materials',
        clause: 'largest shear stress: √(σ² + 4 τ²), at most 2/√3 of von Mises',
        memory: true,
      },
    ],
    steps: [
      {
        symbol: 'sigma_p',
        expression: '(F_z + 4 * h_e * (F_l / l_e + F_q / t_e)) / (t_e * l_e)',
        unit: 'MPa',
        meaning: 'pull and both bendings by plastic moduli, plainly added',
      },
      {
        symbol: 'sigma_low',
        expression: 'max(sigma_p, sqrt(3) * (F_l + F_q) / (t_e * l_e))',
        unit: 'MPa',
        meaning: 'larger of that and mean shear',
      },
      {
        symbol: 'sigma_high',
        expression: 'sqrt(sigma^2 + 4 * tau^2)',
        unit: 'MPa',
        meaning: 'largest shear stress, doubled',
      },
    ],
    of: 'sigma_v',
    low: 'sigma_low',
    high: 'sigma_high',
  },
  cautions: [
    ...eyeCautions,
    'A leg that leans across the plane of the eye bends it about its thin axis: turn the eye to face the leg.',
  ],
};

function section(): readonly Step[] {
  return [
    {
      symbol: 'sigma',
      expression: 'F_z / (t_e * l_e) + 6 * F_l * h_e / (t_e * l_e^2) + 6 * F_q * h_e / (l_e * t_e^2)',
      unit: 'MPa',
      meaning: 'pull, bending in the plane and across it',
    },
    {
      symbol: 'tau',
      expression: '1.5 * (F_l + F_q) / (t_e * l_e)',
      unit: 'MPa',
      meaning: 'shear stress, taken at the same point',
    },
    { symbol: 'sigma_v', expression: 'sqrt(sigma^2 + 3 * tau^2)', unit: 'MPa', meaning: 'equivalent stress' },
  ];
}
