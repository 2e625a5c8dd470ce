import { bolted, boltInputs, boltAt } from './bolt-inputs.ts';
import type { Check } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';

const { d, d_0, p_1 } = boltInputs;

/** Least distance between the bolts of a row. */
export const boltPitch: Check = {
  id: 'bolt-pitch',
  title: 'Pitch of bolts, least',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.3', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J3.3, from public summaries', safety: 'allowable stress' },
  ],
  places: fieldPlaces,
  applies: bolted,
  once: true,
  detailing: true,
  inputs: {
    p_1: { ...p_1, meaning: 'smallest pitch' },
    d: { ...d, only: 'allowable stress' },
    d_0,
    d_c: {
      unit: 'mm',
      meaning: 'head across corners, least',
      from: 'catalogue: fasteners',
      read: (model, bay) => boltAt(model, bay).headAcrossCorners,
    },
  },
  steps: {
    'partial factors': [{ symbol: 'p_req', expression: '2.2 * d_0', unit: 'mm', meaning: 'least pitch' }],
    'allowable stress': [{ symbol: 'p_req', expression: '8 / 3 * d', unit: 'mm', meaning: 'least pitch' }],
  },
  demand: 'p_req',
  capacity: 'p_1',
  second: {
    title: 'heads side by side at the least; three diameters of the hole, the usual choice, at the most',
    source: [{ document: 'common practice, no source' }],
    steps: [
      { symbol: 'p_low', expression: 'd_c', unit: 'mm', meaning: 'heads touch' },
      { symbol: 'p_high', expression: '3 * d_0', unit: 'mm', meaning: 'three hole diameters' },
    ],
    of: 'p_req',
    low: 'p_low',
    high: 'p_high',
  },
  cautions: ['Leave room for the spanner and for washers larger than standard.'],
};
