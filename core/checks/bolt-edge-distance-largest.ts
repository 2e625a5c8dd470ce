import { bolted, boltInputs } from './bolt-inputs.ts';
import type { Check } from './check.ts';
import { fieldInputs, fieldPlaces } from './field-inputs.ts';
import { constant } from './inputs.ts';

const { e_far, t_w } = boltInputs;

/** Largest distance from a hole's centre to the panel's edge: beyond it the edge gapes and crevices corrode. */
export const boltEdgeDistanceLargest: Check = {
  id: 'bolt-edge-distance-largest',
  title: 'Edge distance of bolts, largest',
  limitState: 'serviceability',
  source: [
    {
      document: 'EN 1993-1-8',
      edition: '2005',
      clause: 'Table 3.3, steel exposed to corrosion',
      safety: 'partial factors',
    },
    { document: 'AISC 360', edition: '2016', clause: 'J3.5', safety: 'allowable stress' },
  ],
  places: fieldPlaces,
  applies: bolted,
  once: true,
  detailing: true,
  inputs: {
    e_far,
    t: fieldInputs.t,
    t_w,
    c_e: { ...constant(40, 'mm', 'constant of the rule', 'EN 1993-1-8 Table 3.3'), only: 'partial factors' },
    e_lim: { ...constant(150, 'mm', 'limit of the rule', 'AISC 360 J3.5'), only: 'allowable stress' },
    c_low: constant(100, 'mm', 'cap of the second opinion', 'common practice, no source'),
    c_high: constant(40, 'mm', 'constant of the second opinion', 'EN 1993-1-8 Table 3.3'),
  },
  steps: {
    'partial factors': [
      {
        symbol: 'e_max',
        expression: '4 * min(t, t_w) + c_e',
        unit: 'mm',
        meaning: 'largest edge distance, thinner outer part',
      },
    ],
    'allowable stress': [
      {
        symbol: 'e_max',
        expression: 'min(12 * min(t, t_w), e_lim)',
        unit: 'mm',
        meaning: 'largest edge distance, thinner outer part',
      },
    ],
  },
  demand: 'e_far',
  capacity: 'e_max',
  second: {
    title: 'what the European and the American rule span together, by thickness alone',
    source: [{ document: 'EN 1993-1-8 Table 3.3 and AISC 360 J3.5' }],
    steps: [
      { symbol: 'e_low', expression: 'min(4 * min(t, t_w), c_low)', unit: 'mm', meaning: 'four thicknesses' },
      {
        symbol: 'e_high',
        expression: '12 * min(t, t_w) + c_high',
        unit: 'mm',
        meaning: 'twelve thicknesses and the constant of the European rule',
      },
    ],
    of: 'e_max',
    low: 'e_low',
    high: 'e_high',
  },
  cautions: ['Seal the edge all round under water.'],
};
