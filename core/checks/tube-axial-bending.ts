import type { Check } from './check.ts';
import { handbook, wallLimitsRead } from './handbook.ts';
import { basisFactor } from './inputs.ts';
import { onlyUnder } from './only-under.ts';
import {
  drilledStrengthStep,
  f_235,
  flangeLeft,
  netAreaStep,
  nominalMomentSteps,
  notSlender,
  ruptureMomentSteps,
  thrustClassSteps,
} from './tube-class-steps.ts';
import { tubeAt, tubeForceInputs, tubeInputs, tubePlaces } from './tube-inputs.ts';
import type { Model } from '../model.ts';
import { solvedTubeForces } from './solved-inputs.ts';

const { M, N } = tubeForceInputs;
const { round, H, B, t, A, I_min, W_el, W_pl, n_h, d_h, E, f_y, f_u } = tubeInputs;

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
    { document: 'EN 1993-1-1', edition: '2005', clause: 'Table 5.2, flat walls', safety: 'partial factors' },
    {
      document: 'EN 1993-1-1',
      edition: '2005',
      clause: 'Table 5.2, round walls, 6.2.3, 6.2.5, 6.2.9, 6.3.1, 6.3.3, Table B.1',
      safety: 'partial factors',
      memory: true,
    },
    { document: 'AISC 360', edition: '2016', clause: 'Table B4.1b, F7, F8, F13.1', safety: 'allowable stress' },
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'D2, E3, H1.1, H4, Appendix 8',
      safety: 'allowable stress',
      memory: true,
    },
    wallLimitsRead,
    handbook('5.5.5 to 5.5.8'),
  ],
  places: tubePlaces,
  applies: (_, id, situation) => {
    const forces = situation.tubes.get(id);
    return !forces || forces.axial !== 0 || 'nothing pushes along this tube';
  },
  inputs: {
    ...{ M, N, round, H, B, t, A, I_min, W_el, W_pl, n_h, d_h, E, f_y, f_u },
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
    gamma_M0: basisFactor('gamma_M0', 'partial factor on yielding', 'partial factors'),
    gamma_M2: basisFactor('gamma_M2', 'partial factor on rupture at holes', 'partial factors'),
    Omega_b: basisFactor('Omega_b', 'safety factor on thrust and bending', 'allowable stress'),
    Omega_J: basisFactor('Omega_J', 'safety factor on rupture at holes', 'allowable stress'),
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
        expression: 'C_m * (1 + min(max(lambda_bar - 0.2, 0), 0.8) * n)',
        unit: '1',
        meaning: 'interaction factor (method 2), never below that of a stocky bar',
      },
      { symbol: 'u_b', expression: 'n + k_yy * r_M', unit: '1', meaning: 'buckling: interaction of thrust and moment' },
      netAreaStep,
      drilledStrengthStep,
      {
        symbol: 'u_n',
        expression: 'N / (A_n * f_d) + M / (W * f_d)',
        unit: '1',
        meaning: 'section less the holes: yielding, or rupture beside a hole, the axial force taken as a pull',
      },
      { symbol: 'u', expression: 'max(u_b, u_n)', unit: '1', meaning: 'the larger' },
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
        symbol: 'B_m',
        expression: 'r_e < 0.9 ? C_m / (1 - r_e) : 10 * C_m',
        unit: '1',
        meaning: 'growth of the moment by the thrust; close to the elastic buckling force the check fails',
      },
      {
        symbol: 'u_b',
        expression: '(r_e < 0.9 ? 0 : 1) + (r_c >= 0.2 ? r_c + 8 / 9 * r_M * B_m : r_c / 2 + r_M * B_m)',
        unit: '1',
        meaning: 'buckling: interaction (H1-1); 1 more close to the elastic buckling force',
      },
      ...ruptureMomentSteps,
      netAreaStep,
      {
        symbol: 'u_n',
        expression: 'n_h > 0 ? N * Omega_J / (A_n * f_u) + M * Omega_b / M_r : 0',
        unit: '1',
        meaning: 'rupture beside the holes (H4-1), the axial force taken as a pull',
      },
      { symbol: 'u', expression: 'max(u_b, u_n)', unit: '1', meaning: 'the larger' },
      { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
    ],
  },
  solved: { inputs: solvedTubeForces },
  demand: 'u',
  capacity: 'u_Rd',
  range: [notSlender, flangeLeft],
  second: {
    title: 'buckling of the bar by hand: perfect, by squash or Euler; and by Rankine, its moment grown by the secant',
    source: [
      {
        document: 'Timoshenko and Gere, Theory of Elastic Stability',
        edition: '2nd',
        clause: "Euler's force; a hinged bar under end moments, M sec(π/2 √(P/P_e))",
        memory: true,
      },
      {
        document: 'Rankine, sum of squash and buckling',
        clause: '1/P = 1/P_y + 1/P_e, P_e taken at 0.8 for the bow that curves c and E3 allow for',
        memory: true,
      },
    ],
    steps: [
      {
        symbol: 'n_E',
        expression: 'r_N * max(1, A * f_y / N_cr)',
        unit: '1',
        meaning: 'thrust over squash or Euler force',
      },
      {
        symbol: 'n_R',
        expression: 'r_N * (1 + A * f_y / (0.8 * N_cr))',
        unit: '1',
        meaning: "thrust over Rankine's force",
      },
      { symbol: 'p', expression: '1.6 * N / N_cr', unit: '1', meaning: 'thrust over the elastic buckling force' },
      {
        symbol: 'u_low',
        expression: '(n_E < 0.2 ? n_E / 2 : n_E) + 8 / 9 * C_m * r_M',
        unit: '1',
        meaning: 'straight bar, moment not grown; at a small thrust half of it counts, as in H1-1b',
      },
      {
        symbol: 'u_high',
        expression: 'p < 0.9 ? n_R + C_m * r_M / cos(pi / 2 * sqrt(p)) : 1 + n_R + C_m * r_M * (10 + n_R)',
        unit: '1',
        meaning: 'bowed bar; close to the elastic buckling force only a coarse bound',
      },
    ],
    of: 'u_b',
    low: 'u_low',
    high: 'u_high',
  },
  cautions: [
    'Bridle legs press the tubes between their attachments. The whole tube is taken as the buckling length: no crossing is relied on.',
    'Buckling across the plane of bending is covered by taking the least second moment of area for both.',
    'Holes of bolts are always taken off, in both flanges and at the section of the largest moment, the axial force taken as a pull there: bolts fill holes that are pressed, but neither sign nor fit is relied on.',
  ],
};
