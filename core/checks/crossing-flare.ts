import type { HollowSection } from '../catalogue/rows.ts';
import type { Model } from '../model.ts';
import type { Material } from '../catalogue/rows.ts';
import { missing, type Check, type Reading, type Step } from './check.ts';
import { braceAt, chordAt, crossingPlaces } from './crossing-inputs.ts';

/** Effective throat of a flare bevel weld filled flush, in radii of the curved part. */
const flareThroat = {
  'stick or self-shielded wire': 5 / 16,
  'gas-shielded wire': 5 / 8,
  'submerged arc': 5 / 16,
} as const;

/** Throat over radius by the process that the document states, or the least: a table of steel's processes, so of steel alone. */
export function flareFactor({ document }: Model, materials: readonly Pick<Material, 'family' | 'title'>[]): Reading {
  const other = materials.find(({ family }) => family === 'aluminium');
  return other
    ? missing(`a throat by rule for a flare weld in ${other.title}: the table of throats is one of steel. Prove it by a section through a trial weld`)
    : flareThroat[document.grid.flareWeld?.process ?? 'stick or self-shielded wire'];
} // prettier-ignore

const table: readonly Step[] = [
  { symbol: 'a_flare', expression: 'k_f * R', unit: 'mm', meaning: 'throat of the flare weld, filled flush' },
];

/** The section whose rounding the weld lies in: stacked, the flank of the cross tube; let in, the corner of the main tube. */
const rounded = (model: Model, id: string): HollowSection =>
  (model.geometry.arrangement === 'stacked' ? braceAt(model, id) : chordAt(model, id)).section;

/**
 * True where the end of a tube let in reaches so far round the corner of the main tube that its weld is a flare weld, or why
 * not. Up to 1.6 mm of gap a fillet keeps its leg (AWS D1.1), up to 120° between its faces it is a fillet (EN 1993-1-8,
 * 4.3.2.1: half the radius); both from memory.
 */
function roundCornerOfMain(model: Model, id: string): true | string {
  const [main, cross] = [chordAt(model, id).section, braceAt(model, id).section];
  if (main.shape === 'round' || cross.shape === 'round')
    return 'a round tube has no corners: its weld is a fillet all round';
  const R = main.outerRadius;
  const past = cross.height / 2 - (main.height / 2 - R);
  if (past <= 0) return 'the cross tubes end on the flat of the main tubes: their welds are fillets';
  if (past > R / 2 || R - Math.sqrt(R ** 2 - past ** 2) > 0.0016) return true;
  return 'the cross tubes end on the corners of the main tubes where these still are nearly flat: their welds are fillets';
}

/** Throat of the weld in the groove beside a tube's rounding: along a stacked tube's flank, or level with the corners of a tube that another is let into. */
export const crossingFlare: Check = {
  id: 'crossing-flare',
  title: 'Throat of the flare weld at a crossing',
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
    if (rounded(model, id).outerRadius === 0) return 'the tube has sharp corners: its welds are fillets';
    if (model.geometry.arrangement !== 'stacked') {
      const lands = roundCornerOfMain(model, id);
      if (lands !== true) return lands;
    }
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
      read: (model, id) => rounded(model, id).outerRadius,
    },
    k_f: {
      unit: '1',
      meaning: 'throat over radius, by the welding process; the least where none is stated',
      from: 'document: grid',
      read: (model, id) => flareFactor(model, [chordAt(model, id).material, braceAt(model, id).material]),
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
