import { boltBearingPanel } from '../../checks/bolt-bearing-panel.ts';
import { boltBearingTube } from '../../checks/bolt-bearing-tube.ts';
import { boltBlockTear } from '../../checks/bolt-block-tear.ts';
import { boltClampSlip } from '../../checks/bolt-clamp-slip.ts';
import { boltCombined } from '../../checks/bolt-combined.ts';
import { boltPullThrough } from '../../checks/bolt-pull-through.ts';
import { boltSeparation } from '../../checks/bolt-separation.ts';
import { boltShear } from '../../checks/bolt-shear.ts';
import { boltSlip } from '../../checks/bolt-slip.ts';
import { boltTearOut } from '../../checks/bolt-tear-out.ts';
import { boltTension } from '../../checks/bolt-tension.ts';
import { boltWasherPressure } from '../../checks/bolt-washer-pressure.ts';
import { printed } from './printed.ts';
import type { PublishedValue } from './published-value.ts';

const en = 'EN 1993-1-8:2005, ';
const guide = 'A Beginner’s Guide to the Steel Construction Manual (2007), problem 4.1';
const shigley = 'Shigley, Mechanical Engineering Design, ';
const [kip, ksi, inch] = [4448.2216152605, 6894757.293168, 0.0254];
/** M16: tensile stress area 157 mm², shank π 16²/4 mm²; class 8.8. */
const m16 = { A_s: 157e-6, A_b: 201.0619e-6 };
const steel = { f_ub: 800e6, gamma_M2: 1.25 };
const far = 1e6;
const bearing = { d: 0.016, d_0: 0.018, e_1: 0.03, e_2: 0.025, p_1: far, p_2: far, t: 0.008, f_yp: 355e6, f_u: 470e6, stainless: 0, k_h: 1, ...steel }; // prettier-ignore
const wall = { d: 0.016, d_0: 0.018, e_w: 0.03, p_1: far, p_2: 0.05, t_w: 0.005, f_yw: 355e6, f_uw: 470e6, stainless_w: 0, k_h: 1, ...steel }; // prettier-ignore
const us = { safety: 'allowable stress' } as const;

