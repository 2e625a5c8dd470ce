import { panelAt } from './field-inputs.ts';
import type { Check, Step } from './check.ts';
import { lineForceSteps, simplifiedResistance } from './fillet-steps.ts';
import { constant } from './inputs.ts';
import {
  allowableLineForce,
  handlingCautions,
  panelWeight,
  weldedSides,
  weldGroupCheck,
  weldGroupInputs,
} from './weld-group-inputs.ts';
import { welded } from './weld-inputs.ts';

const forces: readonly Step[] = [
  panelWeight,
  {
    symbol: 'f_z',
    kernel: 'welds.sideLost.across',
    arguments: [...weldedSides, 'W'],
    unit: 'N/mm',
    meaning: 'largest pull per length of the weld that is left, elastic group square to its plane, worst side',
  },
  { symbol: 'e_r', expression: 'a_w / (2 * sqrt(2))', unit: 'mm', meaning: "panel's edge to the middle of the throat" },
  { symbol: 'm_r', expression: 'f_z * e_r', unit: 'N', meaning: 'moment that opens the root: the pull off the throat' },
  ...lineForceSteps({ along: false, root: true }),
];

/** A welded panel lifted flat, one side of its weld lost: elastic group out of its plane. */
export const weldGroupAcross: Check = {
  ...weldGroupCheck,
  id: 'weld-group-across',
  title: 'Panel lifted flat with a side of its weld lost',
  source: [
    { document: 'Shigley, Mechanical Engineering Design', clause: 'welded joints in bending', memory: true },
    { document: '0027/ND Guidelines for Marine Lifting', edition: 'Rev 11', clause: '5.5.1' },
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.3.3, 4.9, 4.12', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J2.4, J4.2', safety: 'allowable stress', memory: true },
  ],
  applies: (model, bay) => {
    const applies = welded(model, bay);
    if (applies !== true) return applies;
    const sides = new Set(panelAt(model, bay).weldRuns.map(({ side }) => side));
    return (
      sides.size !== 2 || 'the panel is welded on two sides: one by itself holds nothing square to it, so prop the panel'
    );
  },
  inputs: weldGroupInputs({
    f_h: constant(0, 'N/mm', 'pull in the plane of the panel: none while it hangs flat', 'statics'),
  }),
  steps: {
    'partial factors': [...forces, simplifiedResistance],
    'allowable stress': [...forces, allowableLineForce],
  },
  demand: 'f_w',
  capacity: 'f_Rd',
  second: {
    title: 'below, the weight on all of the weld; above, the weight on the shorter pair of sides, its root opened, and twice that',
    source: [{ document: 'equilibrium, derived by hand; compared with elastic groups of 1 : 8 to 8 : 1' }],
    steps: [
      {
        symbol: 'f_all',
        expression: 'W / (2 * n_x * r_x + 2 * n_y * r_y)',
        unit: 'N/mm',
        meaning: 'mean of all of the weld',
      },
      {
        symbol: 'f_pair',
        expression: 'W / (2 * min(n_x * r_x, n_y * r_y))',
        unit: 'N/mm',
        meaning: 'mean of the shorter pair of sides',
      },
      { symbol: 'f_low', expression: '(1 + 3 / sqrt(2)) * f_all', unit: 'N/mm', meaning: 'with the moment of its throat' },
      { symbol: 'f_high', expression: '2 * (1 + 3 / sqrt(2)) * f_pair', unit: 'N/mm', meaning: 'twice the pair, the same' },
    ],
    of: 'f_w',
    low: 'f_low',
    high: 'f_high',
  },
  cautions: handlingCautions,
}; // prettier-ignore
