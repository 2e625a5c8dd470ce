import type { Check, Step } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { constant } from './inputs.ts';
import { plugCautions, plugged, plugInputs } from './weld-plug-inputs.ts';

const { d_p, t_0 } = plugInputs;

const least: readonly Step[] = [
  { symbol: 'd_min', expression: 't_0 + c_8', unit: 'mm', meaning: 'least diameter' },
  { symbol: 'd_max', expression: 'max(d_min + c_3, 2.25 * t_0)', unit: 'mm', meaning: 'largest diameter' },
];

/** Diameter of a plug weld: wide enough to reach its root, not so wide that it shrinks into cracks. */
export const weldPlugSize: Check = {
  id: 'weld-plug-size',
  title: 'Diameter of plug welds',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.3.5(3)', safety: 'partial factors', memory: true },
    { document: 'AISC 360', edition: '2016', clause: 'J2.3b, from public summaries' },
  ],
  places: fieldPlaces,
  applies: plugged,
  once: true,
  detailing: true,
  inputs: {
    ...{ d_p, t_0 },
    c_8: constant(8, 'mm', 'diameter over the thickness', 'EN 1993-1-8, 4.3.5(3); AISC 360, J2.3b (5/16 in)'),
    c_3: constant(3, 'mm', 'largest diameter over the least', 'AISC 360, J2.3b (1/8 in)'),
  },
  steps: { 'partial factors': least, 'allowable stress': least },
  demand: 'd_min',
  capacity: 'd_p',
  range: [
    {
      holds: 'd_p <= d_max',
      otherwise: 'a plug wider than AISC 360, J2.3b, allows shrinks and cracks: take a smaller one, or a fillet round a hole',
    },
  ], // prettier-ignore
  second: {
    title: 'a hole no wider than the panel is thick cannot be reached by the arc; 13 mm over it is the next size up',
    source: [{ document: 'common practice, no source' }],
    steps: [
      { symbol: 'd_low', expression: 't_0', unit: 'mm', meaning: 'thickness' },
      { symbol: 'd_high', expression: 't_0 + 13 / 8 * c_8', unit: 'mm', meaning: 'thickness and 13 mm' },
    ],
    of: 'd_min',
    low: 'd_low',
    high: 'd_high',
  },
  cautions: plugCautions,
};
