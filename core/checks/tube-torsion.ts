import type { Check, Step } from './check.ts';
import { handbook } from './handbook.ts';
import { basisFactor } from './inputs.ts';
import { onlyUnder } from './only-under.ts';
import { drilledStrengthStep, flangeLeft, flangeStep, netAreaStep, netElasticStep } from './tube-class-steps.ts';
import { tubeForceInputs, tubeInputs, tubePlaces } from './tube-inputs.ts';
import { solvedTubeForces } from './solved-inputs.ts';

const { M, V, T, N } = tubeForceInputs;
const { round, H, B, t, A, A_v, W_el, W_t, n_h, d_h, E, f_y, f_u } = tubeInputs;

/** Torsion of a tube with bending, shear and thrust at the same section, elastic. */
export const tubeTorsion: Check = {
  id: 'tube-torsion',
  title: 'Tube in torsion, with bending and shear',
  limitState: 'strength',
  source: [
    {
      document: 'EN 1993-1-1',
      edition: '2005',
      clause: '6.2.1(5), 6.2.3, 6.2.7',
      safety: 'partial factors',
      memory: true,
    },
    { document: 'AISC 360', edition: '2016', clause: 'H3.1, H3.2', safety: 'allowable stress' },
    { document: 'AISC 360', edition: '2016', clause: 'D2, J4.2', safety: 'allowable stress', memory: true },
    handbook('5.7.4, 5.7.5'),
  ],
  places: tubePlaces,
  applies: () => true,
  inputs: {
    ...{ M, V, T, N, round, H, B, t, A, W_el, W_t, n_h, d_h, E, f_y, f_u },
    ...onlyUnder('partial factors', { A_v }),
    gamma_M0: basisFactor('gamma_M0', 'partial factor on yielding', 'partial factors'),
    gamma_M2: basisFactor('gamma_M2', 'partial factor on rupture at holes', 'partial factors'),
    Omega_b: basisFactor('Omega_b', 'safety factor on bending and thrust', 'allowable stress'),
    Omega_v: basisFactor('Omega_v', 'safety factor on shear and torsion', 'allowable stress'),
    Omega_J: basisFactor('Omega_J', 'safety factor on rupture at holes', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...netSteps(),
      drilledStrengthStep,
      { symbol: 'tau_Rd', expression: 'f_d / sqrt(3)', unit: 'MPa', meaning: 'design shear stress' },
      {
        symbol: 'r_s',
        expression: 'sigma / f_d',
        unit: '1',
        meaning: 'part of the strength taken by bending and thrust',
      },
      { symbol: 'r_V', expression: 'V / A_v / tau_Rd', unit: '1', meaning: 'part of the strength taken by shear' },
      { symbol: 'r_T', expression: 'tau_T / tau_Rd', unit: '1', meaning: 'part of the strength taken by torsion' },
      { symbol: 'r_t', expression: 'r_V + r_T', unit: '1', meaning: 'part of the strength taken by shear and torsion' },
      {
        symbol: 'u',
        expression: 'sqrt(r_s^2 + r_t^2)',
        unit: '1',
        meaning: 'von Mises stress over design strength',
      },
      { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
    ],
    'allowable stress': [
      ...netSteps(),
      {
        symbol: 'F_cr',
        expression: 'round > 0 ? min(0.6 * f_y, 0.6 * E / (H / t)^1.5) : 0.6 * f_y',
        unit: 'MPa',
        meaning: 'nominal shear stress in torsion (H3-2b, H3-3)',
      },
      {
        symbol: 'sigma_Rd',
        expression: 'n_h > 0 ? min(f_y / Omega_b, f_u / Omega_J) : f_y / Omega_b',
        unit: 'MPa',
        meaning: 'allowable stress: yielding, or rupture beside a hole (D2)',
      },
      {
        symbol: 'tau_Rd',
        expression: 'n_h > 0 ? min(F_cr / Omega_v, 0.6 * f_u / Omega_J) : F_cr / Omega_v',
        unit: 'MPa',
        meaning: 'allowable shear stress in torsion, or of rupture beside a hole (J4.2)',
      },
      {
        symbol: 'r_s',
        expression: 'sigma / sigma_Rd',
        unit: '1',
        meaning: 'part of the strength taken by bending and thrust',
      },
      {
        symbol: 'r_V',
        expression: 'V / (round > 0 ? A / 2 : 2 * (H - 3 * t) * t) * Omega_v / (0.6 * f_y)',
        unit: '1',
        meaning: 'part of the strength taken by shear',
      },
      { symbol: 'r_T', expression: 'tau_T / tau_Rd', unit: '1', meaning: 'part of the strength taken by torsion' },
      { symbol: 'r_t', expression: 'r_V + r_T', unit: '1', meaning: 'part of the strength taken by shear and torsion' },
      {
        symbol: 'u',
        expression: 'r_T > 0.2 ? r_s + r_t^2 : max(r_s, r_V, r_T)',
        unit: '1',
        meaning: 'interaction (H3-6); torsion of a fifth or less may be left out',
      },
      { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
    ],
  },
  solved: { inputs: solvedTubeForces },
  demand: 'u',
  capacity: 'u_Rd',
  range: [
    {
      holds: 'round > 0 or (H - 3 * t) / t <= 2.45 * sqrt(E / f_y)',
      otherwise: 'the wall is slender: it could buckle in torsion (AISC 360 H3-4), which is another rule',
    },
    flangeLeft,
  ],
  second: {
    title:
      'shear flow round the wall by hand: round its middle with nothing else, and round its inside plus all the rest',
    source: [
      {
        document: 'Bredt, formula of the closed thin wall',
        clause: 'T = 2 A_m q, also in Timoshenko, Strength of Materials',
        memory: true,
      },
      { document: 'derived by hand: one part alone, and the plain sum' },
    ],
    steps: [
      {
        symbol: 't_low',
        expression: 'T / (2 * (round > 0 ? pi / 4 * (H - t)^2 : (H - t) * (B - t)) * t * tau_Rd)',
        unit: '1',
        meaning: 'torsion, flow round the middle of the wall, corners sharp, no holes',
      },
      {
        symbol: 't_high',
        expression: 'T / (2 * (round > 0 ? pi / 4 : 0.95) * (H - 2 * t) * (B - 2 * t) * t * part_t * tau_Rd)',
        unit: '1',
        meaning: 'torsion, flow round the inside of the wall, corners rounded',
      },
      { symbol: 'u_low', expression: 'max(r_s, min(t_low, t_low^2))', unit: '1', meaning: 'the larger part alone' },
      {
        symbol: 'u_high',
        expression: 'r_s + (r_V + t_high) * max(1, r_V + t_high)',
        unit: '1',
        meaning: 'plain sum',
      },
    ],
    of: 'u',
    low: 'u_low',
    high: 'u_high',
  },
  cautions: [
    'The largest moment, shear and torque are taken at one section, which is safe. Warping of a closed section is left out.',
    'Holes of bolts are always taken off, in both flanges and at the section of the largest forces, which is safe. The flow of torsion passes beside a hole in what is left of that wall; local bending of the wall round the hole is left to the ductility of the steel.',
  ],
};

/** Stresses of the section less the holes. The shear flow of torsion is the same all round the tube, so the strip of wall
 *  beside the holes carries that of the whole wall; the web's shear meets no hole, and is added as if at the same point. */
function netSteps(): readonly Step[] {
  return [
    flangeStep,
    netElasticStep,
    netAreaStep,
    {
      symbol: 'part_t',
      expression: '(b_f - n_h * d_h) / b_f',
      unit: '1',
      meaning: 'part of the drilled wall that the holes leave',
    },
    { symbol: 'sigma', expression: 'N / A_n + M / W_el_n', unit: 'MPa', meaning: 'stress along the tube' },
    {
      symbol: 'tau_T',
      expression: 'T / (W_t * part_t)',
      unit: 'MPa',
      meaning: 'shear stress of torsion in the wall beside the holes',
    },
  ];
}
