import { boltAccess } from '../../checks/bolt-access.ts';
import { boltAnchorage } from '../../checks/bolt-anchorage.ts';
import { boltEdgeDistance } from '../../checks/bolt-edge-distance.ts';
import { boltEdgeDistanceLargest } from '../../checks/bolt-edge-distance-largest.ts';
import { boltGroupInPlane } from '../../checks/bolt-group-in-plane.ts';
import { boltGroupUltimate } from '../../checks/bolt-group-ultimate.ts';
import { boltPadWeld } from '../../checks/bolt-pad-weld.ts';
import { boltPitch } from '../../checks/bolt-pitch.ts';
import { boltPitchLargest } from '../../checks/bolt-pitch-largest.ts';
import { boltSleeve } from '../../checks/bolt-sleeve.ts';
import { boltStud } from '../../checks/bolt-stud.ts';
import { boltThreadEngagement } from '../../checks/bolt-thread-engagement.ts';
import { boltWallPull } from '../../checks/bolt-wall-pull.ts';
import { byPlaces } from '../../checks/by-places.ts';
import { printed } from './printed.ts';
import type { PublishedValue } from './published-value.ts';

const en = 'EN 1993-1-8:2005, ';
const stud = { f_us: 400e6, A_s: 84.3e-6, gamma_M2: 1.25 };
const thread = { d: 0.012, P: 0.00175, L_e: 0.012, f_ub: 800e6, f_ud: 470e6, gamma_M2: 1.25 };

