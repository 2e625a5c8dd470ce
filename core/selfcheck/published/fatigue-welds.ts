import { fatigueCrossingRoot } from '../../checks/fatigue-crossing-root.ts';
import { fatigueCrossingToe } from '../../checks/fatigue-crossing-toe.ts';
import { fatigueEyeFoot } from '../../checks/fatigue-eye-foot.ts';
import { fatigueEyeOnTube } from '../../checks/fatigue-eye-on-tube.ts';
import { fatigueEyeRoot } from '../../checks/fatigue-eye-root.ts';
import { fatigueSealedWall } from '../../checks/fatigue-sealed-wall.ts';
import { fatigueWeldCorner } from '../../checks/fatigue-weld-corner.ts';
import { fatigueWeldEnd } from '../../checks/fatigue-weld-end.ts';
import { fatigueWeldIntermittent } from '../../checks/fatigue-weld-intermittent.ts';
import { fatigueWeldRoot } from '../../checks/fatigue-weld-root.ts';
import { fatigueWeldToe } from '../../checks/fatigue-weld-toe.ts';
import { category, freeToCorrode } from './fatigue-curve.ts';
import { printed } from './printed.ts';
import type { PublishedValue } from './published-value.ts';

const c203 = 'DNV-RP-C203 (2016), Table 2-4 (curve W3, log a = 10.493), and Miner';
const w3 = { ...freeToCorrode(10.493), z: 0 };
const tube = { W_el: 200e-6, A: 40e-4, M_up: 10e3, N_up: 20e3, M_dn: 5e3, N_dn: 10e3 };
const eye = { F_l_up: 0, F_l_dn: 0, F_q_up: 0, F_q_dn: 0, F_z_up: 60e3, F_z_dn: 30e3, t_e: 0.02, h_e: 0.1 };
/** Off the tube and across alike: square to the throat, no shear. */
const square = Math.SQRT2 * 50e3;
/** SHS 200×200×8, sealed, 50 m down. */
const sealed = { z: 50, rho: 1025, g: 9.80665, gamma_F: 1, round: 0, H: 0.2, B: 0.2, t: 0.008 };

/** The load swings from one way to the other, half as far; each line says its ranges of stress. */
export const fatigueWeldValues: readonly PublishedValue[] = [
  { check: fatigueWeldRoot, about: '50 √2 N/mm off and across on a throat of 5 mm, half of it back: 20 and 10 MPa, 100,000 cycles', origin: 'by hand', source: c203, given: { ...w3, f_z_up: square, f_h_up: square, f_z_dn: square / 2, f_h_dn: square / 2, m_up: 0, m_dn: 0, f_l_up: 0, f_l_dn: 0, a_w: 0.005, n_eq: 1e5 }, symbol: 'D_w', ...printed('0.02892') },
  { check: fatigueWeldCorner, about: 'the same on a corner, pushed back half as far: 30 MPa in all, 100,000 cycles', origin: 'by hand', source: c203, given: { ...w3, f_z_up: square, f_h_up: square, f_z_dn: square / 2, f_h_dn: square / 2, m_up: 0, m_dn: 0, f_l_up: 0, f_l_dn: 0, a_w: 0.005, n_eq: 1e5 }, symbol: 'D_w', ...printed('0.08677') },
  { check: fatigueWeldToe, about: '80 N/mm and 64 N in 8 mm, half of it back: 16 and 8 MPa, 100,000 cycles', origin: 'by hand', source: c203, given: { ...w3, f_h_up: 80e3, m_up: 64, f_h_dn: 40e3, m_dn: 32, t: 0.008, n_eq: 1e5 }, symbol: 'D_w', ...printed('0.014809') },
  { check: fatigueWeldEnd, about: '10 kN·m over 200 cm³ and 20 kN over 40 cm², half of it back: 82.5 MPa, 10,000 cycles', origin: 'by hand', source: c203, given: { ...w3, ...tube, n_eq: 1e4 }, symbol: 'D_w', ...printed('0.18045') },
  { check: fatigueWeldIntermittent, about: '20 MPa, 10 MPa back: 30 MPa, 100,000 cycles', origin: 'by hand', source: c203, given: { ...w3, s_up: 20e6, s_dn: 10e6, n_eq: 1e5 }, symbol: 'D_w', ...printed('0.08677') },
  { check: fatigueCrossingToe, about: '60 MPa, 30 MPa back, in category 90: a million cycles are half of the life', origin: 'by hand', source: 'EN 1993-1-9:2005, 7.1 and Table B.1', given: { ...category(90, 3), z: 0, s_up: 60e6, s_dn: 30e6, n_eq: 1e6 }, symbol: 'D_w', ...printed('0.500') },
  { check: fatigueCrossingRoot, about: '300 N/mm on a throat of 6 mm, half of it back: 75 MPa, 10,000 cycles', origin: 'by hand', source: c203, given: { ...w3, f_up: 300e3, f_dn: 150e3, a_w: 0.006, n_eq: 1e4 }, symbol: 'D_w', ...printed('0.13558') },
  { check: fatigueEyeFoot, about: '60 kN off, 3 kN along and 3 kN across on 20 × 150 mm at 100 mm: 20 + 4 + 30 MPa, half of it back, 10,000 cycles', origin: 'by hand', source: c203, given: { ...w3, ...eye, F_l_up: 3e3, F_l_dn: 1.5e3, F_q_up: 3e3, F_q_dn: 1.5e3, l_e: 0.15, n_eq: 1e4 }, symbol: 'D_w', ...printed('0.17079') },
  { check: fatigueEyeRoot, about: '60 kN on two fillets of 5 × 100 mm, half of it back: 90 MPa, 10,000 cycles', origin: 'by hand', source: c203, given: { ...w3, ...eye, a_w: 0.005, l_0: 0.11, n_eq: 1e4 }, symbol: 'D_w', ...printed('0.23428') },
  { check: fatigueEyeOnTube, about: '82.5 MPa in category 56, 100,000 cycles', origin: 'by hand', source: 'EN 1993-1-9:2005, 7.1 and Table 8.4', given: { ...category(56, 3), ...tube, z: 0, n_eq: 1e5 }, symbol: 'D_w', ...printed('0.15987') },
  { check: fatigueSealedWall, about: 'SHS 200×200×8 sealed at 50 m, 139.22 MPa, 96 times down and up', origin: 'by hand', source: 'closed frame under even pressure and DNV-RP-C203 (2016), Table 2-4 (curve F, log a = 11.378)', given: { ...freeToCorrode(11.378), ...sealed, n_eq: 96 }, symbol: 'D_d', ...printed('0.0010848') },
  { check: fatigueSealedWall, about: 'the same in a million waves of 1 m, four hundredths of it', origin: 'by hand', source: 'closed frame under even pressure and DNV-RP-C203 (2016), Table 2-4 (curve F, log a = 11.378)', given: { ...freeToCorrode(11.378), ...sealed, z_m: 1, n_s: 1e6 }, symbol: 'D_h', ...printed('0.00072321') },
]; // prettier-ignore
