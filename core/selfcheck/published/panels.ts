import { panelBendingBolts } from '../../checks/panel-bending-bolts.ts';
import { panelBendingFourSides } from '../../checks/panel-bending-four-sides.ts';
import { panelBendingTwoSides } from '../../checks/panel-bending-two-sides.ts';
import { panelBuckling } from '../../checks/panel-buckling.ts';
import { panelBucklingByHand } from '../../checks/panel-buckling-by-hand.ts';
import { panelDeflectionBolts } from '../../checks/panel-deflection-bolts.ts';
import { panelDeflectionFourSides } from '../../checks/panel-deflection-four-sides.ts';
import { panelDeflectionTwoSides } from '../../checks/panel-deflection-two-sides.ts';
import { panelShear } from '../../checks/panel-shear.ts';
import { panelStress } from '../../checks/panel-stress.ts';
import { printed } from './printed.ts';
import type { PublishedValue } from './published-value.ts';

const plates = 'Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., ';
const elasticStability = 'Timoshenko & Gere, Theory of Elastic Stability, 2nd ed., ';
const ritz = 'thin plate by Ritz’s method in Legendre polynomials, no table printed';

/** Steel, 10 mm, 10 kPa, 1 m square: D = E t³/12(1 − ν²) = 19 231 N·m. */
const steel = { t: 0.01, E: 210e9, nu: 0.3 };
const square = { ...steel, a: 1, b: 1, p: 1e4 };
const narrow = { ...steel, L: 1, B: 0.02 };
const corners = { ...steel, a_b: 1, b_b: 1, n_x: 2, n_y: 2, i_x: 0, i_y: 0 };

/** In a square of 1 m and 10 kPa, 6 · 0.01 q a²/t² is 6 MPa. */
export const panelValues: readonly PublishedValue[] = [
  { check: panelBendingFourSides, about: 'held square, middle of an edge: 6 · 0.0513 q a²/t², ν of it along the edge', origin: 'by hand', source: `${plates}Table 35`, memory: true, given: { ...square, h: 1, r_M: 1 }, symbol: 'sigma_Ed', ...printed('27.4', 'MPa') },
  { check: panelBendingTwoSides, about: 'narrow strip of 1 m on hinges: 6 p L²/8 t²', origin: 'by hand', source: 'beam theory', given: { ...narrow, p: 1e4, h: 0 }, symbol: 'sigma_Ed', ...printed('75', 'MPa') },
  { check: panelBendingBolts, about: 'square on its corners, middle of an edge: 6 · 0.1504 q a²/t²', origin: 'second method', source: ritz, given: { ...corners, p: 1e4, d_w: 0.44, lost: 0 }, symbol: 'sigma_Ed', ...printed('90', 'MPa') },
  { check: panelStress, about: '100 MPa on 10 mm, 8 mm left, 5 times to buckling on 10 mm: (10/8)² and 1/(1 − 1/2.56)', origin: 'by hand', source: 'EN 1993-1-1:2005, 5.2.2(5)', memory: true, given: { sigma_n: 1e8, alpha_n: 5, t_n: 0.01, t: 0.008 }, symbol: 'sigma_Ed', ...printed('256.41', 'MPa') },
  { check: panelShear, about: 'hinged square, middle of an edge: 0.420 q a', origin: 'printed', source: `${plates}Table 8`, memory: true, given: square, symbol: 'V_hinged', ...printed('4.20', 'kN/m') },
  { check: panelShear, about: 'S355 in shear: f_y/√3', origin: 'by hand', source: 'EN 1993-1-1:2005, 6.2.6(2)', memory: true, given: { f_y: 355e6, gamma_M0: 1 }, symbol: 'tau_Rd', ...printed('204.96', 'MPa') },
  { check: panelDeflectionFourSides, about: 'hinged square: 0.00406 q a⁴/D', origin: 'by hand', source: `${plates}Table 8`, memory: true, given: { ...square, p_ser: 1e4 }, symbol: 'w_hinged', ...printed('2.11', 'mm') },
  { check: panelDeflectionFourSides, about: 'held square: 0.00126 q a⁴/D', origin: 'by hand', source: `${plates}Table 35`, memory: true, given: { ...square, p_ser: 1e4 }, symbol: 'w_held', ...printed('0.66', 'mm') },
  { check: panelDeflectionTwoSides, about: 'narrow strip of 1 m on hinges: 5 p L⁴/384 E I', origin: 'by hand', source: 'beam theory', given: { ...narrow, p_ser: 1e4, h: 0 }, symbol: 'w_Ed', ...printed('7.44', 'mm') },
  { check: panelDeflectionTwoSides, about: 'square on two hinges, middle of a free edge: 0.01501 q a⁴/D', origin: 'second method', source: ritz, given: { ...steel, L: 1, B: 1, p_ser: 1e4, h: 0 }, symbol: 'w_Ed', ...printed('7.81', 'mm') },
  { check: panelDeflectionBolts, about: 'square on its corners: 0.0255 q a⁴/D', origin: 'second method', source: ritz, given: { ...corners, p_ser: 1e4, d_w: 0.01 }, symbol: 'w_Ed', ...printed('13.3', 'mm') },
  { check: panelBucklingByHand, about: 'square of 1 m, 10 mm, pressed one way: 4 π²E/12(1 − ν²) (t/b)²', origin: 'by hand', source: `${elasticStability}ch. 9, hinged edges`, memory: true, given: { ...square, four: 1 }, symbol: 'sigma_xcr', ...printed('75.92', 'MPa') },
  { check: panelBucklingByHand, about: 'the same in shear: 9.34 times', origin: 'by hand', source: `${elasticStability}ch. 9; EN 1993-1-5:2006, A.3`, memory: true, given: { ...square, four: 1 }, symbol: 'tau_cr', ...printed('177.27', 'MPa') },
  { check: panelBucklingByHand, about: 'reduction at slenderness 0.8, α = 0.21', origin: 'printed', source: 'tables of curve a of EN 1993-1-1, Figure 6.4', memory: true, given: { lambda_p: 0.8 }, symbol: 'chi_c', ...printed('0.7957') },
  { check: panelBuckling, about: 'reduction at slenderness 1, α = 0.21', origin: 'printed', source: 'tables of curve a of EN 1993-1-1, Figure 6.4', memory: true, given: { lambda_p: 1 }, symbol: 'chi_c', ...printed('0.6656') },
]; // prettier-ignore
