import { crossingEffectiveWidth } from '../../checks/crossing-effective-width.ts';
import { crossingFlare } from '../../checks/crossing-flare.ts';
import { crossingJoint } from '../../checks/crossing-joint.ts';
import { crossingRound } from '../../checks/crossing-round.ts';
import { crossingSideWall } from '../../checks/crossing-side-wall.ts';
import { crossingThroat } from '../../checks/crossing-throat.ts';
import { crossingWeld } from '../../checks/crossing-weld.ts';
import { printed } from './printed.ts';
import type { PublishedValue } from './published-value.ts';

const en = 'EN 1993-1-8:2005, ';
/** Main tube 150×150×8 in S355, not stressed by itself. */
const main = { b_0: 0.15, h_0: 0.15, t_0: 0.008, f_y0: 355e6, M_0: 0, N_0: 0, W_0: 199e-6, A_0: 44.8e-4, E: 210e9, gamma_M5: 1 }; // prettier-ignore
const pipes = { f_y0: 355e6, M_0: 0, N_0: 0, W_0: 1, A_0: 1, d_0: 0.1683, t_0: 0.0063, d_1: 0.0889, gamma_M5: 1 };
const s355 = { f_u: 470e6, beta_w: 0.9, gamma_M2: 1.25 };

export const crossingValues: readonly PublishedValue[] = [
  { check: crossingJoint, about: '100×100 on 150×150×8 in S355, pull', origin: 'by hand', source: `${en}Table 7.11`, memory: true, given: { ...main, b_1: 0.1, h_1: 0.1 }, symbol: 'N_Rd', ...printed('248.29', 'kN') },
  { check: crossingJoint, about: 'the same, moment about the axis of the main tube', origin: 'by hand', source: `${en}Table 7.14`, memory: true, given: { ...main, b_1: 0.1, h_1: 0.1 }, symbol: 'M_Rd', ...printed('14.479', 'kN·m') },
  { check: crossingSideWall, about: 'side wall 150/8 in S355: slenderness 3.46 (h/t − 2)/π √(f/E)', origin: 'by hand', source: `${en}Table 7.11`, given: { ...main, alpha: 0.21 }, symbol: 'lambda', ...printed('0.7585') },
  { check: crossingSideWall, about: '100 mm long on it, as wide as it: 0.8 χ f_y t (2 h + 10 t)', origin: 'by hand', source: `${en}Table 7.11, χ of curve a`, given: { ...main, alpha: 0.21, b_1: 0.15, h_1: 0.1 }, symbol: 'N_wall', ...printed('520.73', 'kN') },
  { check: crossingSideWall, about: 'the same, its moment: 0.8 · 355 · 8 · 142 · 140 N·mm', origin: 'by hand', source: `${en}Table 7.14`, memory: true, given: { ...main, b_1: 0.15, h_1: 0.1 }, symbol: 'M_wall', ...printed('45.17', 'kN·m') },
  { check: crossingEffectiveWidth, about: '150×100×6 on it: 106.7 of 150 mm count', origin: 'by hand', source: `${en}Table 7.11`, memory: true, given: { ...main, b_1: 0.15, h_1: 0.1, t_1: 0.006, f_y1: 355e6 }, symbol: 'N_b', ...printed('829.28', 'kN') },
  { check: crossingRound, about: 'CHS 88.9 on 168.3×6.3 in S355, T joint', origin: 'by hand', source: `${en}Table 7.2`, memory: true, given: pipes, symbol: 'N_T', ...printed('160.00', 'kN') },
  { check: crossingRound, about: 'the same, X joint', origin: 'by hand', source: `${en}Table 7.2`, memory: true, given: pipes, symbol: 'N_X', ...printed('128.06', 'kN') },
  { check: crossingRound, about: 'the same, punching', origin: 'by hand', source: `${en}Table 7.2`, memory: true, given: pipes, symbol: 'N_P', ...printed('360.63', 'kN') },
  { check: crossingThroat, about: 'ring round 100 × 60 mm under 100 kN, 5 kN·m and 40 kN of shear', origin: 'by hand', source: 'machine-design handbooks, weld as a line: 2 (b + h), b²/3 + b h', memory: true, given: { N_1: 100e3, M_1: 5e3, V_1: 40e3, b_1: 0.1, h_1: 0.06 }, symbol: 'f_w', ...printed('871.47', 'N/mm') },
  { check: crossingWeld, about: 'two runs of 150 mm, a = 5 mm, S355', origin: 'by hand', source: `${en}4.5.3.3`, given: { ...s355, a_w: 0.005, l_w: 0.3 }, symbol: 'F_Rd', ...printed('361.81', 'kN') },
  { check: crossingFlare, about: 'corner of 3/4 in: 5/16 R', origin: 'printed', source: 'a handbook of structural steel on AISC 360, Table J2.2', given: { R: 0.75 * 0.0254, k_f: 5 / 16 }, symbol: 'a_flare', ...printed('0.234', 'in') },
]; // prettier-ignore
