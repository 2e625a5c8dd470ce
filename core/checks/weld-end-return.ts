import { roomForReturn, weldEndsOf } from '../geometry/weld-returns-of.ts';
import type { Model } from '../model.ts';
import { missing, type Check, type Step } from './check.ts';
import { fieldPlaces, panelAt } from './field-inputs.ts';
import { weldAt, welded } from './weld-inputs.ts';

const notchAt = (model: Model, bay: string): number => panelAt(model, bay).design.cornerNotch?.si ?? 0;

const twoLegs: readonly Step[] = [
  { symbol: 'r_min', expression: '2 * sqrt(2) * a_0', unit: 'mm', meaning: 'least return: two legs' },
];

/** Welds that end at a corner are taken round it: a start or stop there is where a crack begins. */
export const weldEndReturn: Check = {
  id: 'weld-end-return',
  title: 'Weld returned round its corners',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.3.2.1(4)', safety: 'partial factors', memory: true },
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'J2.2b: twice the weld size, under cyclic force',
      safety: 'allowable stress',
      memory: true,
    },
  ],
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = welded(model, bay);
    if (applies !== true) return applies;
    return (
      weldEndsOf(panelAt(model, bay).weldRuns, notchAt(model, bay)).length > 0 ||
      'the weld closes on itself: it has no end at a corner'
    );
  },
  once: true,
  detailing: true,
  rule: (model, bay) =>
    weldAt(model, bay).endReturn
      ? undefined
      : 'the weld starts or stops at a corner of the panel, and no return is stated ("endReturn" of the fixing): a crack begins there when the load turns round',
  inputs: {
    a_0: {
      unit: 'mm',
      meaning: 'throat as made',
      from: 'document: fixing',
      read: (model, bay) => weldAt(model, bay).throat.si,
    },
    r_e: {
      unit: 'mm',
      meaning: 'length of the return',
      from: 'document: fixing',
      read: (model, bay) => weldAt(model, bay).endReturn?.si ?? missing('the length of the end returns'),
    },
    l_r: {
      unit: 'mm',
      meaning: "room for it round the corner: the lap on the tube's flat, or the notch",
      from: 'geometry',
      read: (model, bay) => roomForReturn(panelAt(model, bay).bearings, notchAt(model, bay)),
    },
  },
  steps: { 'partial factors': twoLegs, 'allowable stress': twoLegs },
  demand: 'r_min',
  capacity: 'r_e',
  range: [
    {
      holds: 'r_e <= l_r',
      otherwise: 'the return runs past the flat of the tube, or past the notch: it has nothing to lie on there',
    },
  ],
  second: {
    title: 'a return shorter than the weld’s own leg is none; four legs is the longest that AISC 360 asks about',
    source: [{ document: 'AISC 360', edition: '2016', clause: 'J2.2b', memory: true }],
    steps: [
      { symbol: 'r_low', expression: 'sqrt(2) * a_0', unit: 'mm', meaning: 'one leg' },
      { symbol: 'r_high', expression: '4 * sqrt(2) * a_0', unit: 'mm', meaning: 'four legs' },
    ],
    of: 'r_min',
    low: 'r_low',
    high: 'r_high',
  },
  cautions: [
    'Start and stop on the straight, not within two legs of a corner, and weld round the corner without a break.',
    'A return is full size and is not counted in the strength.',
  ],
};
