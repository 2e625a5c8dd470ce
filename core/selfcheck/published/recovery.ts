import { recoveryAcoustic } from '../../checks/recovery-acoustic.ts';
import { recoveryCanister } from '../../checks/recovery-canister.ts';
import { recoveryCanisterBolts } from '../../checks/recovery-canister-bolts.ts';
import { recoveryFloatDepth } from '../../checks/recovery-float-depth.ts';
import { recoveryFloatReserve } from '../../checks/recovery-float-reserve.ts';
import { recoveryFloatVisible } from '../../checks/recovery-float-visible.ts';
import { recoveryReleaseEndurance } from '../../checks/recovery-release-endurance.ts';
import { recoveryReleaseLeastPull } from '../../checks/recovery-release-least-pull.ts';
import { recoveryReleaseLoad } from '../../checks/recovery-release-load.ts';
import { recoveryRope } from '../../checks/recovery-rope.ts';
import { printed } from './printed.ts';
import type { PublishedValue } from './published-value.ts';

const nd = '0027/ND Guidelines for Marine Lifting, Rev 11, ';
const float = { rho: 1025, g: 9.80665, V: 0.1, m: 40, u: 0.05 };
const rope = { F_br: 88e3, k_sp: 0.9, k_we: 1, k_wet: 1, k_age: 1, k_d: 5 };
const m12 = { A_s: 84.3e-6, f_ub: 800e6, gamma_M2: 1.25 };

export const recoveryValues: readonly PublishedValue[] = [
  { check: recoveryRope, about: '88 kN over a sheave of five diameters, bend 1.29, splice 0.9: the worse of the two', origin: 'by hand', source: `${nd}7.8`, given: { ...rope, k_be: 1 / 1.29 }, symbol: 'F_left', ...printed('68.2', 'kN') },
  { check: recoveryFloatReserve, about: '0.1 m³ and 40 kg, 2 % and 5 % lost at half of its depth', origin: 'by hand', source: 'Archimedes', given: { ...float, z: 50, z_r: 100, c: 0.02 }, symbol: 'B', ...printed('553.11', 'N') },
  { check: recoveryFloatVisible, about: '0.1 m³ and 40 kg, 5 % lost', origin: 'by hand', source: 'Archimedes', given: float, symbol: 'B', ...printed('562.66', 'N') },
  { check: recoveryAcoustic, about: '1000 m, 3 dB/km: spreading 60 dB', origin: 'by hand', source: 'Urick, Principles of Underwater Sound, sonar equation', memory: true, given: { r: 1000, r_1: 1, alpha: 0.003 }, symbol: 'TL', ...printed('63.0', 'dB') },
  { check: recoveryAcoustic, about: 'noise of 50 dB in 1 Hz over a band of 100 Hz', origin: 'by hand', source: 'Urick, Principles of Underwater Sound, sonar equation', memory: true, given: { N_1: 50, B_w: 100, B_1: 1 }, symbol: 'NL', ...printed('70.0', 'dB') },
  { check: recoveryCanister, about: '100 m of 12 mm, half of the space filled', origin: 'by hand', source: 'geometry of a coil', given: { d: 0.012, L: 100, k_p: 0.5 }, symbol: 'V_s', ...printed('0.02262', 'm³') },
  { check: recoveryCanisterBolts, about: 'M12, class 8.8, in tension', origin: 'printed', source: 'bolt tables to EN 1993-1-8, Table 3.4', memory: true, given: m12, symbol: 'F_t_Rd', ...printed('48.6', 'kN') },
  { check: recoveryCanisterBolts, about: 'M12, class 8.8, in shear at 0.5', origin: 'by hand', source: 'EN 1993-1-8:2005, Table 3.4', given: m12, symbol: 'F_v_Rd', ...printed('26.98', 'kN') },
  { check: recoveryFloatDepth, about: 'rated to 100 m, collapses at 115 m: 115/1.25', origin: 'by hand', source: 'common practice, no source', given: { z_r: 100, z_c: 115, k_c: 1.25 }, symbol: 'z_max', ...printed('92.0', 'm') },
  { check: recoveryReleaseLoad, about: '6 kN of steady pull, doubled', origin: 'by hand', source: 'common practice, no source', given: { F_0: 6e3, k_w: 2 }, symbol: 'F', ...printed('12.0', 'kN') },
  { check: recoveryReleaseLeastPull, about: 'float of 553 N less 41 N of growth', origin: 'by hand', source: 'statics', given: { B: 553, F_gr: 41 }, symbol: 'F_there', ...printed('512', 'N') },
  { check: recoveryReleaseEndurance, about: 'a year and a quarter of it', origin: 'by hand', source: 'common practice, no source', given: { T_d: 365 * 86_400, k_t: 1.25 }, symbol: 'T_need', ...printed('456.25', 'd') },
]; // prettier-ignore
