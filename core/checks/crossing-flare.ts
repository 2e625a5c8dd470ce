import type { HollowSection } from '../catalogue/rows.ts';
import type { Model } from '../model.ts';
import type { Check, Step } from './check.ts';
import { braceAt, crossingPlaces } from './crossing-inputs.ts';

/** Effective throat of a flare bevel weld filled flush, in radii of the curved part. */
export const flareThroat = {
  'stick or self-shielded wire': 5 / 16,
  'gas-shielded wire': 5 / 8,
  'submerged arc': 5 / 16,
} as const;

const table: readonly Step[] = [
  { symbol: 'a_flare', expression: 'k_f * R', unit: 'mm', meaning: 'throat of the flare weld, filled flush' },
];

const flank = (model: Model, id: string): HollowSection => braceAt(model, id).section;

/** Throat of the weld along a tube's rounded flank on the flat of the tube below. */
export const crossingFlare: Check = {
  id: 'crossing-flare',
  title: 'Throat of the flare weld along a stacked tube',
  limitState: 'strength',
  source: [
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'Table J2.2; 5/16 R read in a handbook of structural steel, the other rows from memory',
      memory: true,
    },
    {
      document: 'EN 1993-1-8',
      edition: '2005',
      clause: '4.3.6 and 7.3: throat of a flare weld by trial',
      safety: 'partial factors',
      memory: true,
    },
  ],
  places: crossingPlaces,
  applies: (model, id) => {
    const { flareWeld } = model.document.grid;
    if (model.geometry.arrangement !== 'stacked') return 'the cross tubes are let in: their welds are fillets';
    if (flank(model, id).outerRadius === 0) return 'the tube has sharp corners: its welds are fillets';
    return flareWeld?.proof ? `the throat is proved: ${flareWeld.proof}` : true;
  },
  once: true,
  detailing: true,
  inputs: {
    a_0: {
      unit: 'mm',
      meaning: 'throat as made',
      from: 'document: grid',
      read: (model) => model.document.grid.jointThroat.si,
    },
    R: {
      unit: 'mm',
      meaning: 'outer radius of the corner, or of a round tube',
      from: 'catalogue: sections',
      read: (model, id) => flank(model, id).outerRadius,
    },
    k_f: {
      unit: '1',
      meaning: 'throat over radius, by the welding process; the least where none is stated',
      from: 'document: grid',
      read: (model) => {
        const { flareWeld } = model.document.grid;
        return flareThroat[flareWeld?.process ?? 'stick or self-shielded wire'];
      },
    },
  },
  steps: { 'partial factors': table, 'allowable stress': table },
  demand: 'a_0',
  capacity: 'a_flare',
  range: [
    {
      holds: 'a_0 <= a_flare',
      otherwise:
        'the throat is more than the table gives: prove it by a section through a trial weld ("flareWeld" of the grid), or weld by a process that reaches deeper',
    },
  ],
  second: {
    title: 'geometry: the groove is R deep at the tangent, so no flush throat is larger; a quarter of R at the least',
    source: [{ document: 'derived by hand: circle on its tangent', clause: 'lower bound: common practice, no source' }],
    steps: [
      { symbol: 'a_low', expression: 'R / 4', unit: 'mm', meaning: 'quarter of the radius' },
      { symbol: 'a_high', expression: 'R', unit: 'mm', meaning: 'depth of the groove' },
    ],
    of: 'a_flare',
    low: 'a_low',
    high: 'a_high',
  },
  cautions: [
    'Corner radii differ from mill to mill: measure them before the throat is relied on. A section through a trial weld proves a larger throat.',
  ],
};
