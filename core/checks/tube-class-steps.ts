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
const netModulusSteps: readonly Step[] = [
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

/** Holes that take up the flange leave no beam. */
export const flangeLeft = {
  holds: 'n_h * d_h < B - 2 * t',
  otherwise: 'the holes of the bolts take up the whole flange of the tube: take fewer rows or smaller bolts',
} as const;
