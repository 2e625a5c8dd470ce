import { constant } from './inputs.ts';
import type { Step } from './check.ts';

/** The yield strength to which the limits of EN 1993-1-1 Table 5.2 refer. */
export const f_235 = constant(235, 'MPa', 'yield strength to which the class limits refer', 'EN 1993-1-1, Table 5.2');

/** Elastic and plastic modulus less the holes of bolts, taken as drilled through both flanges at the section
 *  of the largest moment. Safe for holes in one flange only, and for the elastic modulus, where they take off d t (H − t)²/H.
 *  Always taken off, although EN 1993-1-1, 6.2.5(4) may let them be ignored. */
export const netElasticStep: Step = {
  symbol: 'W_el_n',
  expression: 'W_el - n_h * d_h * t * (H - t)',
  unit: 'cm^3',
  meaning: 'elastic modulus less the holes of bolts, as in both flanges',
};

/** Wall between the webs, or the quarter of a round tube's girth that holes in line are drilled in. */
export const flangeStep: Step = {
  symbol: 'b_f',
  expression: 'round > 0 ? pi / 4 * (B - 2 * t) : B - 2 * t',
  unit: 'mm',
  meaning: 'wall that the bolts drill: between the webs, or a quarter of a round girth',
};

/** Area less the holes of bolts, drilled through both flanges. */
export const netAreaStep: Step = {
  symbol: 'A_n',
  expression: 'A - 2 * n_h * d_h * t',
  unit: 'cm^2',
  meaning: 'area less the holes of bolts, as in both flanges',
};

/** Design strength of a drilled section: yielding of it, or rupture beside a hole, EN 1993-1-1, 6.2.3(2) and 6.2.5(4). */
export const drilledStrengthStep: Step = {
  symbol: 'f_d',
  expression: 'n_h > 0 ? min(f_y / gamma_M0, 0.9 * f_u / gamma_M2) : f_y / gamma_M0',
  unit: 'MPa',
  meaning: 'design strength: yielding, or rupture beside a hole (6.2.5(4))',
};

/** Nominal moment with rupture of a drilled flange, AISC 360 F13.1; after `nominalMomentSteps`. */
export const ruptureMomentSteps: readonly Step[] = [
  {
    symbol: 'Y_t',
    expression: 'f_y <= 0.8 * f_u ? 1 : 1.1',
    unit: '1',
    meaning: 'factor on yielding of the flange (F13.1)',
  },
  {
    symbol: 'part_n',
    expression: '(B - n_h * d_h) / B',
    unit: '1',
    meaning: 'part of the flange that the holes leave',
  },
  {
    symbol: 'M_r',
    expression: 'n_h == 0 ? M_n : (f_u * part_n >= Y_t * f_y ? M_n : min(M_n, f_u * part_n * W_el))',
    unit: 'kN*m',
    meaning: 'limited by rupture beside the holes (F13-1)',
  },
];

const netModulusSteps: readonly Step[] = [
  flangeStep,
  netElasticStep,
  {
    symbol: 'W_pl_n',
    expression: 'W_pl - n_h * d_h * t * (H - t)',
    unit: 'cm^3',
    meaning: 'plastic modulus less the holes of bolts, as in both flanges',
  },
];

/** Flat widths of the walls: the least that either radius standard leaves is H − 3t in published tables of limits. */
export const flatWidthSteps: readonly Step[] = [
  { symbol: 'lambda_f', expression: '(B - 3 * t) / t', unit: '1', meaning: 'flat width of the flange over its wall' },
  { symbol: 'lambda_w', expression: '(H - 3 * t) / t', unit: '1', meaning: 'flat height of the web over its wall' },
];

