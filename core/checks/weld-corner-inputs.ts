import type { Bearing } from '../geometry/geometry.ts';
import type { Model } from '../model.ts';
import { missing, type Input, type Reading, type Step } from './check.ts';
import { flareFactor } from './crossing-flare.ts';
import { constant } from './inputs.ts';
import { tubeAt } from './tube-inputs.ts';
import { onCorner, partsAt, throatLoss, weldAt, weldedSides } from './weld-inputs.ts';

/** Welded sides whose edge ends on the rounding of its tube. */
const onCorners = (model: Model, bay: string): readonly Bearing[] =>
  weldedSides(model, bay).filter((side) => onCorner(model, side));

/** True where an edge of the panel is welded on a tube's corner, or why not. Only asked of welded panels. */
export const anyOnCorner = (model: Model, bay: string): true | string =>
  onCorners(model, bay).length > 0 || "the panel's edges lie on the flats of their tubes";

/** Of the sides on corners: the smaller radius with the larger distance, which belong together where the tubes are alike. */
const least = (model: Model, bay: string): Reading => {
  const radii = onCorners(model, bay).map(({ tube }) => tubeAt(model, tube).section.outerRadius);
  return radii.length > 0 ? Math.min(...radii) : missing('an edge of the panel on the corner of its tube');
};

function farthest(model: Model, bay: string): Reading {
  const s = Math.max(...onCorners(model, bay).map(({ flatLap }) => Math.abs(flatLap)));
  const R = least(model, bay);
  return typeof R === 'number' && s > R
    ? missing('a throat on the corner: the edge ends farther from the flat than the smaller radius of its tubes. Lap it past the radius') // prettier-ignore
    : s;
}

const proofOf = (model: Model, bay: string): number => weldAt(model, bay).cornerThroat?.value.si ?? 0;

/** What is left of the throat of a weld on a tube's corner follows from these, by symbol. */
export const cornerInputs = {
  a_0: {
    unit: 'mm',
    meaning: 'throat as made',
    from: 'document: fixing',
    read: (model, bay) => weldAt(model, bay).throat.si,
  },
  R: { unit: 'mm', meaning: 'outer radius of the corner, or of a round tube', from: 'catalogue: sections', read: least },
  s: { unit: 'mm', meaning: 'edge of the panel to the flat of the tube, or to the crown of a round one', from: 'geometry', read: farthest },
  k_f: {
    unit: '1',
    meaning: 'throat over radius, by the welding process; the least where none is stated',
    from: 'document: grid',
    // With a throat shown by a section the table is not asked.
    read: (model, bay) => flareFactor(model, proofOf(model, bay) > 0 ? [] : partsAt(model, bay).map(({ material }) => material)),
  },
  a_t: {
    unit: 'mm',
    meaning: 'throat shown by a section through a trial weld; 0: none',
    from: 'document: fixing',
    read: proofOf,
  },
  g_5: constant(5, 'mm', 'largest gap of a fillet weld', 'AWS D1.1, from memory'),
} as const satisfies Readonly<Record<string, Input>>; // prettier-ignore

export const cornerLoss: Input = {
  unit: 'mm',
  meaning: 'lost of the throat by the end of life',
  from: 'document: corrosion',
  read: throatLoss,
};

/** From the gap under the edge to the throat a_e. */
export const cornerThroatSteps: readonly Step[] = [
  { symbol: 'g_e', expression: 'R - sqrt(R^2 - s^2)', unit: 'mm', meaning: 'gap between edge and corner' },
  { symbol: 'a_g', expression: 'a_0 - g_e / sqrt(2)', unit: 'mm', meaning: 'throat of a fillet whose leg loses the gap' },
  { symbol: 'a_f', expression: 'k_f * R', unit: 'mm', meaning: 'throat of a flare weld filled flush' },
  { symbol: 'a_e', expression: 'a_t > 0 * a_0 ? a_t : min(a_g, a_f)', unit: 'mm', meaning: 'throat that is left: as shown by a section, or the smaller' },
]; // prettier-ignore

/** Where the rule for the gap holds; a section through a trial weld shows more than any rule. */
export const gapRange = {
  holds: 'a_t > 0 * a_0 or g_e <= g_5',
  otherwise:
    'the edge stands more than 5 mm off the corner: no fillet closes that gap. Lap the panel onto the flat of the tube, or show the throat by a section through a trial weld',
} as const;

export const cornerSources = [
  { document: 'AISC 360', edition: '2016', clause: 'Table J2.2: throat of flare bevel welds by radius', memory: true },
  { document: 'AWS D1.1', clause: 'assembly of fillet welds: the leg grows by the gap, 5 mm at the most', memory: true },
] as const; // prettier-ignore
