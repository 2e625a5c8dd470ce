import type { Bearing } from '../geometry/geometry.ts';
import type { Model } from '../model.ts';
import { missing, type Check, type Input, type Step } from './check.ts';
import { flareThroat } from './crossing-flare.ts';
import { fieldPlaces, panelAt } from './field-inputs.ts';
import { constant } from './inputs.ts';
import { tubeAt } from './tube-inputs.ts';
import { weldAt, welded } from './weld-inputs.ts';

const radiusOf = (model: Model, { tube }: Bearing): number => tubeAt(model, tube).section.outerRadius;

/** Welded sides whose edge ends within the corner radius of its tube, the one that ends farthest from the flat first. */
const onRadius = (model: Model, bay: string): readonly Bearing[] =>
  panelAt(model, bay)
    .bearings.filter((side) => side.fixed && side.lap >= 0 && side.flatLap < 0)
    .sort((one, other) => one.flatLap - other.flatLap);

const ofWorst =
  (value: (model: Model, side: Bearing) => number): Input['read'] =>
  (model, bay) => {
    const [worst] = onRadius(model, bay);
    return worst ? value(model, worst) : missing('an edge of the panel on the corner of its tube');
  };

const throat: readonly Step[] = [
  { symbol: 's', expression: 'R - l_a', unit: 'mm', meaning: 'edge of the panel to the flat of the tube' },
  { symbol: 'g_e', expression: 'R - sqrt(R^2 - s^2)', unit: 'mm', meaning: 'gap between edge and corner' },
  { symbol: 'a_g', expression: 'a_0 - g_e / sqrt(2)', unit: 'mm', meaning: 'throat of a fillet whose leg loses the gap' },
  { symbol: 'a_f', expression: 'k_f * R', unit: 'mm', meaning: 'throat of a flare weld filled flush' },
  { symbol: 'a_e', expression: 'min(a_g, a_f)', unit: 'mm', meaning: 'throat that is left' },
]; // prettier-ignore

/** Weld of a panel whose edge ends on the rounded corner of its tube: what is left of the throat. */
export const weldFlare: Check = {
  id: 'weld-flare',
  title: "Weld of a panel's edge on the tube's corner",
  limitState: 'strength',
  source: [
    { document: 'AISC 360', edition: '2016', clause: 'Table J2.2: throat of flare bevel welds by radius', memory: true },
    { document: 'AWS D1.1', clause: 'assembly of fillet welds: the leg grows by the gap, 5 mm at the most', memory: true },
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.2(2): 3 mm', safety: 'partial factors' },
  ],
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = welded(model, bay);
    if (applies !== true) return applies;
    return onRadius(model, bay).length > 0 || "the panel's edges lie on the flats of their tubes";
  },
  once: true,
  detailing: true,
  inputs: {
    a_0: {
      unit: 'mm',
      meaning: 'throat as made',
      from: 'document: fixing',
      read: (model, bay) => weldAt(model, bay).throat.si,
    },
    R: { unit: 'mm', meaning: 'outer radius of the corner', from: 'catalogue: sections', read: ofWorst(radiusOf) },
    l_a: { unit: 'mm', meaning: "lap of the panel, from the tube's side", from: 'geometry', read: ofWorst((_, { lap }) => lap) },
    k_f: {
      unit: '1',
      meaning: 'throat over radius, by the welding process; the least where none is stated',
      from: 'document: grid',
      read: (model) => flareThroat[model.document.grid.flareWeld?.process ?? 'stick or self-shielded wire'],
    },
    a_3: constant(3, 'mm', 'least throat', 'EN 1993-1-8, 4.5.2(2)'),
    g_5: constant(5, 'mm', 'largest gap of a fillet weld', 'AWS D1.1'),
  },
  steps: { 'partial factors': throat, 'allowable stress': throat },
  demand: 'a_3',
  capacity: 'a_e',
  range: [
    {
      holds: 'g_e <= g_5',
      otherwise: 'the edge stands more than 5 mm off the corner: no fillet closes that gap. Lap the panel onto the flat of the tube',
    },
  ],
  second: {
    title: 'no more than the throat as made; no less than it is with all of the gap taken off it',
    source: [{ document: 'geometry of a fillet, derived by hand' }],
    steps: [
      { symbol: 'a_low', expression: 'min(a_0 - g_e, a_f)', unit: 'mm', meaning: 'the whole gap off the throat' },
      { symbol: 'a_high', expression: 'a_0', unit: 'mm', meaning: 'as made' },
    ],
    of: 'a_e',
    low: 'a_low',
    high: 'a_high',
  },
  cautions: [
    'What such a weld carries cannot be judged here: pressed on, the panel has no flat to heel on. Lap it onto the flat, past the corner radius.',
    'Corner radii differ from mill to mill: measure them before the lap is cut.',
  ],
}; // prettier-ignore
