import { bolted, boltInputs } from './bolt-inputs.ts';
import type { Check } from './check.ts';
import { fieldInputs, fieldPlaces } from './field-inputs.ts';
import { constant } from './inputs.ts';

const { p_far, t_w } = boltInputs;

/** Largest distance between the bolts of a row: beyond it the edge gapes and crevices corrode. */
export const boltPitchLargest: Check = {
  id: 'bolt-pitch-largest',
  title: 'Pitch of bolts, largest',
  limitState: 'serviceability',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.3', safety: 'partial factors' },
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'J3.5(b), for weathering steel in the open; taken for sea water here',
      safety: 'allowable stress',
    },
  ],
  places: fieldPlaces,
  applies: bolted,
  once: true,
  detailing: true,
  inputs: {
    p_far,
    t: fieldInputs.t,
    t_w,
    p_lim: { ...constant(200, 'mm', 'limit of the rule', 'EN 1993-1-8 Table 3.3'), only: 'partial factors' },
    p_us: { ...constant(180, 'mm', 'limit of the rule', 'AISC 360 J3.5(b)'), only: 'allowable stress' },
    p_buckle: constant(150, 'mm', 'cap of the second opinion', 'common practice, no source'),
    p_most: constant(200, 'mm', 'largest pitch of either code', 'EN 1993-1-8 Table 3.3'),
  },
  steps: {
    'partial factors': [
      {
        symbol: 'p_max',
        expression: 'min(14 * min(t, t_w), p_lim)',
        unit: 'mm',
        meaning: 'largest pitch, thinner outer part',
      },
    ],
    'allowable stress': [
      {
        symbol: 'p_max',
        expression: 'min(14 * min(t, t_w), p_us)',
        unit: 'mm',
        meaning: 'largest pitch, thinner outer part',
      },
    ],
  },
  demand: 'p_far',
  capacity: 'p_max',
  second: {
    title: 'a strip between bolts does not buckle below nine thicknesses; no code goes beyond 200 mm',
    source: [{ document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.3, note 2' }],
    steps: [
      { symbol: 'p_low', expression: 'min(9 * min(t, t_w), p_buckle)', unit: 'mm', meaning: 'nine thicknesses' },
      { symbol: 'p_high', expression: 'p_most', unit: 'mm', meaning: 'no code goes farther' },
    ],
    of: 'p_max',
    low: 'p_low',
    high: 'p_high',
  },
  cautions: ['Seal the edge all round under water.'],
};
