import type { Check, Step } from './check.ts';
import { eyeCautions, eyePulled, eyePlaces } from './eye-inputs.ts';
import { eyeWeld, onFlatRange } from './eye-weld.ts';
import { simplifiedResistance } from './fillet-steps.ts';
import { constant } from './inputs.ts';
import { solvedLegs } from './solved-inputs.ts';

const group: readonly Step[] = [
  { symbol: 'l_w', expression: 'l_0 - 2 * a_w', unit: 'mm', meaning: 'effective length of a fillet, ends left out' },
  {
    symbol: 'l_C',
    kernel: 'welds.foot.length',
    arguments: ['l_w', 'h_e', 'F_z', 'F_l', 'k_theta'],
    unit: 'mm',
    meaning: 'length that one fillet is worth under the pull in the plane of the eye, by the instantaneous centre',
  },
  { symbol: 'F_p', expression: 'sqrt(F_z^2 + F_l^2)', unit: 'kN', meaning: 'pull in the plane of the eye' },
];

const interaction: readonly Step[] = [
  {
    symbol: 'f_q',
    expression: 'sqrt((F_q * h_e / (t_e * l_w))^2 + (F_q / (2 * l_w))^2)',
    unit: 'N/mm',
    meaning: 'force per length of the pull across that plane: one fillet pulled, the other pressed',
  },
  {
    symbol: 'u',
    expression: 'F_p / (2 * l_C * f_Rd) + f_q / f_Rd',
    unit: '1',
    meaning: 'two fillets in the plane, and what the pull across takes of them, added',
  },
  { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
];

/** The two fillets of an eye as a group of welds, followed to the rupture of its first piece. */
export const eyeWeldUltimate: Check = {
  id: 'eye-weld-ultimate',
  title: 'Weld of an eye, by the instantaneous centre',
  limitState: 'strength',
  source: [
    { document: 'AISC 360', edition: '2016', clause: 'J2.4 and commentary: deformation of fillets', memory: true },
    { document: 'AISC Manual', clause: 'Part 8, load not in the plane of the welds: k = 0', memory: true },
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.3.3, 4.9', safety: 'partial factors' },
  ],
  places: eyePlaces,
  applies: eyePulled,
  rule: eyeWeld.rule!,
  inputs: {
    ...eyeWeld.inputs,
    k_theta: constant(0, '1', 'rise of a fillet across its line: none on the wall of a hollow section', 'AISC 360, K5'),
  },
  steps: {
    'partial factors': [...group, simplifiedResistance, ...interaction],
    'allowable stress': [
      ...group,
      {
        symbol: 'f_Rd',
        expression: '0.6 * f_u * min(a_w, t_e / 2) / Omega_J',
        unit: 'N/mm',
        meaning: 'allowable force per length: throat, and half of the plate between the two fillets',
      },
      ...interaction,
    ],
  },
  solved: { inputs: solvedLegs },
  demand: 'u',
  capacity: 'u_Rd',
  range: [{ holds: 'l_w > 0 * l_0', otherwise: 'the weld is shorter than its two ends' }, ...onFlatRange],
  second: {
    title: 'above, the elastic line of weld and a twentieth; below, its whole length without a moment',
    source: [{ document: 'Shigley, Mechanical Engineering Design', clause: 'welded joints in bending', memory: true }],
    steps: [
      {
        symbol: 'f_e',
        expression: 'sqrt((F_z / (2 * l_w) + 3 * F_l * h_e / l_w^2)^2 + (F_l / (2 * l_w))^2)',
        unit: 'N/mm',
        meaning: 'largest force per length in the plane, elastic',
      },
      { symbol: 'u_high', expression: '1.05 * f_e / f_Rd + f_q / f_Rd', unit: '1', meaning: 'elastic' },
      { symbol: 'u_low', expression: 'F_p / (2 * l_w * f_Rd)', unit: '1', meaning: 'no moment' },
    ],
    of: 'u',
    low: 'u_low',
    high: 'u_high',
  },
  cautions: [
    ...eyeCautions,
    'By this method the weld yields before it breaks: it says what the eye holds once, not what it bears at every wave. Where nothing may yield, the elastic check decides.',
  ],
};
