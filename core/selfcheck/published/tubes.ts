import { tubeAxialBending } from '../../checks/tube-axial-bending.ts';
import { tubeBending } from '../../checks/tube-bending.ts';
import { tubeDeflection } from '../../checks/tube-deflection.ts';
import { tubeShear } from '../../checks/tube-shear.ts';
import { tubeTorsion } from '../../checks/tube-torsion.ts';
import { tubeWallBent } from '../../checks/tube-wall-bent.ts';
import { tubeWallCollapse } from '../../checks/tube-wall-collapse.ts';
import { tubeWallLine } from '../../checks/tube-wall-line.ts';
import { tubeWallPressure } from '../../checks/tube-wall-pressure.ts';
import { printed } from './printed.ts';
import type { PublishedValue } from './published-value.ts';

const en = 'EN 1993-1-1:2005, ';
/** SHS 100×100×5, hot finished, S355: section properties by EN 10210-2. */
const shs = { round: 0, H: 0.1, B: 0.1, t: 0.005, A: 18.732e-4, I_min: 279.43e-8, W_el: 55.886e-6, W_pl: 66.358e-6, W_t: 81.83e-6, A_v: 936.6e-6, n_h: 0, d_h: 0 }; // prettier-ignore
const s355 = { E: 210e9, nu: 0.3, f_y: 355e6, f_u: 470e6, f_235: 235e6, gamma_M0: 1, gamma_M1: 1, gamma_M2: 1.25 };
const column = { ...shs, ...s355, L_cr: 4, alpha: 0.21, C_m: 1, N: 100e3, M: 8e3 };
/** SHS 200×200×8, sealed, 50 m under the sea: 0.50259 MPa. */
const sealed = { round: 0, H: 0.2, B: 0.2, t: 0.008, z: 50, rho: 1025, g: 9.80665, gamma_F: 1, ...s355 };
const pipe = { round: 1, H: 0.1683, B: 0.1683, t: 0.0063, ...s355 };

export const tubeValues: readonly PublishedValue[] = [
  { check: tubeBending, about: 'SHS 100×100×5 in S355: W_pl f_y', origin: 'by hand', source: `${en}6.2.5`, memory: true, given: { ...shs, ...s355, V: 0 }, symbol: 'M_Rd', ...printed('23.557', 'kN·m') },
  { check: tubeShear, about: 'SHS 100×100×5 in S355', origin: 'by hand', source: `${en}6.2.6`, memory: true, given: { ...shs, ...s355, V: 1 }, symbol: 'V_Rd', ...printed('191.96', 'kN') },
  { check: tubeTorsion, about: 'SHS 100×100×5, 5 kN·m of torsion', origin: 'by hand', source: 'EN 10210-2, torsional modulus 81.83 cm³', memory: true, given: { ...shs, T: 5e3 }, symbol: 'tau_T', ...printed('61.10', 'MPa') },
  { check: tubeTorsion, about: 'the same with 8 kN·m of bending: √(0.4032² + 0.2981²)', origin: 'by hand', source: `${en}6.2.1(5)`, memory: true, given: { ...shs, ...s355, T: 5e3, M: 8e3, N: 0, V: 0 }, symbol: 'u', ...printed('0.50147') },
  { check: tubeAxialBending, about: 'reduction at slenderness 1, curve a', origin: 'printed', source: 'tables of EN 1993-1-1, Figure 6.4', memory: true, given: { alpha: 0.21, lambda_bar: 1 }, symbol: 'chi', ...printed('0.6656') },
  { check: tubeAxialBending, about: 'SHS 100×100×5, 4 m, S355: slenderness', origin: 'by hand', source: `${en}6.3.1`, memory: true, given: column, symbol: 'lambda_bar', ...printed('1.35541') },
  { check: tubeAxialBending, about: 'the same under 100 kN and 8 kN·m along it: 0.34147 + 1.27317 · 8/23.557', origin: 'by hand', source: `${en}6.3.3, method 2`, memory: true, given: column, symbol: 'u_b', ...printed('0.77384') },
  { check: tubeWallLine, about: '10 N/mm on a wall of 90 mm between walls, 30 mm from one: 200 N·mm/mm on 5 mm', origin: 'by hand', source: 'beam tables: P a b/l', memory: true, given: { q: 1e4, B: 0.1, t: 0.005, l_1: 0.035, n_l: 1 }, symbol: 'sigma', ...printed('48.00', 'MPa') },
  { check: tubeWallPressure, about: 'SHS 200×200×8 sealed at 50 m: p b²/12 at the corners, p B/2t along the wall', origin: 'by hand', source: 'beam tables: closed frame under even pressure', memory: true, given: sealed, symbol: 'sigma', ...printed('139.22', 'MPa') },
  { check: tubeWallBent, about: 'the same, bent to 100 MPa: √(100² + 100 · 139.22 + 139.22²)', origin: 'by hand', source: 'von Mises', given: { sigma: 139.22e6, sigma_x: 100e6 }, symbol: 'sigma_v', ...printed('208.10', 'MPa') },
  { check: tubeWallCollapse, about: 'CHS 168.3×6.3: long tube, 2E/(1 − ν²) (t/d)³', origin: 'by hand', source: 'Timoshenko & Gere, Theory of Elastic Stability, 2nd ed.', memory: true, given: pipe, symbol: 'p_e', ...printed('27.14', 'MPa') },
  { check: tubeWallCollapse, about: 'the same in S355: 26.578 and 27.145 MPa by Rankine’s sum', origin: 'by hand', source: 'Rankine and Merchant', memory: true, given: pipe, symbol: 'p_Rd', ...printed('13.43', 'MPa') },
  { check: tubeDeflection, about: '5 m: a two-hundredth of it', origin: 'by hand', source: 'common practice, no source', given: { L: 5, n_L: 200 }, symbol: 'w_lim', ...printed('25.0', 'mm') },
]; // prettier-ignore