/** Section class in bending, EN 1993-1-1 Table 5.2: r_2 and r_3 are slenderness over the limits of classes 2 and 3. */
export const bendingClassSteps: readonly Step[] = [
  ...netModulusSteps,
  ...flatWidthSteps,
  { symbol: 'epsilon', expression: 'sqrt(f_235 / f_y)', unit: '1', meaning: 'factor of yield strength' },
  {
    symbol: 'r_2',
    expression: 'round > 0 ? H / t / (70 * epsilon^2) : max(lambda_f / (38 * epsilon), lambda_w / (83 * epsilon))',
    unit: '1',
    meaning: 'slenderness over the limit of class 2',
  },
  {
    symbol: 'r_3',
    expression: 'round > 0 ? H / t / (90 * epsilon^2) : max(lambda_f / (42 * epsilon), lambda_w / (124 * epsilon))',
    unit: '1',
    meaning: 'slenderness over the limit of class 3',
  },
  {
    symbol: 'W',
    expression: 'r_2 <= 1 ? W_pl_n : W_el_n',
    unit: 'cm^3',
    meaning: 'net plastic modulus in class 1 or 2, else elastic',
  },
];

/** Section class under thrust and bending, all walls taken as pressed evenly: the strictest rows of Table 5.2. */
export const thrustClassSteps: readonly Step[] = [
  ...netModulusSteps,
  ...flatWidthSteps,
  { symbol: 'epsilon', expression: 'sqrt(f_235 / f_y)', unit: '1', meaning: 'factor of yield strength' },
  {
    symbol: 'r_2',
    expression: 'round > 0 ? H / t / (70 * epsilon^2) : max(lambda_f, lambda_w) / (38 * epsilon)',
    unit: '1',
    meaning: 'slenderness over the limit of class 2',
  },
  {
    symbol: 'r_3',
    expression: 'round > 0 ? H / t / (90 * epsilon^2) : max(lambda_f, lambda_w) / (42 * epsilon)',
    unit: '1',
    meaning: 'slenderness over the limit of class 3',
  },
  {
    symbol: 'W',
    expression: 'r_2 <= 1 ? W_pl_n : W_el_n',
    unit: 'cm^3',
    meaning: 'net plastic modulus in class 1 or 2, else elastic',
  },
];

/** Nominal moment of a hollow section, AISC 360 F7 (rectangular) and F8 (round); r_3 is slenderness over the limit beyond
 *  which a wall is slender. */
export const nominalMomentSteps: readonly Step[] = [
  ...netModulusSteps,
  ...flatWidthSteps,
  { symbol: 'beta_y', expression: 'sqrt(f_y / E)', unit: '1', meaning: 'root of yield strain' },
  { symbol: 'M_p', expression: 'W_pl_n * f_y', unit: 'kN*m', meaning: 'plastic moment' },
  {
    symbol: 'M_f',
    expression:
      'lambda_f * beta_y <= 1.12 ? M_p : min(M_p, M_p - (M_p - f_y * W_el_n) * (3.57 * lambda_f * beta_y - 4))',
    unit: 'kN*m',
    meaning: 'limited by the flange (F7-2)',
  },
  {
    symbol: 'M_w',
    expression:
      'lambda_w * beta_y <= 2.42 ? M_p : min(M_p, M_p - (M_p - f_y * W_el_n) * (0.305 * lambda_w * beta_y - 0.738))',
    unit: 'kN*m',
    meaning: 'limited by the web (F7-6)',
  },
  {
    symbol: 'M_o',
    expression: 'H / t <= 0.07 * E / f_y ? M_p : min(M_p, (0.021 * E / (H / t) + f_y) * W_el_n)',
    unit: 'kN*m',
    meaning: 'of a round wall (F8-2)',
  },
  { symbol: 'M_n', expression: 'round > 0 ? M_o : min(M_f, M_w)', unit: 'kN*m', meaning: 'nominal moment' },
  {
    symbol: 'r_3',
    expression: 'round > 0 ? H / t / (0.31 * E / f_y) : max(lambda_f * beta_y / 1.4, lambda_w * beta_y / 5.7)',
    unit: '1',
    meaning: 'slenderness over the limit of a slender wall',
  },
];

/** Beyond class 3, or with slender walls, no part of the section is counted as lost: that is another rule. */
export const notSlender = {
  holds: 'r_3 <= 1',
  otherwise: 'the walls are slender (class 4): the section cannot be judged by its full area',
} as const;

/** Holes that take up the flange leave no beam. What is left has a positive net elastic modulus. */
export const flangeLeft = {
  holds: 'n_h * d_h < b_f',
  otherwise: 'the holes of the bolts take up the whole flange of the tube: take fewer rows or smaller bolts',
} as const;
