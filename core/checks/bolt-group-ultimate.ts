import { bolted, boltForceInputs } from './bolt-inputs.ts';
import { hungInputs, hungWeight } from './bolt-group-in-plane.ts';
import { boltShearInputs, boltShearResistance } from './bolt-shear.ts';
import type { Check, Step } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';

const { a_b, b_b, n_x, n_y } = boltForceInputs;

const group: readonly Step[] = [
  {
    symbol: 'C',
    kernel: 'bolts.rowLost.coefficient',
    arguments: ['a_b', 'b_b', 'n_x', 'n_y'],
    unit: '1',
    meaning: 'number of bolts that those left are worth, by their instantaneous centre, worst row and direction',
  },
  { symbol: 'P_Rd', expression: 'C * F_v_Rd', unit: 'kN', meaning: 'weight that they carry' },
];

/** The same panel hung on edge as the elastic group, its bolts followed to the rupture of the farthest. */
export const boltGroupUltimate: Check = {
  id: 'bolt-group-ultimate',
  title: 'Panel hung on edge with a row of bolts lost, by the instantaneous centre',
  limitState: 'handling',
  source: [
    { document: 'AISC Manual', clause: 'Part 7, instantaneous centre of rotation of bolt groups', memory: true },
    { document: '0027/ND Guidelines for Marine Lifting', edition: 'Rev 11', clause: '5.5.1' },
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.4', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J3.6, read in the edition of 2010', safety: 'allowable stress' },
  ],
  places: fieldPlaces,
  applies: bolted,
  once: true,
  inputs: {
    ...{ a_b, b_b, n_x, n_y },
    ...hungInputs,
    ...boltShearInputs,
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on bolts', 'allowable stress'),
  },
  steps: {
    'partial factors': [hungWeight, ...boltShearResistance['partial factors'], ...group],
    'allowable stress': [hungWeight, ...boltShearResistance['allowable stress'], ...group],
  },
  demand: 'W',
  capacity: 'P_Rd',
  second: {
    title:
      'Resistance: below, the elastic group less a twentieth (groups of few bolts fall that far below it); above, every bolt that is left at its strength',
    source: [
      { document: 'Shigley, Mechanical Engineering Design', clause: 'joints with eccentric loading', memory: true },
    ],
    steps: [
      {
        symbol: 'F_1',
        kernel: 'bolts.rowLost.inPlane',
        arguments: ['a_b', 'b_b', 'n_x', 'n_y', 'W'],
        unit: 'kN',
        meaning: 'largest shear of the elastic group',
      },
      { symbol: 'P_low', expression: '0.95 * F_v_Rd * W / F_1', unit: 'kN', meaning: 'weight of the elastic group' },
      {
        symbol: 'P_high',
        expression: '(2 * n_x + 2 * n_y - 4 - min(n_x, n_y)) * F_v_Rd',
        unit: 'kN',
        meaning: 'all bolts that are left, no moment',
      },
    ],
    of: 'P_Rd',
    low: 'P_low',
    high: 'P_high',
  },
  cautions: [
    'Bolts that share a load by the instantaneous centre have slipped and bent: replace them after such a lift. Where nothing may move, the elastic group decides.',
    'Nobody stands under a panel that hangs. Lift by the pad eyes, not by the bolts.',
  ],
};
