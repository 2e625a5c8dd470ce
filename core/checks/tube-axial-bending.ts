import type { Check } from './check.ts';
import { basisFactor } from './inputs.ts';
import { onlyUnder } from './only-under.ts';
import { f_235, flangeLeft, nominalMomentSteps, notSlender, thrustClassSteps } from './tube-class-steps.ts';
import { tubeAt, tubeForceInputs, tubeInputs, tubePlaces } from './tube-inputs.ts';
import type { Model } from '../model.ts';

const { M, N } = tubeForceInputs;
const { round, H, B, t, A, I_min, W_el, W_pl, n_h, d_h, E, f_y } = tubeInputs;

/** Imperfection of hollow sections, EN 1993-1-1 Tables 6.1 and 6.2: hot finished curve a (a0 for S460), cold formed c. */
function imperfection(model: Model, id: string): number {
  const { section, material } = tubeAt(model, id);
  if (section.process === 'cold formed') return 0.49;
  return material.yieldStrength[0]!.value >= 460e6 ? 0.13 : 0.21;
}

/** Thrust of a bridle with bending: buckling of the tube in the plane of bending. */
export const tubeAxialBending: Check = {
  id: 'tube-axial-bending',
  title: 'Tube under thrust and bending',
  limitState: 'stability',
  source: [
    {
      document: 'EN 1993-1-1',
      edition: '2005',
      clause: '6.3.1, 6.3.3, Table B.1',
      safety: 'partial factors',
      memory: true,
    },
    { document: 'AISC 360', edition: '2016', clause: 'E3, H1.1, Appendix 8', safety: 'allowable stress', memory: true },
  ],
  places: tubePlaces,
  applies: (_, id, situation) => {
    const forces = situation.tubes.get(id);
    return !forces || forces.axial !== 0 || 'nothing pushes along this tube';
  },
  inputs: {
    ...{ M, N, round, H, B, t, A, I_min, W_el, W_pl, n_h, d_h, E, f_y },
    ...onlyUnder('partial factors', { f_235 }),
    L_cr: {
      unit: 'm',
      meaning: 'buckling length: the whole tube, hinged at both ends',
      from: 'geometry',
      read: (model, id) => tubeAt(model, id).to - tubeAt(model, id).from,
    },
    alpha: {
      unit: '1',
      meaning: 'imperfection of the buckling curve',
      from: 'EN 1993-1-1, Tables 6.1 and 6.2',
      read: imperfection,
      only: 'partial factors',
    },
    C_m: {
      unit: '1',
      meaning: 'shape of the moment along the tube: even, which is safe',
      from: 'EN 1993-1-1, Table B.3',
      read: () => 1,
    },
    gamma_M1: basisFactor('gamma_M1', 'partial factor on stability', 'partial factors'),
    Omega_b: basisFactor('Omega_b', 'safety factor on thrust and bending', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      { symbol: 'N_cr', expression: 'pi^2 * E * I_min / L_cr^2', unit: 'kN', meaning: 'elastic buckling force' },
      ...thrustClassSteps,
      { symbol: 'lambda_bar', expression: 'sqrt(A * f_y / N_cr)', unit: '1', meaning: 'slenderness' },
      {
        symbol: 'Phi',
        expression: '0.5 * (1 + alpha * (lambda_bar - 0.2) + lambda_bar^2)',
        unit: '1',
        meaning: 'helping value',
      },
      {
        symbol: 'chi',
        expression: 'lambda_bar <= 0.2 ? 1 : 1 / (Phi + sqrt(Phi^2 - lambda_bar^2))',
        unit: '1',
        meaning: 'reduction for buckling',
      },
      {
        symbol: 'r_N',
        expression: 'N * gamma_M1 / (A * f_y)',
        unit: '1',
        meaning: 'thrust over the strength of the section',
      },
      {
        symbol: 'r_M',
        expression: 'M * gamma_M1 / (W * f_y)',
        unit: '1',
        meaning: 'moment over the strength of the section',
      },
      { symbol: 'n', expression: 'r_N / chi', unit: '1', meaning: 'thrust over the buckling resistance' },
      {
        symbol: 'k_yy',
        expression: 'C_m * min(1 + (lambda_bar - 0.2) * n, 1 + 0.8 * n)',
        unit: '1',
        meaning: 'interaction factor (method 2)',
      },
      { symbol: 'u', expression: 'n + k_yy * r_M', unit: '1', meaning: 'interaction of thrust and moment' },
      { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
    ],
    'allowable stress': [
      { symbol: 'N_cr', expression: 'pi^2 * E * I_min / L_cr^2', unit: 'kN', meaning: 'elastic buckling force' },
      ...nominalMomentSteps,
      { symbol: 'F_e', expression: 'N_cr / A', unit: 'MPa', meaning: 'elastic buckling stress' },
      {
        symbol: 'F_cr',
        expression: 'f_y / F_e <= 2.25 ? 0.658^(f_y / F_e) * f_y : 0.877 * F_e',
        unit: 'MPa',
        meaning: 'buckling stress (E3-2, E3-3)',
      },
      {
        symbol: 'r_N',
        expression: 'N * Omega_b / (A * f_y)',
        unit: '1',
        meaning: 'thrust over the strength of the section',
      },
      { symbol: 'r_M', expression: 'M * Omega_b / M_n', unit: '1', meaning: 'moment over the strength of the section' },
      {
        symbol: 'r_c',
        expression: 'N * Omega_b / (A * F_cr)',
        unit: '1',
        meaning: 'thrust over the allowable buckling force',
      },
      { symbol: 'r_e', expression: '1.6 * N / N_cr', unit: '1', meaning: 'thrust over the elastic buckling force' },
      {
        symbol: 'u',
        expression:
          'r_e >= 0.9 ? 1 + r_e : (r_c >= 0.2 ? r_c + 8 / 9 * r_M * C_m / (1 - r_e) : r_c / 2 + r_M * C_m / (1 - r_e))',
        unit: '1',
        meaning: 'interaction (H1-1), moment grown by the thrust; close to the elastic buckling force it fails',
      },
      { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
    ],
  },
  demand: 'u',
  capacity: 'u_Rd',
  range: [notSlender, flangeLeft],
  second: {
    title: 'not less than half of what the section alone takes, thrust and moment plainly added',
    source: [{ document: 'derived by hand: buckling only ever adds' }],
    steps: [{ symbol: 'u_low', expression: '(r_N + r_M) / 2', unit: '1', meaning: 'half the plain sum' }],
    of: 'u',
    low: 'u_low',
  },
  cautions: [
    'Bridle legs press the tubes between their attachments. The whole tube is taken as the buckling length: no crossing is relied on.',
    'Buckling across the plane of bending is covered by taking the least second moment of area for both.',
  ],
};
