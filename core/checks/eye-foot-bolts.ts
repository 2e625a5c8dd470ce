import type { Check, Step } from './check.ts';
import { eyeCautions, eyePlaces } from './eye-inputs.ts';
import { footBoltInputs, footBoltPull, footBoltResistance, footCautions, footPlateInputs, footPullSteps, footShearInputs, onFootPlate, stemRange } from './eye-foot-plate-inputs.ts'; // prettier-ignore
import { basisFactor } from './inputs.ts';
import { solvedLegs } from './solved-inputs.ts';

const { F_z, F_l, F_q, t_e, h_e, a_w, w_f, e, p_f, n_p } = footPlateInputs;

const forces: readonly Step[] = [
  ...footPullSteps,
  footBoltPull,
  { symbol: 'F_v', expression: 'sqrt(F_l^2 + F_q^2) / (2 * n_p)', unit: 'kN', meaning: 'shear of a bolt' },
];
const limit: Step = { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' };

/** Bolts of an eye's foot plate: pull with prying, and shear. */
export const eyeFootBolts: Check = {
  id: 'eye-foot-bolts',
  title: 'Bolts of an eye’s foot',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.4, 6.2.4', safety: 'partial factors', memory: true },
    { document: 'AISC 360', edition: '2016', clause: 'J3.6, J3.7', safety: 'allowable stress', memory: true },
  ],
  places: eyePlaces,
  applies: onFootPlate,
  inputs: {
    ...{ F_z, F_l, F_q, t_e, h_e, a_w, w_f, e, p_f, n_p },
    ...footBoltInputs,
    ...footShearInputs,
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on bolts', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...forces,
      footBoltResistance['partial factors'],
      { symbol: 'F_v_Rd', expression: 'alpha_v * f_ub * A_s / gamma_M2', unit: 'kN', meaning: 'shear resistance, on the thread' },
      { symbol: 'u', expression: 'max(B / F_t_Rd, F_v / F_v_Rd + B / (1.4 * F_t_Rd))', unit: '1', meaning: 'pull alone, and with shear' },
      limit,
    ],
    'allowable stress': [
      ...forces,
      footBoltResistance['allowable stress'],
      { symbol: 'F_v_Rd', expression: 'F_nv * A_b / Omega_J', unit: 'kN', meaning: 'allowable shear' },
      { symbol: 'u', expression: 'max(B / F_t_Rd, F_v / F_v_Rd, (F_v / F_v_Rd + B / F_t_Rd) / 1.3)', unit: '1', meaning: 'each alone, and both' },
      limit,
    ],
  },
  solved: { inputs: solvedLegs },
  demand: 'u',
  capacity: 'u_Rd',
  range: stemRange,
  second: {
    title: 'below, an ellipse of pull without prying and shear; above, a straight line with the prying of a flange that never leans beyond its edge',
    source: [{ document: 'AISC 360 Commentary', edition: '2016', clause: 'J3.7, ellipse', memory: true }],
    steps: [
      { symbol: 'u_low', expression: 'sqrt((N / (2 * n_p * F_t_Rd))^2 + (F_v / F_v_Rd)^2) / sqrt(2)', unit: '1', meaning: 'ellipse, no prying, a straight line’s depth off' },
      { symbol: 'u_high', expression: 'N / (2 * n_p * F_t_Rd) * (1 + m / n) + F_v / F_v_Rd', unit: '1', meaning: 'straight line, prying of a lever' },
    ],
    of: 'u',
    low: 'u_low',
    high: 'u_high',
  },
  cautions: [...eyeCautions, ...footCautions],
}; // prettier-ignore
