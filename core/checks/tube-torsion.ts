import type { Check } from './check.ts';
import { basisFactor } from './inputs.ts';
import { onlyUnder } from './only-under.ts';
import { tubeForceInputs, tubeInputs, tubePlaces } from './tube-inputs.ts';

const { M, V, T, N } = tubeForceInputs;
const { round, H, t, A, A_v, W_el, W_t, E, f_y } = tubeInputs;

/** Torsion of a tube with bending, shear and thrust at the same section, elastic. */
export const tubeTorsion: Check = {
  id: 'tube-torsion',
  title: 'Tube in torsion, with bending and shear',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-1', edition: '2005', clause: '6.2.1(5), 6.2.7', safety: 'partial factors', memory: true },
    { document: 'AISC 360', edition: '2016', clause: 'H3.1, H3.2', safety: 'allowable stress', memory: true },
  ],
  places: tubePlaces,
  applies: () => true,
  inputs: {
    ...{ M, V, T, N, round, H, t, A, W_el, W_t, E, f_y },
    ...onlyUnder('partial factors', { A_v }),
    gamma_M0: basisFactor('gamma_M0', 'partial factor on yielding', 'partial factors'),
    Omega_b: basisFactor('Omega_b', 'safety factor on bending and thrust', 'allowable stress'),
    Omega_v: basisFactor('Omega_v', 'safety factor on shear and torsion', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      { symbol: 'sigma', expression: 'N / A + M / W_el', unit: 'MPa', meaning: 'stress along the tube' },
      { symbol: 'tau', expression: 'V / A_v + T / W_t', unit: 'MPa', meaning: 'shear stress in the web' },
      {
        symbol: 'r_s',
        expression: 'sigma * gamma_M0 / f_y',
        unit: '1',
        meaning: 'part of the strength taken by bending and thrust',
      },
      {
        symbol: 'r_t',
        expression: 'sqrt(3) * tau * gamma_M0 / f_y',
        unit: '1',
        meaning: 'part of the strength taken by shear and torsion',
      },
      {
        symbol: 'u',
        expression: 'sqrt(r_s^2 + r_t^2)',
        unit: '1',
        meaning: 'von Mises stress over design yield stress',
      },
      { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
    ],
    'allowable stress': [
      {
        symbol: 'F_cr',
        expression: 'round > 0 ? min(0.6 * f_y, 0.6 * E / (H / t)^1.5) : 0.6 * f_y',
        unit: 'MPa',
        meaning: 'nominal shear stress in torsion (H3-2b, H3-3)',
      },
      {
        symbol: 'r_s',
        expression: '(N / A + M / W_el) * Omega_b / f_y',
        unit: '1',
        meaning: 'part of the strength taken by bending and thrust',
      },
      {
        symbol: 'r_V',
        expression: 'V / (round > 0 ? A / 2 : 2 * (H - 3 * t) * t) * Omega_v / (0.6 * f_y)',
        unit: '1',
        meaning: 'part of the strength taken by shear',
      },
      {
        symbol: 'r_T',
        expression: 'T / W_t * Omega_v / F_cr',
        unit: '1',
        meaning: 'part of the strength taken by torsion',
      },
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
  demand: 'u',
  capacity: 'u_Rd',
  range: [
    {
      holds: 'round > 0 or (H - 3 * t) / t <= 2.45 * sqrt(E / f_y)',
      otherwise: 'the wall is slender: it could buckle in torsion (AISC 360 H3-4), which is another rule',
    },
  ],
  second: {
    title: 'not less than bending alone, not more than the plain sum of the parts',
    source: [{ document: 'derived by hand: triangle inequality' }],
    steps: [
      { symbol: 'u_low', expression: 'r_s', unit: '1', meaning: 'bending and thrust alone' },
      { symbol: 'u_high', expression: 'r_s + r_t * max(1, r_t)', unit: '1', meaning: 'plain sum' },
    ],
    of: 'u',
    low: 'u_low',
    high: 'u_high',
  },
  cautions: [
    'The largest moment, shear and torque are taken at one section, which is safe. Warping of a closed section is left out.',
  ],
};
