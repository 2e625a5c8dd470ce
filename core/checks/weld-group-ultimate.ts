import type { Check, Step } from './check.ts';
import { simplifiedResistance } from './fillet-steps.ts';
import { basisFactor, constant } from './inputs.ts';
import {
  allowableLineForce,
  handlingCautions,
  panelPlaces,
  panelWeight,
  panelWeightInputs,
  weldedSides,
  weldGroupInputs,
} from './weld-group-inputs.ts';
import { weldRule, weldStrengthInputs, welded } from './weld-inputs.ts';

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
  id: 'weld-group-ultimate',
  title: 'Panel hung on edge with a side of its weld lost, by the instantaneous centre',
  limitState: 'handling',
  source: [
    { document: 'AISC 360', edition: '2016', clause: 'J2.4 and commentary: deformation of fillets', memory: true },
    { document: '0027/ND Guidelines for Marine Lifting', edition: 'Rev 11', clause: '5.5.1' },
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.3.3, 4.9', safety: 'partial factors' },
  ],
  places: panelPlaces,
  applies: welded,
  once: true,
  rule: weldRule,
  inputs: {
    ...weldGroupInputs,
    ...panelWeightInputs,
    ...weldStrengthInputs,
    k_theta: constant(0, '1', 'rise of a fillet across its line: none on the wall of a hollow section', 'AISC 360, K5'),
    gamma_M2: basisFactor('gamma_M2', 'partial factor on welds', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on welds and rupture', 'allowable stress'),
    Omega_v: basisFactor('Omega_v', 'safety factor on yielding in shear', 'allowable stress'),
  },
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
