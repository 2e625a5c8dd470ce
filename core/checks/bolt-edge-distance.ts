import { bolted, boltAt, boltInputs, fixingAt } from './bolt-inputs.ts';
import { missing, type Check, type Input } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';

const { d_0, e_1 } = boltInputs;

/** mm: AISC 360-16 Table J3.4M; and Table J3.4 in inches. */
const metric: Readonly<Record<string, number>> = { M16: 22, M20: 26, M22: 28, M24: 30, M27: 34, M30: 38, M36: 46 };
const inch: Readonly<Record<string, number>> = {
  '1/2 in': 3 / 4,
  '5/8 in': 7 / 8,
  '3/4 in': 1,
  '7/8 in': 9 / 8,
  '1 in': 5 / 4,
};

const e_min: Input = {
  unit: 'mm',
  meaning: 'least edge distance of the bolt in a standard hole',
  from: 'AISC 360 Tables J3.4 and J3.4M',
  only: 'allowable stress',
  read: (model, bay) => {
    const { id } = boltAt(model, bay);
    if (metric[id]) return metric[id] / 1000;
    if (inch[id]) return inch[id] * 0.0254;
    return missing(`the least edge distance of ${id}: AISC 360 Table J3.4 does not list this size`);
  },
};

const C_2: Input = {
  unit: 'mm',
  meaning: 'added for an oversize hole',
  from: 'AISC 360 Tables J3.5 and J3.5M',
  only: 'allowable stress',
  read: (model, bay) => {
    if (fixingAt(model, bay).hole !== 'oversize') return 0;
    const { diameter, series } = boltAt(model, bay);
    if (series === 'inch') return (diameter <= 0.0222251 ? 1 / 16 : 1 / 8) * 0.0254;
    return diameter <= 0.0220001 ? 0.002 : 0.003;
  },
};

/** Least distance from a hole's centre to the panel's edge. */
export const boltEdgeDistance: Check = {
  id: 'bolt-edge-distance',
  title: 'Edge distance of bolts, least',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.3', safety: 'partial factors' },
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'J3.4, Tables J3.4 and J3.4M; C_2 as Tables J3.5 and J3.5M of the 2005 edition',
      safety: 'allowable stress',
    },
  ],
  places: fieldPlaces,
  applies: bolted,
  once: true,
  detailing: true,
  inputs: { e_1: { ...e_1, meaning: "hole's centre to the panel's nearest edge" }, d_0, e_min, C_2 },
  steps: {
    'partial factors': [{ symbol: 'e_req', expression: '1.2 * d_0', unit: 'mm', meaning: 'least edge distance' }],
    'allowable stress': [{ symbol: 'e_req', expression: 'e_min + C_2', unit: 'mm', meaning: 'least edge distance' }],
  },
  demand: 'e_req',
  capacity: 'e_1',
  second: {
    title: 'some steel outside the hole at the least; two diameters of the hole, the rule of older texts, at the most',
    source: [{ document: 'common practice, no source' }],
    steps: [
      { symbol: 'e_low', expression: 'd_0 / 2', unit: 'mm', meaning: 'the hole would touch the edge' },
      { symbol: 'e_high', expression: '2 * d_0', unit: 'mm', meaning: 'two hole diameters' },
    ],
    of: 'e_req',
    low: 'e_low',
    high: 'e_high',
  },
  cautions: ['Measured on the drawing: add the tolerance of cutting and drilling.'],
};
