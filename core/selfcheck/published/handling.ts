import { hangingStability } from '../../checks/hanging-stability.ts';
import { liftDrain } from '../../checks/lift-drain.ts';
import { liftLine } from '../../checks/lift-line.ts';
import { liftLoweringSpeed } from '../../checks/lift-lowering-speed.ts';
import { liftShackle } from '../../checks/lift-shackle.ts';
import { liftSlack } from '../../checks/lift-slack.ts';
import { liftSling } from '../../checks/lift-sling.ts';
import { suspensionSlack } from '../../checks/suspension-slack.ts';
import { printed } from './printed.ts';
import type { PublishedValue } from './published-value.ts';

const nd = '0027/ND Guidelines for Marine Lifting, Rev 11, ';
const n103 = 'DNV-RP-N103, 0.9 of the static weight';
/** 12 t at 1.3 and 9.81 m/s² on four legs at 60°: 1/(4 sin 60°) each; skew 1.25. */
const legs = { F_h: 1.3 * 12_000 * 9.81, k_leg: 1 / (4 * Math.sin(Math.PI / 3)), k_SKL: 1.25 };

export const handlingValues: readonly PublishedValue[] = [
  { check: suspensionSlack, about: '100 kN of weight in water, known within 5 %', origin: 'by hand', source: n103, memory: true, given: { W: 100e3, i_W: 0.05, k_slack: 0.9 }, symbol: 'W_Rd', ...printed('85.5', 'kN') },
  { check: liftLine, about: 'wire of 500 kN at five times the load', origin: 'by hand', source: 'EN 13414-1', memory: true, given: { F_br: 500e3, k_d: 5 }, symbol: 'F_max', ...printed('100.0', 'kN') },
  { check: liftSling, about: 'wire with a steel ferrule: 1.3 · 1.3 · 1.5 · 1.12', origin: 'by hand', source: `${nd}7.3.1`, given: { g_f: 1.3, g_c: 1.3, g_w: 1, g_m: 1.5, g_r: 1.12, k_min: 2.3 }, symbol: 'k_s', ...printed('2.84') },
  { check: liftSling, about: 'four legs at 60° under 12 t at 1.3, skew 1.25', origin: 'by hand', source: `${nd}5.6.12`, given: legs, symbol: 'F_s', ...printed('55.22', 'kN') },
  { check: liftShackle, about: 'the same pull on its shackle', origin: 'by hand', source: 'statics of four legs', given: legs, symbol: 'F_s', ...printed('55.22', 'kN') },
  { check: liftSlack, about: '80 kN of least weight', origin: 'by hand', source: n103, memory: true, given: { F_st: 80e3, k_slack: 0.9 }, symbol: 'F_max', ...printed('72.0', 'kN') },
  { check: liftLoweringSpeed, about: '50 kN in water, 40 m² at C_D = 2: four fifths of √(2 W/ρ C_D A)', origin: 'by hand', source: 'drag equation', given: { W_w: 50e3, rho: 1025, C_D: 2, A_p: 40, k_v: 0.8 }, symbol: 'v_max', ...printed('0.883', 'm/s') },
  { check: liftDrain, about: '0.04 m² of water 200 mm deep through two holes of 30 mm, 0.6', origin: 'by hand', source: 'Torricelli’s law', given: { A: 0.04, h_0: 0.2, a_h: (2 * Math.PI * 0.03 ** 2) / 4, C_d: 0.6, g: 9.80665 }, symbol: 't', ...printed('9.52', 's') },
  { check: hangingStability, about: '60 mm beside the line, hung 1.5 m above: arctan 0.04', origin: 'by hand', source: 'statics of a hanging body', given: { e: 0.06, h_G: 1.5 }, symbol: 'phi_high', ...printed('2.291', '°') },
]; // prettier-ignore
