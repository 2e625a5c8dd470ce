import { eyeBearing } from '../../checks/eye-bearing.ts';
import { eyeCheekWeld } from '../../checks/eye-cheek-weld.ts';
import { eyeFoot } from '../../checks/eye-foot.ts';
import { eyeFootBolts } from '../../checks/eye-foot-bolts.ts';
import { eyeFootPlate } from '../../checks/eye-foot-plate.ts';
import { eyeFootWall } from '../../checks/eye-foot-wall.ts';
import { eyeNetTension } from '../../checks/eye-net-tension.ts';
import { eyeTearOut } from '../../checks/eye-tear-out.ts';
import { eyeTubeWall } from '../../checks/eye-tube-wall.ts';
import { eyeWeld } from '../../checks/eye-weld.ts';
import { eyeWeldUltimate } from '../../checks/eye-weld-ultimate.ts';
import { printed } from './printed.ts';
import type { PublishedValue } from './published-value.ts';

const en = 'EN 1993-1-8:2005, ';
const [ksi, inch] = [6894757.293168, 0.0254];
const us = { safety: 'allowable stress' } as const;
const design = 'AISC Design Examples, D.7';
/** Half-inch plate of A36, 4.25 in wide, hole of 1.03 in, pin of 1 in. */
const d7 = { t_e: 0.5 * inch, d_0: 1.03 * inch, d: inch, c_e: 1.61 * inch, a_e: 2.25 * inch, f_y: 36 * ksi, f_u: 58 * ksi, b_16: 0.016 }; // prettier-ignore
const plate = { t_e: 0.02, d_0: 0.03, d: 0.03, f_y: 355e6, f_u: 470e6, gamma_M0: 1 };
/** 150 kN off and 100 kN along on two runs of 4 × 200 mm, S275, in the plane of the weld. */
const weld = { F_z: 150e3, F_l: 100e3, F_q: 0, h_e: 0, t_e: 0.02, a_w: 0.004, l_0: 0.208, f_u: 430e6, beta_w: 0.85, gamma_M2: 1.25 }; // prettier-ignore

/** Flange of 20.5 mm at 265 MPa with a pair of M24 8.8 of 203 kN each, m = 33.4 mm, e = 79.4 mm. */
const stub = {
  t_f: 0.0205,
  f_yf: 265e6,
  m: 0.0334,
  n: 0.0418,
  n_p: 1,
  F_t_Rd: 203e3,
  l_1: 0.21,
  l_2: 0.233,
  gamma_M0: 1,
};
const foot = { N: 200e3, m: 0.035, n: 0.04, n_p: 2, A_s: 157e-6, f_ub: 800e6, alpha_v: 0.6, gamma_M2: 1.25 };

