import type { Check, Step } from './check.ts';
import { simplifiedResistance } from './fillet-steps.ts';
import {
  allowableLineForce,
  handlingCautions,
  panelWeight,
  weldedSides,
  weldGroupCheck,
  weldGroupInputs,
} from './weld-group-inputs.ts';

const forces: readonly Step[] = [
  panelWeight,
  {
    symbol: 'f_v',
    kernel: 'welds.sideLost.inPlane',
    arguments: [...weldedSides, 'W'],
    unit: 'N/mm',
    meaning: 'largest force per length of the weld that is left, elastic group about its centroid, worst side and direction',
  },
]; // prettier-ignore

/** A welded panel hung on edge while handled, one side of its weld lost or not yet made: elastic group in the plane. */
export const weldGroupInPlane: Check = {
  ...weldGroupCheck,
  id: 'weld-group-in-plane',
  title: 'Panel hung on edge with a side of its weld lost',
  source: [
    { document: 'Shigley, Mechanical Engineering Design', clause: 'welded joints in torsion', memory: true },
    { document: '0027/ND Guidelines for Marine Lifting', edition: 'Rev 11', clause: '5.5.1' },
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.3.3, 4.9', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J2.4, J4.2', safety: 'allowable stress', memory: true },
  ],
  inputs: weldGroupInputs(),
  steps: {
    'partial factors': [...forces, simplifiedResistance],
    'allowable stress': [...forces, allowableLineForce],
  },
  demand: 'f_v',
  capacity: 'f_Rd',
  second: {
    title: 'below, the weight on all of the weld; above, on the side opposite the lost one alone, as a beam section',
    source: [{ document: 'equilibrium and beam section of unit throat, derived by hand' }],
    steps: [
      {
        symbol: 'f_low',
        expression: 'W / (2 * n_x * r_x + 2 * n_y * r_y)',
        unit: 'N/mm',
        meaning: 'as if no side were lost',
      },
      {
        symbol: 'f_one_x',
        expression: 'n_x > 0 ? W / (n_x * r_x) * (1 + 3 * b_p / l_x) : 0 * f_low',
        unit: 'N/mm',
        meaning: 'one side along x by itself',
      },
      {
        symbol: 'f_one_y',
        expression: 'n_y > 0 ? W / (n_y * r_y) * (1 + 3 * a_p / l_y) : 0 * f_low',
        unit: 'N/mm',
        meaning: 'one side along y by itself',
      },
      { symbol: 'f_high', expression: 'max(f_one_x, f_one_y)', unit: 'N/mm', meaning: 'the larger' },
    ],
    of: 'f_v',
    low: 'f_low',
    high: 'f_high',
  },
  cautions: handlingCautions,
};