export const fixingValues: readonly PublishedValue[] = [
  { check: boltWallPull, about: 'wall of 5 mm, S355, pulled at a point: π f_y t²', origin: 'by hand', source: 'Johansen, Yield-line Theory, fan round a point', memory: true, given: { f_yw: 355e6, t_w: 0.005, gamma_M0: 1 }, symbol: 'F_w_Rd', ...printed('27.88', 'kN') },
  { check: boltStud, about: 'M12 stud of 400 MPa, thread', origin: 'by hand', source: `${en}Table 3.4`, given: stud, symbol: 'F_st', ...printed('24.28', 'kN') },
  { check: boltStud, about: 'the same on a wall of 2 mm at 470 MPa', origin: 'by hand', source: `${en}Table 3.4, punching`, given: { ...stud, d: 0.012, t_w: 0.002, f_uw: 470e6 }, symbol: 'F_s_Rd', ...printed('17.01', 'kN') },
  { check: boltThreadEngagement, about: 'M12 × 1.75, 12 mm engaged, area of the bolt’s thread', origin: 'by hand', source: 'FED-STD-H28/2, basic sizes', memory: true, given: thread, symbol: 'A_sb', ...printed('285.73', 'mm²') },
  { check: boltThreadEngagement, about: 'the same in a part of 470 MPa: 0.6 f_u A', origin: 'by hand', source: `FED-STD-H28/2 and ${en}Table 3.4`, memory: true, given: thread, symbol: 'F_th_Rd', ...printed('89.30', 'kN') },
  { check: boltPadWeld, about: 'two runs of 4 × 36 mm, 470 MPa', origin: 'by hand', source: `${en}4.5.3.3`, given: { a_d: 0.004, b_d: 0.036, f_uj: 470e6, beta_w: 0.9, gamma_M2: 1.25 }, symbol: 'F_w_Rd', ...printed('69.47', 'kN') },
  { check: boltSleeve, about: 'reduction at slenderness 1, curve c', origin: 'printed', source: 'tables of EN 1993-1-1, Figure 6.4', memory: true, given: { lambda: 1 }, symbol: 'chi', ...printed('0.5399') },
  { check: boltSleeve, about: '60 N·m on M12, k = 0.1: T = k d F', origin: 'by hand', source: 'Shigley, Mechanical Engineering Design, bolt torque', memory: true, given: { T_t: 60, k_low: 0.1, d: 0.012 }, symbol: 'F_hi', ...printed('50.0', 'kN') },
  { check: boltEdgeDistance, about: 'hole of 18 mm: 1.2 d_0', origin: 'by hand', source: `${en}Table 3.3`, given: { k_e: 1.2, d_0: 0.018 }, symbol: 'e_req', ...printed('21.6', 'mm') },
  { check: boltEdgeDistanceLargest, about: '8 mm on a wall of 10 mm: 4 t + 40 mm', origin: 'by hand', source: `${en}Table 3.3`, given: { t: 0.008, t_w: 0.01, c_e: 0.04 }, symbol: 'e_max', ...printed('72.0', 'mm') },
  { check: boltEdgeDistanceLargest, safety: 'allowable stress', about: '8 mm on a wall of 10 mm: 12 t', origin: 'by hand', source: 'AISC 360, J3.5', given: { t: 0.008, t_w: 0.01, e_lim: 0.15 }, symbol: 'e_max', ...printed('96.0', 'mm') },
  { check: boltPitch, about: 'hole of 18 mm: 2.2 d_0', origin: 'by hand', source: `${en}Table 3.3`, given: { d_0: 0.018 }, symbol: 'p_req', ...printed('39.6', 'mm') },
  { check: boltPitch, safety: 'allowable stress', about: 'M16: 2 2/3 d', origin: 'by hand', source: 'AISC 360, J3.3', given: { d: 0.016 }, symbol: 'p_req', ...printed('42.7', 'mm') },
  { check: boltPitchLargest, about: '8 mm on a wall of 10 mm: 14 t', origin: 'by hand', source: `${en}Table 3.3`, given: { t: 0.008, t_w: 0.01, p_lim: 0.2 }, symbol: 'p_max', ...printed('112.0', 'mm') },
  { check: boltGroupInPlane, about: '10 kN in a square of 400 mm, three bolts a side, one side lost: five bolts, e = 120 mm, Σr² = 0.208 m²', origin: 'by hand', source: 'Shigley, Mechanical Engineering Design, shear joints with eccentric loading', memory: true, given: { a_b: 0.4, b_b: 0.4, n_x: 3, n_y: 3, W: 1e4 }, symbol: 'F_v', ...printed('2.929', 'kN') },
  { check: byPlaces(boltGroupInPlane), about: '16 kN at 425 mm from the middle of four listed bolts, 150 × 120 mm: the worst bolt', origin: 'printed', source: 'Shigley, Mechanical Engineering Design, example of a bar on four bolts', memory: true, given: { n_l: 4, I_p: 4 * (0.075 ** 2 + 0.06 ** 2), e_W: 0.425, y_W: 0.075, x_W: 0.06, W: 16e3 }, symbol: 'F_v', ...printed('21.0', 'kN') },
  { check: boltGroupUltimate, about: 'one row of two bolts 3 in apart, 4 in from the load: coefficient C', origin: 'by hand', source: 'AISC Manual, Part 7, R = R_ult (1 − e^(−10 Δ))^0.55', memory: true, given: { a_b: 8 * 0.0254, b_b: 3 * 0.0254, n_x: 2, n_y: 2 }, symbol: 'C', ...printed('0.689') },
  { check: boltSleeve, about: 'sleeve of 24 × 18 mm: π/4 (24² − 18²)', origin: 'by hand', source: 'area of a ring', given: { D_c: 0.024, d_c: 0.018 }, symbol: 'A_c', ...printed('197.92', 'mm²') },
  { check: boltEdgeDistance, about: 'slot 18 mm wide: 1.5 d_0', origin: 'by hand', source: `${en}Table 3.3`, given: { k_e: 1.5, d_0: 0.018 }, symbol: 'e_req', ...printed('27.0', 'mm') },
  { check: boltAccess, about: 'M16 of 24 mm across flats: socket of 36.2 mm, half of it and 1 mm', origin: 'by hand', source: 'common practice, no source', given: { s_h: 0.024, c_5: 0.005, c_1: 0.001 }, symbol: 'r_s', ...printed('19.1', 'mm') },
  { check: boltAnchorage, about: '6 of 15 kN in tension and 4 of 12 kN in shear, each over 1.25: 0.5 and 0.4167 on a straight line', origin: 'by hand', source: 'common practice, no source', given: { F_t: 6e3, F_v: 4e3, F_tk: 15e3, F_vk: 12e3, gamma_M2: 1.25 }, symbol: 'u', ...printed('0.9167') },
]; // prettier-ignore
