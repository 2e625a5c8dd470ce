import { weldAluminium } from '../../checks/weld-aluminium.ts';
import { weldCorner } from '../../checks/weld-corner.ts';
import { weldDirectional } from '../../checks/weld-directional.ts';
import { weldEdge } from '../../checks/weld-edge.ts';
import { weldEndReturn } from '../../checks/weld-end-return.ts';
import { weldFlare } from '../../checks/weld-flare.ts';
import { weldGroupAcross } from '../../checks/weld-group-across.ts';
import { weldGroupInPlane } from '../../checks/weld-group-in-plane.ts';
import { weldGroupUltimate } from '../../checks/weld-group-ultimate.ts';
import { weldIntermittent } from '../../checks/weld-intermittent.ts';
import { weldLength } from '../../checks/weld-length.ts';
import { weldPlug } from '../../checks/weld-plug.ts';
import { weldPlugPitch } from '../../checks/weld-plug-pitch.ts';
import { weldPlugSize } from '../../checks/weld-plug-size.ts';
import { weldSize } from '../../checks/weld-size.ts';
import { weldThroat } from '../../checks/weld-throat.ts';
import { printed } from './printed.ts';
import type { PublishedValue } from './published-value.ts';

const en = 'EN 1993-1-8:2005, ';
const us = { safety: 'allowable stress' } as const;
/** 150 kN on two runs of 200 mm, a = 4 mm, S275. */
const pull = { a_w: 0.004, f_z: 375e3, f_h: 0, m_r: 0, f_u: 430e6, beta_w: 0.85, gamma_M2: 1.25 };

/** 10 kN at 500 mm beside one run of 1 m: what is left of two. */
const line = { a_p: 1, b_p: 1, l_x: 1, l_y: 0, n_x: 1, n_y: 0, r_x: 1, r_y: 0 };
/** Square of 1 m, continuous: with one side lost 3 m, its centroid 1/6 m off the middle, I = 1/3 m³ about the line through it. */
const square = { ...line, l_y: 1, n_y: 1, r_y: 1 };

/** Held by two sides 0.5 m apart, no pull in the plane. */
const strip = { h_x: 1, h_y: 0, a: 0.5, b: 1, p: 1e4, k_r: 1, N_pull: 0 };

