import { bolted, boltAt, boltInputs, fixingAt, isSlotted } from './bolt-inputs.ts';
import { missing, type Check, type Input } from './check.ts';
import { fieldPlaces, panelAt } from './field-inputs.ts';

const { d_0 } = boltInputs;

/** AISC counts from the slot's centre and adds C_2; EN 1993-1-8 from the centre of its round end (e_3, e_4). */
const e_1: Input = {
  unit: 'mm',
  meaning: "hole's centre (EN 1993: of a slot, the centre of its round end) to the panel's nearest edge",
  from: 'geometry',
  read: (model, bay, situation) => {
    const { bolts } = panelAt(model, bay);
    return model.basis.safety === 'partial factors' || bolts.length === 0
      ? boltInputs.e_1.read(model, bay, situation)
      : Math.min(...bolts.flatMap(({ edge1, edge2 }) => [edge1, edge2]));
  },
};

const k_e: Input = {
  unit: '1',
  meaning: 'in hole widths: round holes 1.2, slots 1.5',
  from: 'EN 1993-1-8, Table 3.3',
  only: 'partial factors',
  read: (model, bay) => (isSlotted(fixingAt(model, bay)) ? 1.5 : 1.2),
};

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

/** m, by the diameter of the bolt: AISC 360-05 Tables J3.5 and J3.5M, from public copies. */
const stepsOfC2 = {
  inch: [
    { upTo: (7 / 8) * 0.0254, oversize: 0.0254 / 16, shortSlot: 0.0254 / 8 },
    { upTo: 0.0254, oversize: 0.0254 / 8, shortSlot: 0.0254 / 8 },
    { upTo: Infinity, oversize: 0.0254 / 8, shortSlot: (3 * 0.0254) / 16 },
  ],
  metric: [
    { upTo: 0.022, oversize: 0.002, shortSlot: 0.003 },
    { upTo: 0.024, oversize: 0.003, shortSlot: 0.003 },
    { upTo: Infinity, oversize: 0.003, shortSlot: 0.005 },
  ],
} as const;

const C_2: Input = {
  unit: 'mm',
  meaning: 'added for an oversize hole or a slot that points at the edge (at the end of a row one does)',
  from: 'AISC 360 Tables J3.5 and J3.5M',
  only: 'allowable stress',
  read: (model, bay) => {
    const { hole } = fixingAt(model, bay);
    const { diameter, series } = boltAt(model, bay);
    if (hole === 'long slot') return 0.75 * diameter;
    if (hole !== 'oversize' && hole !== 'short slot') return 0;
    const step = stepsOfC2[series].find(({ upTo }) => diameter <= upTo + 1e-7)!;
    return hole === 'oversize' ? step.oversize : step.shortSlot;
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
  inputs: { e_1, d_0, k_e, e_min, C_2 },
  steps: {
    'partial factors': [{ symbol: 'e_req', expression: 'k_e * d_0', unit: 'mm', meaning: 'least edge distance' }],
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