export const boltValues: readonly PublishedValue[] = [
  { check: boltTension, about: 'M16, class 8.8', origin: 'by hand', source: `${en}Table 3.4`, given: { ...m16, ...steel, k_2: 0.9 }, symbol: 'F_t_Rd', ...printed('90.432', 'kN') },
  { check: boltTension, about: 'M16, class 8.8, countersunk', origin: 'by hand', source: `${en}Table 3.4`, given: { ...m16, ...steel, k_2: 0.63 }, symbol: 'F_t_Rd', ...printed('63.302', 'kN') },
  { check: boltTension, ...us, about: 'M16 of group 120', origin: 'by hand', source: 'AISC 360, Table J3.2', given: { ...m16, F_nt: 620e6, Omega_J: 2 }, symbol: 'F_t_Rd', ...printed('62.329', 'kN') },
  { check: boltShear, about: 'M16, class 8.8, threads in the plane', origin: 'by hand', source: `${en}Table 3.4`, given: { ...m16, ...steel, threads: 1, alpha_v: 0.6 }, symbol: 'F_v_Rd', ...printed('60.288', 'kN') },
  { check: boltShear, about: 'M16, class 8.8, shank in the plane', origin: 'by hand', source: `${en}Table 3.4`, given: { ...m16, ...steel, threads: 0, alpha_v: 0.6 }, symbol: 'F_v_Rd', ...printed('77.208', 'kN') },
  { check: boltShear, ...us, about: '3/4 in A325-X, 60 ksi, nominal', origin: 'printed', source: guide, given: { A_b: (Math.PI / 4) * (0.75 * inch) ** 2, F_nv: 60 * ksi, Omega_J: 1 }, symbol: 'F_v_Rd', ...printed('26.5', 'kip') },
  { check: boltCombined, about: 'M16, class 8.8, 25 kN across and 50 kN along', origin: 'by hand', source: `${en}Table 3.4`, given: { ...m16, ...steel, threads: 1, alpha_v: 0.6, k_2: 0.9, F_v: 25e3, F_t: 50e3 }, symbol: 'u', ...printed('0.80961') },
  { check: boltBearingPanel, about: 'M16 in 8 mm of S355, end bolt', origin: 'by hand', source: `${en}Table 3.4`, given: bearing, symbol: 'F_b_Rd', ...printed('58.526', 'kN') },
  { check: boltBearingPanel, about: 'M16 in 8 mm of S355, inner bolt, pitch 50 mm', origin: 'by hand', source: `${en}Table 3.4`, given: { ...bearing, e_1: far, p_1: 0.05 }, symbol: 'F_b_Rd', ...printed('71.207', 'kN') },
  { check: boltBearingTube, about: 'M16 in a wall of 5 mm, S355, 30 mm to its end', origin: 'by hand', source: `${en}Table 3.4`, given: wall, symbol: 'F_b_Rd', ...printed('36.579', 'kN') },
  { check: boltTearOut, about: 'planes of 848 mm² in EN AW-5083 H116 of 215 MPa, γ_M1 1.1', origin: 'by hand', source: 'EN 1999-1-1:2007, 8.5.2.2', memory: true, given: { e_1: 0.062, d_0: 0.018, t: 0.008, f_yp: 215e6, gamma_M0: 1.1 }, symbol: 'V_eff_Rd', ...printed('95.69', 'kN') },
  { check: boltTearOut, about: 'planes of 848 mm² in S355', origin: 'by hand', source: `${en}3.10.2`, given: { e_1: 0.062, d_0: 0.018, t: 0.008, f_yp: 355e6, gamma_M0: 1 }, symbol: 'V_eff_Rd', ...printed('173.81', 'kN') },
  { check: boltBlockTear, about: 'two bolts, 256 mm² in tension and 848 mm² in shear, S355: half of 270.06 kN', origin: 'by hand', source: `${en}3.10.2`, given: { n_x: 2, s_x: 0.05, d_0: 0.018, e_1: 0.062, t: 0.008, f_yp: 355e6, f_u: 470e6, gamma_M0: 1, gamma_M2: 1.25 }, symbol: 'B_x', ...printed('135.03', 'kN') },
  { check: boltPullThrough, about: 'M16 head, 24 and 26.75 mm, through 5 mm at 470 MPa', origin: 'by hand', source: `${en}Table 3.4`, given: { d_m: 0.025375, t: 0.005, f_u: 470e6, gamma_M2: 1.25 }, symbol: 'B_p_Rd', ...printed('89.92', 'kN') },
  { check: boltSlip, about: 'M16, class 8.8, slip factor 0.3, under 20 kN of tension', origin: 'by hand', source: `${en}3.9`, given: { A_s: 157e-6, f_ub: 800e6, mu: 0.3, k_s: 1, gamma_M3: 1.25, F_t: 20e3 }, symbol: 'F_s_Rd', ...printed('17.261', 'kN') },
  { check: boltSlip, ...us, about: '3/4 in, 28 kip of preload, slip factor 0.35, nominal', origin: 'printed', source: guide, given: { F_pC: 28 * kip, mu: 0.35, k_s: 1, Omega_slip: 1, F_t: 0 }, symbol: 'F_s_Rd', ...printed('11.1', 'kip') },
  { check: boltClampSlip, about: 'M16 at 218.5 N·m, k = 0.2, friction 0.3, under 20 kN of tension', origin: 'by hand', source: `${shigley}T = k d F`, memory: true, given: { T_t: 218.5, k_high: 0.2, c_c: 0, d: 0.016, mu_c: 0.3, F_t: 20e3, gamma_M3: 1.25 }, symbol: 'F_s_Rd', ...printed('11.5875', 'kN') },
  { check: boltSeparation, about: 'M16 through 18 and 8 mm of steel at 207 GPa: stiffness of the frusta at 30°', origin: 'by hand', source: `${shigley}member stiffness`, memory: true, given: { t: 0.018, E: 207e9, t_w: 0.008, E_w: 207e9, d_w: 0.024, d: 0.016 }, symbol: 'k_m', ...printed('4070.7', 'kN/mm') },
  { check: boltSeparation, about: 'the same at 218.5 N·m, k = 0.2, 11 µm bedded in', origin: 'by hand', source: `${shigley}separation, C = k_b/(k_b + k_m)`, memory: true, given: { T_t: 218.5, k_high: 0.2, c_c: 0, A_s: 157e-6, t: 0.018, E: 207e9, t_w: 0.008, E_w: 207e9, d_w: 0.024, d: 0.016, E_b: 207e9, g_b: 0.026, f_Z: 11e-6, gamma_M3: 1.25 }, symbol: 'F_o', ...printed('60.40', 'kN') },
  { check: boltWasherPressure, about: '60 N·m on M12, k = 0.1: 50 kN on a washer of 24 mm over a hole of 14 mm', origin: 'by hand', source: 'Shigley, Mechanical Engineering Design, T = k d F; area of a ring', memory: true, given: { T_t: 60, k_low: 0.1, d: 0.012, d_w: 0.024, d_0: 0.014, F_t: 0 }, symbol: 'p_w', ...printed('167.5', 'MPa') },
]; // prettier-ignore