export const weldValues: readonly PublishedValue[] = [
  { check: weldDirectional, about: '150 kN on two runs of 4 × 200 mm, S275: equivalent stress', origin: 'by hand', source: `${en}4.5.3.2`, given: pull, symbol: 'sigma_v', ...printed('132.58', 'MPa') },
  { check: weldDirectional, about: 'the same, against 430/(0.85 · 1.25) MPa', origin: 'by hand', source: `${en}4.5.3.2`, given: pull, symbol: 'u', ...printed('0.32760') },
  { check: weldThroat, about: 'a = 5 mm, S355 at 470 MPa', origin: 'by hand', source: `${en}4.5.3.3`, given: { a_w: 0.005, f_u: 470e6, beta_w: 0.9, gamma_M2: 1.25 }, symbol: 'f_Rd', ...printed('1206.02', 'N/mm') },
  { check: weldSize, ...us, about: 'parts of 10 and 12 mm: leg of 5 mm, its throat', origin: 'by hand', source: 'AISC 360, Table J2.4', given: { t_p: 0.01, t_w: 0.012, t_6: 0.006, t_13: 0.013, t_19: 0.019, z_3: 0.003, z_5: 0.005, z_6: 0.006, z_8: 0.008 }, symbol: 'a_min', ...printed('3.54', 'mm') },
  { check: weldEdge, ...us, about: 'along an edge of 10 mm: 2 mm less', origin: 'by hand', source: 'AISC 360, J2.2b', given: { t_p: 0.01, t_6: 0.006, t_2: 0.002 }, symbol: 'z_max', ...printed('8.0', 'mm') },
  { check: weldLength, about: 'a = 6 mm: six throats, more than 30 mm', origin: 'by hand', source: `${en}4.5.1`, given: { a_0: 0.006, l_30: 0.03, k_l: 6 }, symbol: 'l_min', ...printed('36.0', 'mm') },
  { check: weldLength, about: 'a = 6 mm, 100 mm long: a throat off each end', origin: 'by hand', source: `${en}4.5.1`, given: { a_0: 0.006, l_0: 0.1 }, symbol: 'l_eff', ...printed('88.0', 'mm') },
  { check: weldIntermittent, about: 'gap beside 8 mm, panel of 1 m: 12 t', origin: 'by hand', source: `${en}4.3.2.2`, memory: true, given: { t_1: 0.008, b_p: 1, g_200: 0.2 }, symbol: 'g_max', ...printed('96.0', 'mm') },
  { check: weldIntermittent, about: 'gap beside 20 mm, panel of 600 mm: a quarter of it', origin: 'by hand', source: `${en}4.3.2.2`, memory: true, given: { t_1: 0.02, b_p: 0.6, g_200: 0.2 }, symbol: 'g_max', ...printed('150.0', 'mm') },
  { check: weldEndReturn, about: 'a = 5 mm: two legs, 2 √2 a', origin: 'by hand', source: 'AISC 360, J2.2b', memory: true, given: { a_0: 0.005 }, symbol: 'r_min', ...printed('14.14', 'mm') },
  { check: weldPlug, about: 'plug of 18 mm in S355 at 470 MPa', origin: 'by hand', source: `${en}4.5.3.3`, memory: true, given: { d_p: 0.018, f_u: 470e6, beta_w: 0.9, gamma_M2: 1.25 }, symbol: 'F_w_Rd', ...printed('61.38', 'kN') },
  { check: weldPlug, ...us, about: 'plug of 18 mm, electrode of 482 MPa', origin: 'by hand', source: 'AISC 360, Table J2.5', memory: true, given: { d_p: 0.018, F_EXX: 482e6, Omega_J: 2 }, symbol: 'F_w_Rd', ...printed('36.80', 'kN') },
  { check: weldPlugSize, about: 'in 8 mm: 8 mm more than the thickness', origin: 'by hand', source: `${en}4.3.5(3)`, memory: true, given: { t_0: 0.008, c_8: 0.008 }, symbol: 'd_min', ...printed('16.0', 'mm') },
  { check: weldPlugPitch, about: 'plugs of 18 mm: four diameters', origin: 'by hand', source: 'AISC 360, J2.3b', memory: true, given: { d_p: 0.018 }, symbol: 'p_min', ...printed('72.0', 'mm') },
  { check: weldGroupInPlane, about: '10 kN at 500 mm beside a run of 1 m: 10 N/mm and 3 times that for its moment', origin: 'by hand', source: 'Shigley, Mechanical Engineering Design, welded joints in torsion', memory: true, given: { ...line, W: 1e4 }, symbol: 'f_v', ...printed('31.62', 'N/mm') },
  { check: weldGroupUltimate, about: 'the same, force along the run, half its length off, rise for direction counted: 1.72 of 2.784 (k = 0, a = 0.5; φ = 0.75)', origin: 'printed', source: 'AISC Manual (metric, LRFD), Table 8-38', given: { ...line, k_theta: 0.5 }, symbol: 'l_C', ...printed('618', 'mm') },
  { check: weldGroupAcross, about: '10 kN in the middle of a square of 1 m with one side lost: W/L + W e c/I = 3.333 + 10/6 · (2/3) · 3 N/mm', origin: 'by hand', source: 'Shigley, Mechanical Engineering Design, welded joints in bending', memory: true, given: { ...square, W: 1e4 }, symbol: 'f_z', ...printed('6.67', 'N/mm') },
  { check: weldAluminium, about: '100 N/mm off and 50 N/mm across on a throat of 5 mm, no moment: equivalent stress √(21.21² + 3 · 7.07²) over 240/1.25 MPa', origin: 'by hand', source: 'EN 1999-1-1, 8.6.3.3', memory: true, given: { a_w: 0.005, f_z: 100e3, f_h: 50e3, m_r: 0, f_w_k: 240e6, gamma_Mw: 1.25 }, symbol: 'u_w', ...printed('0.1276') },
  { check: weldAluminium, ...us, about: 'throat of 5 mm, filler 5356 of 115 MPa: over 1.95', origin: 'by hand', source: 'Aluminum Design Manual, J.2.2', memory: true, given: { a_w: 0.005, F_suf: 115e6, Omega_w: 1.95 }, symbol: 'f_fill', ...printed('294.87', 'N/mm') },
  { check: weldFlare, about: 'corner of 16 mm, edge 8 mm short of the flat: gap 16 (1 − cos 30°)', origin: 'by hand', source: 'circle and its chord', given: { R: 0.016, s: 0.008, a_0: 0.005, a_t: 0, k_f: 0.3125 }, symbol: 'g_e', ...printed('2.144', 'mm') },
  { check: weldFlare, about: 'the same, throat as made 5 mm: 5/16 R or the fillet less the gap over √2', origin: 'by hand', source: 'AISC 360, Table J2.2; AWS D1.1', memory: true, given: { R: 0.016, s: 0.008, a_0: 0.005, a_t: 0, k_f: 0.3125 }, symbol: 'a_e', ...printed('3.484', 'mm') },
  { check: weldCorner, about: 'strip of 0.5 m under 10 kPa on a throat of 4 mm: p L/2 + 6 (p L/2 · a/√8 + p L²/12)/a', origin: 'by hand', source: 'beam tables; elastic section of the throat', given: { ...strip, a_w: 0.004 }, symbol: 'f_w', ...printed('320.30', 'N/mm') },
  { check: weldCorner, about: 'throat of 4 mm, S355 at 470 MPa', origin: 'by hand', source: `${en}4.5.3.3`, given: { ...strip, a_w: 0.004, f_u: 470e6, beta_w: 0.9, gamma_M2: 1.25 }, symbol: 'f_Rd', ...printed('964.82', 'N/mm') },
]; // prettier-ignore
