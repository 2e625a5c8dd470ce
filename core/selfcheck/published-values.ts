import type { Check } from '../checks/check.ts';
import { boltBearingPanel } from '../checks/bolt-bearing-panel.ts';
import { boltCombined } from '../checks/bolt-combined.ts';
import { boltPullThrough } from '../checks/bolt-pull-through.ts';
import { boltShear } from '../checks/bolt-shear.ts';
import { boltSlip } from '../checks/bolt-slip.ts';
import { boltTension } from '../checks/bolt-tension.ts';
import { eyeBearing } from '../checks/eye-bearing.ts';
import { eyeTearOut } from '../checks/eye-tear-out.ts';
import { tubeShear } from '../checks/tube-shear.ts';
import type { Safety } from '../source.ts';

/** A value that a check must give again, worked outside this program: in SI, tolerance half of the last printed digit. */
export interface PublishedValue {
  readonly check: Check;
  readonly safety: Safety;
  readonly about: string;
  readonly source: string;
  readonly given: Readonly<Record<string, number>>;
  readonly symbol: string;
  readonly expected: number;
  readonly tolerance: number;
}

const en = 'EN 1993-1-8:2005, ';
const m16 = { A_s: 157e-6, A_b: 201.06e-6 };
const steel = { f_ub: 800e6, gamma_M2: 1.25 };
const far = 1e6;
const bearing = { d: 0.016, d_0: 0.018, e_1: 0.03, e_2: 0.025, p_1: far, p_2: far, t: 0.008, f_yp: 355e6, f_u: 470e6, stainless: 0, k_h: 1, ...steel }; // prettier-ignore
const kN = 1e3;

/** The tests compare many more; these need no plate, so that a reader can follow each with pencil and paper. */
export const publishedValues: readonly PublishedValue[] = [
  { check: boltTension, safety: 'partial factors', about: 'M16, class 8.8', source: `${en}Table 3.4`, given: { ...m16, ...steel, k_2: 0.9 }, symbol: 'F_t_Rd', expected: 90.432 * kN, tolerance: 0.5 }, // prettier-ignore
  { check: boltTension, safety: 'partial factors', about: 'M16, class 8.8, countersunk', source: `${en}Table 3.4`, given: { ...m16, ...steel, k_2: 0.63 }, symbol: 'F_t_Rd', expected: 63.302 * kN, tolerance: 0.5 }, // prettier-ignore
  { check: boltTension, safety: 'allowable stress', about: 'M16 of group 120', source: 'AISC 360, Table J3.2', given: { ...m16, F_nt: 620e6, Omega_J: 2 }, symbol: 'F_t_Rd', expected: 62.329 * kN, tolerance: 0.5 }, // prettier-ignore
  { check: boltShear, safety: 'partial factors', about: 'M16, class 8.8, threads in the plane', source: `${en}Table 3.4`, given: { ...m16, ...steel, threads: 1, alpha_v: 0.6 }, symbol: 'F_v_Rd', expected: 60.288 * kN, tolerance: 0.5 }, // prettier-ignore
  { check: boltShear, safety: 'partial factors', about: 'M16, class 8.8, shank in the plane', source: `${en}Table 3.4`, given: { ...m16, ...steel, threads: 0, alpha_v: 0.6 }, symbol: 'F_v_Rd', expected: 77.208 * kN, tolerance: 1.5 }, // prettier-ignore
  { check: boltShear, safety: 'allowable stress', about: 'M16 of group 120, threads in the plane', source: 'AISC 360, Table J3.2', given: { ...m16, F_nv: 372e6, Omega_J: 2 }, symbol: 'F_v_Rd', expected: 37.397 * kN, tolerance: 0.5 }, // prettier-ignore
  { check: boltBearingPanel, safety: 'partial factors', about: 'M16 in 8 mm of S355, end bolt', source: `${en}Table 3.4`, given: bearing, symbol: 'F_b_Rd', expected: 58.526 * kN, tolerance: 0.5 }, // prettier-ignore
  { check: boltBearingPanel, safety: 'partial factors', about: 'M16 in 8 mm of S355, inner bolt, pitch 50 mm', source: `${en}Table 3.4`, given: { ...bearing, e_1: far, p_1: 0.05 }, symbol: 'F_b_Rd', expected: 71.207 * kN, tolerance: 0.5 }, // prettier-ignore
  { check: boltPullThrough, safety: 'partial factors', about: 'M16 head through 5 mm at 470 MPa', source: `${en}Table 3.4`, given: { d_m: 0.025375, t: 0.005, f_u: 470e6, gamma_M2: 1.25 }, symbol: 'B_p_Rd', expected: 89.92 * kN, tolerance: 5 }, // prettier-ignore
  { check: boltSlip, safety: 'partial factors', about: 'M16, class 8.8, slip factor 0.3, under 20 kN of tension', source: `${en}3.9`, given: { A_s: 157e-6, f_ub: 800e6, mu: 0.3, k_s: 1, gamma_M3: 1.25, F_t: 20 * kN }, symbol: 'F_s_Rd', expected: 17.261 * kN, tolerance: 0.5 }, // prettier-ignore
  { check: boltCombined, safety: 'partial factors', about: 'M16, class 8.8, 25 kN across and 50 kN along', source: `${en}Table 3.4`, given: { ...m16, ...steel, threads: 1, alpha_v: 0.6, k_2: 0.9, F_v: 25 * kN, F_t: 50 * kN }, symbol: 'u', expected: 0.80961, tolerance: 5e-6 }, // prettier-ignore
  { check: eyeBearing, safety: 'partial factors', about: 'pin of 30 mm in 20 mm at 355 MPa', source: `${en}Table 3.10`, given: { t_e: 0.02, d: 0.03, f_y: 355e6, gamma_M0: 1 }, symbol: 'F_Rd', expected: 319.5 * kN, tolerance: 0.5 }, // prettier-ignore
  { check: eyeTearOut, safety: 'partial factors', about: 'end distance 27.0423 mm, 20 mm at 355 MPa, pin hole 30 mm', source: `${en}Table 3.9, type A`, given: { t_e: 0.02, f_y: 355e6, f_u: 470e6, d_0: 0.03, a_e: 0.0270423, gamma_M0: 1 }, symbol: 'F_Rd', expected: 100 * kN, tolerance: 5 }, // prettier-ignore
  { check: tubeShear, safety: 'partial factors', about: 'SHS 100×100×5 in S355', source: 'EN 1993-1-1, 6.2.6 (from memory)', given: { f_y: 355e6, f_235: 235e6, gamma_M0: 1, V: 1, round: 0, H: 0.1, t: 0.005, A_v: 936.6e-6 }, symbol: 'V_Rd', expected: 191.97 * kN, tolerance: 6 }, // prettier-ignore
];
