import { fatigueBoltHolePanel } from '../../checks/fatigue-bolt-hole-panel.ts';
import { fatigueBoltHoleTube } from '../../checks/fatigue-bolt-hole-tube.ts';
import { fatigueBoltShear } from '../../checks/fatigue-bolt-shear.ts';
import { fatigueBoltTension } from '../../checks/fatigue-bolt-tension.ts';
import { fatigueCrossingRoot } from '../../checks/fatigue-crossing-root.ts';
import { fatigueCrossingToe } from '../../checks/fatigue-crossing-toe.ts';
import { fatigueEyeFoot } from '../../checks/fatigue-eye-foot.ts';
import { fatigueEyeFootBolts } from '../../checks/fatigue-eye-foot-bolts.ts';
import { fatigueEyeHole } from '../../checks/fatigue-eye-hole.ts';
import { fatigueEyeOnTube } from '../../checks/fatigue-eye-on-tube.ts';
import { fatigueEyeRoot } from '../../checks/fatigue-eye-root.ts';
import { fatiguePlateEdge } from '../../checks/fatigue-plate-edge.ts';
import { fatigueWeldCorner } from '../../checks/fatigue-weld-corner.ts';
import { fatigueWeldEnd } from '../../checks/fatigue-weld-end.ts';
import { fatigueWeldIntermittent } from '../../checks/fatigue-weld-intermittent.ts';
import { fatigueWeldRoot } from '../../checks/fatigue-weld-root.ts';
import { fatigueWeldToe } from '../../checks/fatigue-weld-toe.ts';
import { printed } from './printed.ts';
import type { PublishedValue } from './published-value.ts';

/** Two million cycles of a detail of a category, MPa: its curve has a slope of 3 up to its knee at 5·10⁶ and (2/5)^(1/3) of it. */
const twoMillion = (category: number) => ({ z: 0, S_k: 0.7368063 * category * 1e6, N_k: 5e6, m_1: 3, m_2: 5, n_eq: 2e6, n_s: 0, k_s: 1, t_d: 0.01, t_ref: 0.025, k_x: 0.25 }); // prettier-ignore
const category = (words: string): string =>
  `EN 1993-1-9:2005, 7.1(2): a category is the range of 2·10⁶ cycles; ${words}; statics`;
/** A damage of 1, by the definition of the category: 3 digits, as the knee is given. */
const whole = { origin: 'by hand', symbol: 'D', ...printed('1.000') } as const;

const weld = { a_w: 0.004, f_z_dn: 0, f_h_dn: 0, m_dn: 0, f_l_up: 0, f_l_dn: 0 };
const bent = (M: number) => ({ M_up: M, M_dn: M, N_up: 3e3, N_dn: 3e3, W_el: 1e-4, A: 1e-3 });
const m16 = { A_s: 157e-6, F_dn: 0 };
const foot = { t_e: 0.02, h_e: 0.05 };
const eyeWeld = { ...foot, a_w: 0.006, l_0: 0.1 };
const upright = { F_l_up: 0, F_q_up: 0, F_l_dn: 0, F_q_dn: 0 };
const rim = { d_0: 0.04, c_e: 0.02, t_e: 0.02 };

