import type { Check, Step } from './check.ts';
import { simplifiedResistance } from './fillet-steps.ts';
import { constant } from './inputs.ts';
import {
  allowableLineForce,
  handlingCautions,
  panelWeight,
  weldedSides,
  weldGroupCheck,
  weldGroupInputs,
} from './weld-group-inputs.ts';

const group: readonly Step[] = [
  {
    symbol: 'l_C',
    kernel: 'welds.sideLost.length',
    arguments: [...weldedSides, 'k_theta'],
    unit: 'mm',
    meaning: 'length of weld that what is left is worth, by its instantaneous centre, worst side and direction',
  },
  { symbol: 'P_Rd', expression: 'l_C * f_Rd', unit: 'kN', meaning: 'weight that it carries' },
];

/** The same panel hung on edge as the elastic group of welds, followed to the rupture of its first piece. */
export const weldGroupUltimate: Check = {
  ...weldGroupCheck,
  id: 'weld-group-ultimate',
  title: 'Panel hung on edge with a side of its weld lost, by the instantaneous centre',
  source: [
    { document: 'AISC 360', edition: '2016', clause: 'J2.4 and commentary: deformation of fillets', memory: true },
    { document: '0027/ND Guidelines for Marine Lifting', edition: 'Rev 11', clause: '5.5.1' },
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.3.3, 4.9', safety: 'partial factors' },
  ],
  inputs: weldGroupInputs({
    k_theta: constant(0, '1', 'rise of a fillet across its line: none on the wall of a hollow section', 'AISC 360, K5'),
  }),
  steps: {
    'partial factors': [panelWeight, simplifiedResistance, ...group],
    'allowable stress': [panelWeight, allowableLineForce, ...group],
  },
  demand: 'W',
  capacity: 'P_Rd',
  second: {
    title: 'below, the elastic group less a twentieth; above, all of the weld that can be left at its strength',
    source: [{ document: 'Shigley, Mechanical Engineering Design', clause: 'welded joints in torsion', memory: true }],
    steps: [
      {
        symbol: 'f_1',
        kernel: 'welds.sideLost.inPlane',
        arguments: [...weldedSides, 'W'],
        unit: 'N/mm',
        meaning: 'largest force per length of the elastic group',
      },
      { symbol: 'P_low', expression: '0.95 * f_Rd * W / f_1', unit: 'kN', meaning: 'weight of the elastic group' },
      {
        symbol: 'P_high',
        expression: '(2 * n_x * r_x + 2 * n_y * r_y) * f_Rd',
        unit: 'kN',
        meaning: 'all of the weld, no moment',
      },
    ],
    of: 'P_Rd',
    low: 'P_low',
    high: 'P_high',
  },
  cautions: [
    'A weld that shares its load by the instantaneous centre has yielded: inspect it after such a lift. Where nothing may move, the elastic group decides.',
    ...handlingCautions,
  ],
};
