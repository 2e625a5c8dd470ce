import { boltBearingTube } from '../../checks/bolt-bearing-tube.ts';
import { boltBlockTear } from '../../checks/bolt-block-tear.ts';
import { boltPadWeld } from '../../checks/bolt-pad-weld.ts';
import { boltSleeve } from '../../checks/bolt-sleeve.ts';
import { boltTearOut } from '../../checks/bolt-tear-out.ts';
import { eyeBearing } from '../../checks/eye-bearing.ts';
import { panelBuckling } from '../../checks/panel-buckling.ts';
import { tubeAxialBending } from '../../checks/tube-axial-bending.ts';
import { tubeBending } from '../../checks/tube-bending.ts';
import { tubeTorsion } from '../../checks/tube-torsion.ts';
import { weldDirectional } from '../../checks/weld-directional.ts';
import { weldSize } from '../../checks/weld-size.ts';
import { weldThroat } from '../../checks/weld-throat.ts';
import { printed } from './printed.ts';
import type { PublishedValue } from './published-value.ts';

const us = { safety: 'allowable stress' } as const;
/** F_y = 50 ksi, F_u = 65 ksi, E = 29 000 ksi. */
const steel = { f_y: 344.7379e6, f_u: 448.1592e6, E: 199.948e9, Omega_b: 1.67 };
/** SHS 80 × 80 × 5: 14.7 cm², 137 cm⁴, 34.2 and 41.1 cm³ (EN 10210-2); 3.0528 m are a hundred radii of gyration. */
const box = { round: 0, H: 0.08, B: 0.08, t: 0.005, n_h: 0, d_h: 0, W_el: 34.2e-6, W_pl: 41.1e-6 };
/** A leg of 1/16 in of filler of 70 ksi on plates that do not decide. */
const sixteenth = { a_w: (0.0254 * Math.SQRT1_2) / 16, F_EXX: 482.633e6, f_u: 470e6, f_yb: 355e6, t_b: 1, Omega_J: 2, Omega_v: 1.5 }; // prettier-ignore
const s355 = { f_yp: 355e6, f_u: 470e6, Omega_J: 2 };
const legs = { t_6: 0.006, t_13: 0.013, t_19: 0.019, z_3: 0.003, z_5: 0.005, z_6: 0.006, z_8: 0.008 };
const far = 1e6;

/** What a basis of allowable stress has otherwise than one of partial factors. */
export const allowableValues: readonly PublishedValue[] = [
  { check: panelBuckling, ...us, about: '50 ksi at slenderness 100: 14.4 ksi', origin: 'printed', source: 'AISC Manual, Table 4-22', memory: true, given: { f_y: 344.7379e6, Omega_b: 1.67, sigma_n: 100e6, alpha_n: 1.9734, t_n: 0.01, t: 0.01 }, symbol: 'sigma_Rd', ...printed('14.4', 'ksi') },
  { check: tubeAxialBending, ...us, about: '50 ksi at slenderness 100', origin: 'by hand', source: 'AISC 360, E3-2', given: { ...steel, A: 14.7e-4, I_min: 137e-8, L_cr: 3.0528 }, symbol: 'F_cr', ...printed('24.07', 'ksi') },
  { check: tubeAxialBending, ...us, about: 'half of the axial and 0.4 of the bending strength: 0.5 + 8/9 · 0.4', origin: 'by hand', source: 'AISC 360, H1-1a', memory: true, given: { r_e: 0, C_m: 1, r_c: 0.5, r_M: 0.4 }, symbol: 'u_b', ...printed('0.85556') },
  { check: tubeBending, ...us, about: 'SHS 80×80×5 of 50 ksi, plastic', origin: 'by hand', source: 'AISC 360, F7, with 41.1 cm³ of EN 10210-2', given: { ...box, ...steel }, symbol: 'M_Rd', ...printed('8.484', 'kN·m') },
  { check: tubeTorsion, ...us, about: 'bending 0.4, shear 0.2 and torsion 0.3: 0.4 + 0.5²', origin: 'by hand', source: 'AISC 360, H3-6, as printed in Brockenbrough & Merritt, Structural Steel Designer’s Handbook, 5.7.5', given: { r_s: 0.4, r_V: 0.2, r_T: 0.3 }, symbol: 'u', ...printed('0.6500') },
  { check: weldDirectional, ...us, about: 'leg of 1/16 in, 70 ksi, along its length', origin: 'printed', source: 'AISC Manual, Part 8', memory: true, given: { ...sixteenth, theta: 0 }, symbol: 'f_Rd', ...printed('0.928', 'kip/in') },
  { check: weldThroat, ...us, about: 'leg of 1/16 in, 70 ksi', origin: 'printed', source: 'AISC Manual, Part 8', memory: true, given: sixteenth, symbol: 'f_Rd', ...printed('0.928', 'kip/in') },
  { check: weldSize, ...us, about: 'parts of 16 and 20 mm: least leg', origin: 'printed', source: 'AISC 360, Table J2.4', given: { ...legs, t_p: 0.016, t_w: 0.02 }, symbol: 'z_min', ...printed('6', 'mm') },
  { check: boltBearingTube, ...us, about: 'M16 in a wall of 6.3 mm, S355, 30 mm to its end', origin: 'by hand', source: 'AISC 360, J3.10', memory: true, given: { d: 0.016, d_0: 0.018, e_w: 0.03, p_1: far, t_w: 0.0063, f_yw: 355e6, f_uw: 470e6, stainless_w: 0, Omega_J: 2 }, symbol: 'F_b_Rd', ...printed('37.309', 'kN') },
  { check: boltTearOut, ...us, about: 'hole of 18 mm 30 mm from the edge of 8 mm, S355', origin: 'by hand', source: 'AISC 360, J4.3, its planes of shear', given: { ...s355, d_0: 0.018, e_1: 0.03, t: 0.008 }, symbol: 'V_eff_Rd', ...printed('47.376', 'kN') },
  { check: boltBlockTear, ...us, about: 'two bolts, 256 mm² in tension and 848 of 992 mm² in shear, S355: half of it', origin: 'by hand', source: 'AISC 360, J4.3', given: { ...s355, s_x: 0.05, n_x: 2, d_0: 0.018, e_1: 0.062, t: 0.008 }, symbol: 'B_x', ...printed('82.904', 'kN') },
  { check: boltPadWeld, ...us, about: 'two fillets 5 mm thick and 40 mm long, 470 MPa', origin: 'by hand', source: 'AISC 360, J2.4', memory: true, given: { a_d: 0.005, b_d: 0.04, f_uj: 470e6, Omega_J: 2 }, symbol: 'F_w_Rd', ...printed('56.400', 'kN') },
  { check: boltSleeve, ...us, about: 'ring 26/18 mm, 300 mm long, S355', origin: 'by hand', source: 'AISC 360, E3', memory: true, given: { D_c: 0.026, d_c: 0.018, f_yw: 355e6, E_w: 210e9, l_c: 0.3, Omega_c: 1.67 }, symbol: 'F_c_Rd', ...printed('53.00', 'kN') },
  { check: eyeBearing, ...us, about: 'pin of 30 mm in 20 mm, S355', origin: 'by hand', source: 'AISC 360, J7', given: { t_e: 0.02, d: 0.03, f_y: 355e6, Omega_J: 2 }, symbol: 'F_Rd', ...printed('191.70', 'kN') },
]; // prettier-ignore
