import type { Check, Step } from './check.ts';
import { eyeCautions, eyePlaces, eyeYieldFactor } from './eye-inputs.ts';
import { footBoltInputs, footBoltResistance, footCautions, footPlateInputs, footPullSteps, onFootPlate, stemRange } from './eye-foot-plate-inputs.ts'; // prettier-ignore
import { factorOfEither } from './bolt-inputs.ts';
import { basisFactor } from './inputs.ts';
import { solvedLegs } from './solved-inputs.ts';

/** Lengths of yield lines of all pairs: each pair by itself, and all as a group. */
const lengths: readonly Step[] = [
  {
    symbol: 'l_cp_1',
    expression: '2 * min(2 * pi * m, pi * m + 2 * e_1) + (n_p - 2) * 2 * pi * m',
    unit: 'mm',
    meaning: 'circles, each pair by itself',
  },
  {
    symbol: 'l_cp_g',
    expression: '2 * min(pi * m + p_f, 2 * e_1 + p_f) + (n_p - 2) * 2 * p_f',
    unit: 'mm',
    meaning: 'circles, all pairs as a group',
  },
  {
    symbol: 'l_nc_1',
    expression: '2 * min(4 * m + 1.25 * e, 2 * m + 0.625 * e + e_1) + (n_p - 2) * (4 * m + 1.25 * e)',
    unit: 'mm',
    meaning: 'other patterns, each pair by itself',
  },
  {
    symbol: 'l_nc_g',
    expression: '2 * min(2 * m + 0.625 * e + 0.5 * p_f, e_1 + 0.5 * p_f) + (n_p - 2) * p_f',
    unit: 'mm',
    meaning: 'other patterns, all pairs as a group',
  },
  { symbol: 'l_2', expression: 'min(l_nc_1, l_nc_g)', unit: 'mm', meaning: 'effective length, mode 2' },
  { symbol: 'l_1', expression: 'min(l_cp_1, l_cp_g, l_2)', unit: 'mm', meaning: 'effective length, mode 1' },
];

const modes = (factor: 'gamma_M0' | 'Omega_b'): readonly Step[] => [
  { symbol: 'M_1', expression: `l_1 * t_f^2 * f_yf / (4 * ${factor})`, unit: 'N*m', meaning: 'plastic moment, mode 1' },
  { symbol: 'M_2', expression: `l_2 * t_f^2 * f_yf / (4 * ${factor})`, unit: 'N*m', meaning: 'plastic moment, mode 2' },
  { symbol: 'F_1', expression: '4 * M_1 / m', unit: 'kN', meaning: 'mode 1: the flange yields at stem and bolts' },
  {
    symbol: 'F_3',
    expression: '2 * n_p * F_t_Rd',
    unit: 'kN',
    meaning: 'mode 3: the bolts break, no prying',
  },
  {
    symbol: 'F_2',
    expression: '(2 * M_2 + n * F_3) / (m + n)',
    unit: 'kN',
    meaning: 'mode 2: the flange yields at the stem and the bolts break, prying',
  },
  { symbol: 'F_T_Rd', expression: 'min(F_1, F_2, F_3)', unit: 'kN', meaning: 'the least of the three' },
];

/** Bolted foot plate of an eye: the equivalent T-stub with its three modes. */
export const eyeFootPlate: Check = {
  id: 'eye-foot-plate',
  title: 'Bolted foot of an eye as a T-stub',
  limitState: 'strength',
  source: [
    {
      document: 'EN 1993-1-8',
      edition: '2005',
      clause: '6.2.4.1, Tables 6.2 and 6.4 (unstiffened, end and inner rows)',
      safety: 'partial factors',
      memory: true,
    },
    { document: 'AISC Manual', clause: 'Part 9, prying: the three modes as in EN 1993-1-8', safety: 'allowable stress', memory: true },
  ],
  places: eyePlaces,
  applies: onFootPlate,
  inputs: {
    ...footPlateInputs,
    ...footBoltInputs,
    gamma_M0: eyeYieldFactor,
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
    Omega_J: basisFactor('Omega_J', 'safety factor on bolts', 'allowable stress'),
    gamma_R: factorOfEither(eyeYieldFactor, 'Omega_b', 'factor on yielding, of either kind of basis'),
  },
  steps: {
    'partial factors': [...footPullSteps, ...lengths, footBoltResistance['partial factors'], ...modes('gamma_M0')],
    'allowable stress': [...footPullSteps, ...lengths, footBoltResistance['allowable stress'], ...modes('Omega_b')],
  },
  solved: { inputs: solvedLegs },
  demand: 'N',
  capacity: 'F_T_Rd',
  range: stemRange,
  second: {
    title: 'above, a strip as long as the foot plate that yields at stem and bolts, or the bolts without prying; below, half of it: the strip yields at the stem alone and the bolts bear half of their strength',
    source: [{ document: 'plastic hinges of a beam, derived by hand' }],
    steps: [
      { symbol: 'l_f', expression: '2 * e_1 + (n_p - 1) * p_f', unit: 'mm', meaning: 'length of the foot plate' },
      { symbol: 'F_strip', expression: 'l_f * t_f^2 * f_yf / (gamma_R * m)', unit: 'kN', meaning: 'strip, both hinges on both sides' },
      { symbol: 'F_high', expression: 'min(F_strip, F_3)', unit: 'kN', meaning: 'the smaller' },
      { symbol: 'F_low', expression: 'min(l_2 / l_f, l_1 / l_f) * min(F_strip / 2, F_3 / 2)', unit: 'kN', meaning: 'on the effective length' },
    ],
    of: 'F_T_Rd',
    low: 'F_low',
    high: 'F_high',
  },
  cautions: [...eyeCautions, ...footCautions],
}; // prettier-ignore
