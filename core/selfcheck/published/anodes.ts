import { anodeCurrentFinal } from '../../checks/anode-current-final.ts';
import { anodeCurrentInitial } from '../../checks/anode-current-initial.ts';
import { anodeMass } from '../../checks/anode-mass.ts';
import { printed } from './printed.ts';
import type { PublishedValue } from './published-value.ts';

const hour = 3600;
const b401 = 'DNV-RP-B401, ';
/** 400 m² coated, category III, 60 m deep, 20 years of 8760 h; anodes of 45 kg, 1 m long, no core. */
const plate = { A_c: 400, A_b: 0 };
const anode = { N: 7, m_a: 45, rho_w: 0.3, dE: 0.25, rho_a: 2700, flush: 0, L: 1, b: 0, d_k: 0, k_d: 1 };

export const anodeValues: readonly PublishedValue[] = [
  { check: anodeMass, about: '400 m², a tenth of it bare, 80 mA/m², 20 years', origin: 'by hand', source: `${b401}7.7`, memory: true, given: { ...plate, i_m: 0.08, f_cm: 0.1, t_f: 20 * 8760 * hour, u: 0.9, epsilon: 2000 * hour }, symbol: 'M_Ed', ...printed('311.47', 'kg') },
  { check: anodeCurrentInitial, about: '400 m², 2 % bare, 170 mA/m²', origin: 'by hand', source: `${b401}7.4`, memory: true, given: { ...plate, i_i: 0.17, f_ci: 0.02 }, symbol: 'I_Ed', ...printed('1.360', 'A') },
  { check: anodeCurrentInitial, about: 'slender anode of 45 kg on 1 m in 0.3 Ω·m: ρ/2πL (ln 4L/r − 1)', origin: 'by hand', source: `${b401}7.9, McCoy’s formula`, memory: true, given: anode, symbol: 'R_a', ...printed('0.1435', 'Ω') },
  { check: anodeCurrentFinal, about: '400 m², 18 % bare, 110 mA/m²', origin: 'by hand', source: `${b401}7.4`, memory: true, given: { ...plate, i_f: 0.11, f_cf: 0.18 }, symbol: 'I_Ed', ...printed('7.920', 'A') },
  { check: anodeCurrentFinal, about: 'the same anode nine tenths used up: 24.3 mm, 0.2122 Ω', origin: 'by hand', source: `${b401}7.9 and 7.10`, memory: true, given: { ...anode, u: 0.9 }, symbol: 'I_a', ...printed('1.178', 'A') },
]; // prettier-ignore