export const fatigueDamageValues: readonly PublishedValue[] = [
  { check: fatigueWeldRoot, about: 'throat 4 mm pulled by 144 N/mm: 36 MPa', source: category('5(6)'), ...whole, given: { ...twoMillion(36), ...weld, f_z_up: 144e3, f_h_up: 0, m_up: 0 } },
  { check: fatigueWeldRoot, about: 'throat 4 mm bent by 96 N: 36 MPa', source: category('5(6)'), ...whole, given: { ...twoMillion(36), ...weld, f_z_up: 0, f_h_up: 0, m_up: 96 } },
  { check: fatigueWeldRoot, about: 'throat 4 mm sheared along by 144 N/mm: 36 MPa, counted as if it opened the throat', source: category('5(6)'), ...whole, given: { ...twoMillion(36), ...weld, f_z_up: 0, f_h_up: 0, m_up: 0, f_l_up: 144e3 } },
  { check: fatigueWeldCorner, about: 'throat 4 mm on a corner, 72 N/mm off it and onto it: 36 MPa', source: category('5(6)'), ...whole, given: { ...twoMillion(36), ...weld, f_z_up: 72e3, f_z_dn: 72e3, f_h_up: 0, m_up: 0 } },
  { check: fatigueWeldToe, about: '8 mm, 200 N/mm and 213.33 N: 25 and 20 MPa', source: category('category 45'), ...whole, given: { ...twoMillion(45), t: 0.008, f_h_up: 200e3, m_up: 213.3333, f_h_dn: 0, m_dn: 0 } },
  { check: fatigueWeldEnd, about: '2.5 kN m on 100 cm³ and 3 kN on 10 cm², up and down: 56 MPa', source: category('category 56'), ...whole, given: { ...twoMillion(56), ...bent(2.5e3) } },
  { check: fatigueWeldIntermittent, about: '40 MPa up and down', source: category('category 80'), ...whole, given: { ...twoMillion(80), s_up: 40e6, s_dn: 40e6 } },
  { check: fatigueWeldIntermittent, about: '5·10⁶ cycles of half the range of the knee: 0.5⁵', source: 'EN 1993-1-9, 7.1(3), slope of 5 below the knee', origin: 'by hand', given: { ...twoMillion(80), s_up: 14.736126e6, s_dn: 14.736126e6, n_eq: 5e6 }, symbol: 'D', ...printed('0.03125') },
  { check: fatiguePlateEdge, about: 'no hole, 62.5 MPa up and down', source: category('category 125'), ...whole, given: { ...twoMillion(125), t: 0.01, d_c: 0, b_up: 62.5e6, b_dn: 62.5e6 } },
  { check: fatigueBoltHolePanel, about: 'holes of 18 mm at 90 mm, 20 MPa up and down: 50 MPa net', source: category('category 50'), ...whole, given: { ...twoMillion(50), d_0: 0.018, p_1: 0.09, b_up: 20e6, b_dn: 20e6 } },
  { check: fatigueBoltHoleTube, about: 'a hole of 20 mm in 100 mm, 36 MPa up and down: 90 MPa net', source: category('category 90'), ...whole, given: { ...twoMillion(90), ...bent(3.3e3), n_h: 1, d_h: 0.02, B: 0.1 } },
  { check: fatigueBoltTension, about: 'M16 pulled by 7.85 kN: 50 MPa', source: category('category 50'), ...whole, given: { ...twoMillion(50), ...m16, F_up: 7.85e3 } },
  { check: fatigueBoltShear, about: 'M16 sheared by 15.7 kN: 100 MPa, slope 5 all along', source: category('category 100, slope 5'), ...whole, given: { ...twoMillion(100), S_k: 100e6, N_k: 2e6, m_1: 5, ...m16, F_up: 15.7e3 } },
  { check: fatigueCrossingToe, about: '45 MPa up and down', source: category('category 90'), ...whole, given: { ...twoMillion(90), s_up: 45e6, s_dn: 45e6 } },
  { check: fatigueCrossingRoot, about: 'throat 4 mm, 72 N/mm up and down: 36 MPa', source: category('5(6)'), ...whole, given: { ...twoMillion(36), a_w: 0.004, f_up: 72e3, f_dn: 72e3 } },
  { check: fatigueEyeFoot, about: 'up 50 kN, 10 along and 2 across: 55 MPa; down 50 kN: 25 MPa', source: category('category 80'), ...whole, given: { ...twoMillion(80), ...foot, l_e: 0.1, F_z_up: 50e3, F_l_up: 10e3, F_q_up: 2e3, F_z_dn: 50e3, F_l_dn: 0, F_q_dn: 0 } },
  { check: fatigueEyeFootBolts, about: 'four M16 100 mm apart, m = 40 mm, n = 40 mm: 10.4667 kN up and down, half as much again by prying: 25 MPa each, range 50', source: category('category 50'), ...whole, given: { ...twoMillion(50), A_s: 157e-6, t_e: 0.02, a_w: 0, w_f: 0.1, e: 0.04, p_f: 0.1, n_p: 2, h_e: 0.1, F_z_up: 10.46667e3, F_l_up: 0, F_q_up: 0, F_z_dn: 10.46667e3, F_l_dn: 0, F_q_dn: 0 } },
  { check: fatigueEyeFootBolts, about: 'the same four M16 under 10 kN up, 2 along (6 · 2 · 0.1 / 0.3 = 4 kN) and 1 across (2 kN): 16 kN, 6 a bolt with prying, on 157 mm²', source: 'statics', origin: 'by hand', given: { A_s: 157e-6, t_e: 0.02, a_w: 0, w_f: 0.1, e: 0.04, p_f: 0.1, n_p: 2, h_e: 0.1, F_z_up: 10e3, F_l_up: 2e3, F_q_up: 1e3 }, symbol: 's_up', ...printed('38.22', 'MPa') },
  { check: fatigueEyeRoot, about: 'two fillets 88 mm long, 6 mm thick, 19.008 kN up and down: 36 MPa', source: category('5(6)'), ...whole, given: { ...twoMillion(36), ...eyeWeld, ...upright, F_z_up: 19.008e3, F_z_dn: 19.008e3 } },
  { check: fatigueEyeRoot, about: 'the same fillets under 50 kN up, 10 along and 2 across, 50 mm above them', source: 'statics', origin: 'by hand', given: { ...eyeWeld, F_z_up: 50e3, F_l_up: 10e3, F_q_up: 2e3 }, symbol: 's_up', ...printed('89.62', 'MPa') },
  { check: fatigueEyeHole, about: '20 kN on 2 × 20 × 20 mm times 2.5, up and down: 125 MPa', source: category('category 125'), ...whole, given: { ...twoMillion(125), ...rim, K_t: 2.5, F_up: 20e3, F_dn: 20e3 } },
  { check: fatigueEyeOnTube, about: '3.7 kN m on 100 cm³ and 3 kN on 10 cm², up and down: 80 MPa', source: category('category 80'), ...whole, given: { ...twoMillion(80), ...bent(3.7e3) } },
]; // prettier-ignore