export const eyeValues: readonly PublishedValue[] = [
  { check: eyeNetTension, about: '20 mm at 355 MPa, hole 30 mm, 17.0423 mm beside it', origin: 'by hand', source: `${en}Table 3.9, type A`, given: { ...plate, c_e: 0.0170423 }, symbol: 'F_Rd', ...printed('100.00', 'kN') },
  { check: eyeNetTension, ...us, about: 'half-inch plate of A36, 4.25 in wide, allowable', origin: 'printed', source: design, memory: true, given: { ...d7, Omega_J: 2, Omega_b: 1.67 }, symbol: 'F_Rd', ...printed('45.8', 'kip') },
  { check: eyeTearOut, about: 'end distance 27.0423 mm, 20 mm at 355 MPa, pin hole 30 mm', origin: 'by hand', source: `${en}Table 3.9, type A`, given: { ...plate, a_e: 0.0270423 }, symbol: 'F_Rd', ...printed('100.00', 'kN') },
  { check: eyeTearOut, ...us, about: 'half-inch plate of A36, 2.25 in to the edge, nominal', origin: 'printed', source: design, memory: true, given: { ...d7, Omega_J: 1 }, symbol: 'F_Rd', ...printed('95.7', 'kip') },
  { check: eyeBearing, about: 'pin of 30 mm in 20 mm at 355 MPa', origin: 'by hand', source: `${en}Table 3.10`, given: plate, symbol: 'F_Rd', ...printed('319.5', 'kN') },
  { check: eyeFoot, about: 'foot 20 × 150 mm under 60 kN, 3 kN along and 1 kN across at 100 mm: 34 and 2 MPa', origin: 'by hand', source: 'beam tables and von Mises', given: { F_z: 60e3, F_l: 3e3, F_q: 1e3, t_e: 0.02, h_e: 0.1, l_e: 0.15 }, symbol: 'sigma_v', ...printed('34.18', 'MPa') },
  { check: eyeWeld, about: '150 kN off and 100 kN along, two runs of 4 × 200 mm, S275: equivalent stress', origin: 'by hand', source: `${en}4.5.3.2`, given: weld, symbol: 'sigma_v', ...printed('171.16', 'MPa') },
  { check: eyeWeld, about: 'the same, against 430/(0.85 · 1.25) MPa', origin: 'by hand', source: `${en}4.5.3.2`, given: weld, symbol: 'u', ...printed('0.42293') },
  { check: eyeCheekWeld, about: '300 kN, eye of 20 mm with cheeks of 10 mm: 75 kN on half a ring of 100 mm', origin: 'by hand', source: 'statics, shared by thickness', given: { F: 300e3, t_e: 0.02, t_c: 0.01, D_c: 0.1 }, symbol: 'f_c', ...printed('477.46', 'N/mm') },
  { check: eyeTubeWall, about: 'plate 100×10 along a tube 150×150×8 in S355, without the factor 1/(1 − t/b)', origin: 'by hand', source: `${en}Table 7.13`, memory: true, given: { M_0: 0, W_0: 1, f_y0: 355e6, b_0: 0.15, t_0: 0.008, l_e: 0.1, t_e: 0.01, gamma_M5: 1 }, symbol: 'N_Rd', ...printed('118.09', 'kN') },
  { check: eyeWeldUltimate, about: 'pull along a foot of 200 mm at its length above it, rise for direction counted: 0.957 of 2.784 (k = 0, a = 1; φ = 0.75)', origin: 'printed', source: 'AISC Manual (metric, LRFD), Table 8-38', given: { ...weld, F_z: 0, h_e: 0.2, k_theta: 0.5 }, symbol: 'l_C', ...printed('68.8', 'mm') },
  { check: eyeFootPlate, about: 'flange of 20.5 mm, S275, a pair of M24 8.8, m = 33.4 mm: mode 1', origin: 'by hand', source: `${en}Table 6.2, sizes as in SCI P398, worked example`, memory: true, given: stub, symbol: 'F_1', ...printed('700', 'kN') },
  { check: eyeFootPlate, about: 'the same, mode 2', origin: 'by hand', source: `${en}Table 6.2, sizes as in SCI P398, worked example`, memory: true, given: stub, symbol: 'F_2', ...printed('398', 'kN') },
  { check: eyeFootPlate, about: 'pair by itself at the end, m = 33.4 mm, e = 79.4 mm, e_1 far: twice 4 m + 1.25 e', origin: 'by hand', source: `${en}Table 6.4`, given: { m: 0.0334, e: 0.0794, e_1: 1, n_p: 2 }, symbol: 'l_nc_1', ...printed('465.7', 'mm') },
  { check: eyeFootBolts, about: '200 kN on four bolts, m = 35 mm, n = 40 mm: 50 kN and 7/16 of it by prying', origin: 'by hand', source: 'equilibrium of a flange bent both ways', given: foot, symbol: 'B', ...printed('71.88', 'kN') },
  { check: eyeFootBolts, about: 'M16 8.8 on the thread', origin: 'by hand', source: `${en}Table 3.4`, given: foot, symbol: 'F_v_Rd', ...printed('60.29', 'kN') },
  { check: eyeFootWall, about: 'wall of 8 mm, S355: π f_y t²', origin: 'by hand', source: 'Johansen, Yield-line Theory, fan round a point', memory: true, given: { f_y0: 355e6, t_0: 0.008, gamma_M0: 1 }, symbol: 'F_w_Rd', ...printed('71.38', 'kN') },
]; // prettier-ignore
