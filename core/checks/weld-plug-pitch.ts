import type { Check, Step } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { constant } from './inputs.ts';
import { plugCautions, plugged, plugInputs } from './weld-plug-inputs.ts';

const { d_p, t_0, p_near, p_far } = plugInputs;

const least: readonly Step[] = [
  { symbol: 'p_min', expression: '4 * d_p', unit: 'mm', meaning: 'least distance of centres' },
  { symbol: 'p_max', expression: 'min(14 * t_0, p_200)', unit: 'mm', meaning: 'largest distance of centres' },
];

/** Distance of plug welds: no nearer than their heat allows, no further than the panel lies flat between them. */
export const weldPlugPitch: Check = {
  id: 'weld-plug-pitch',
  title: 'Distance of plug welds',
  limitState: 'strength',
  source: [
    { document: 'AISC 360', edition: '2016', clause: 'J2.3b: four diameters', memory: true },
    {
      document: 'EN 1993-1-8',
      edition: '2005',
      clause: '4.3.5(6) and Table 3.3: so near that the panel does not buckle between them',
      safety: 'partial factors',
      memory: true,
    },
  ],
  places: fieldPlaces,
  applies: plugged,
  once: true,
  detailing: true,
  inputs: {
    ...{ d_p, t_0, p_near, p_far },
    p_200: constant(200, 'mm', 'largest distance', 'EN 1993-1-8, Table 3.3'),
  },
  steps: { 'partial factors': least, 'allowable stress': least },
  demand: 'p_min',
  capacity: 'p_near',
  range: [
    {
      holds: 'p_far <= p_max',
      otherwise: 'the plugs stand further apart than Table 3.3 of EN 1993-1-8 lets fasteners: the panel may gape between them',
    },
  ], // prettier-ignore
  second: {
    title: 'two diameters leave one of panel between plugs; six is more than any rule asks',
    source: [{ document: 'common practice, no source' }],
    steps: [
      { symbol: 'p_low', expression: '2 * d_p', unit: 'mm', meaning: 'two diameters' },
      { symbol: 'p_high', expression: '6 * d_p', unit: 'mm', meaning: 'six diameters' },
    ],
    of: 'p_min',
    low: 'p_low',
    high: 'p_high',
  },
  cautions: plugCautions,
};
