import { fatigueBoltHolePanel } from '../../checks/fatigue-bolt-hole-panel.ts';
import { fatigueBoltHoleTube } from '../../checks/fatigue-bolt-hole-tube.ts';
import { fatigueBoltShear } from '../../checks/fatigue-bolt-shear.ts';
import { fatigueBoltTension } from '../../checks/fatigue-bolt-tension.ts';
import { fatigueEyeHole } from '../../checks/fatigue-eye-hole.ts';
import { fatiguePlateEdge } from '../../checks/fatigue-plate-edge.ts';
import { fatigueWeldPlug } from '../../checks/fatigue-weld-plug.ts';
import { fatigueWeldPlugShear } from '../../checks/fatigue-weld-plug-shear.ts';
import { category, freeToCorrode } from './fatigue-curve.ts';
import { printed } from './printed.ts';
import type { PublishedValue } from './published-value.ts';

const c203 = 'DNV-RP-C203 (2016), Table 2-4 (curve W3, log a = 10.493), and Miner';
const w3 = { ...freeToCorrode(10.493), z: 0 };
const peterson = 'Peterson’s Stress Concentration Factors, 3rd ed.';

/** The curve of a row is any curve: which one a detail has is held by the tests of the tables. */
export const fatigueSteelValues: readonly PublishedValue[] = [
  { check: fatiguePlateEdge, about: 'hole much wider than the plate is thick: (5 + 3 ν)/(3 + ν)', origin: 'printed', source: `Reissner, in ${peterson}`, memory: true, given: { d_c: 8, t: 0.001 }, symbol: 'K_h', ...printed('1.79') },
  { check: fatiguePlateEdge, about: 'rim at 20 MPa, 10 MPa back, no hole: 30 MPa, 100,000 cycles', origin: 'by hand', source: c203, given: { ...w3, d_c: 0, t: 0.01, b_up: 20e6, b_dn: 10e6, n_eq: 1e5 }, symbol: 'D_w', ...printed('0.08677') },
  { check: fatigueBoltHolePanel, about: 'holes of 14 mm at 70 mm: 16 MPa is 20, 8 back: 30 MPa, 100,000 cycles', origin: 'by hand', source: c203, given: { ...w3, p_1: 0.07, d_0: 0.014, b_up: 16e6, b_dn: 8e6, n_eq: 1e5 }, symbol: 'D_w', ...printed('0.08677') },
  { check: fatigueBoltHoleTube, about: '55 MPa, half of it back, three quarters of the flange left: 110 MPa, 10,000 cycles', origin: 'by hand', source: c203, given: { ...w3, W_el: 200e-6, A: 40e-4, M_up: 10e3, N_up: 20e3, M_dn: 5e3, N_dn: 10e3, n_h: 1, d_h: 0.03, B: 0.12, n_eq: 1e4 }, symbol: 'D_w', ...printed('0.42774') },
  { check: fatigueBoltTension, about: 'M12 under 16.86 kN: 200 MPa in category 50, 10,000 cycles', origin: 'by hand', source: 'EN 1993-1-9:2005, 7.1', given: { ...category(50, 3), z: 0, A_s: 84.3e-6, F_up: 16.86e3, F_dn: 0, n_eq: 1e4 }, symbol: 'D_w', ...printed('0.320') },
  { check: fatigueBoltTension, about: 'M36: (36/30)^0.25', origin: 'by hand', source: 'EN 1993-1-9:2005, Table 8.1, size effect', memory: true, given: { t_d: 0.036, t_ref: 0.03, k_x: 0.25 }, symbol: 'k_t', ...printed('1.0466') },
  { check: fatigueBoltShear, about: 'M12 under 16.86 kN: 200 MPa in category 100, slope 5, 10,000 cycles', origin: 'by hand', source: 'EN 1993-1-9:2005, 7.1', given: { ...category(100, 5), z: 0, A_s: 84.3e-6, F_up: 16.86e3, F_dn: 0, n_eq: 1e4 }, symbol: 'D_w', ...printed('0.160') },
  { check: fatigueEyeHole, about: 'hole half as wide as the eye: 12.882 − 26.357 + 22.441 − 6.458', origin: 'by hand', source: `${peterson}, round-ended lugs`, memory: true, given: { d_0: 0.04, c_e: 0.02 }, symbol: 'K_t', ...printed('2.51') },
  { check: fatigueWeldPlug, about: 'plugs of 20 mm at 100 mm: 80 MPa is 100 between them, in category 56, 10,000 cycles: (100/56)³ / 200', origin: 'by hand', source: 'AISC 360, Table A-3.1, 8.3 (category E: 56.6 MPa at two million)', memory: true, given: { ...category(56, 3), z: 0, p_near: 0.1, d_p: 0.02, b_up: 80e6, b_dn: 0, n_eq: 1e4 }, symbol: 'D_w', ...printed('0.0285') },
  { check: fatigueWeldPlugShear, about: 'plug of 20 mm under 9.4248 kN, half of it back: 30 and 15 MPa, 100,000 cycles', origin: 'by hand', source: c203, given: { ...w3, d_p: 0.02, F_up: 9424.778, F_dn: 4712.389, n_eq: 1e5 }, symbol: 'D_w', ...printed('0.09761') },
]; // prettier-ignore
