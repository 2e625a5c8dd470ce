import type { Check } from './check.ts';
import { fieldPlaces } from './field-inputs.ts';
import { constant } from './inputs.ts';
import { anyOnCorner, cornerInputs, cornerSources, cornerThroatSteps, gapRange } from './weld-corner-inputs.ts';
import { welded } from './weld-inputs.ts';

/** Weld of a panel whose edge ends on the rounded corner of its tube: what is left of the throat. */
export const weldFlare: Check = {
  id: 'weld-flare',
  title: "Weld of a panel's edge on the tube's corner",
  limitState: 'strength',
  source: [
    ...cornerSources,
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.2(2): 3 mm', safety: 'partial factors' },
  ],
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = welded(model, bay);
    return applies === true ? anyOnCorner(model, bay) : applies;
  },
  once: true,
  detailing: true,
  inputs: { ...cornerInputs, a_3: constant(3, 'mm', 'least throat', 'EN 1993-1-8, 4.5.2(2)') },
  steps: { 'partial factors': cornerThroatSteps, 'allowable stress': cornerThroatSteps },
  demand: 'a_3',
  capacity: 'a_e',
  range: [gapRange],
  second: {
    title: 'no more than the throat as made or shown; no less than it is with all of the gap taken off it',
    source: [{ document: 'geometry of a fillet, derived by hand' }],
    steps: [
      { symbol: 'a_low', expression: 'min(a_0 - g_e, a_f)', unit: 'mm', meaning: 'the whole gap off the throat' },
      { symbol: 'a_high', expression: 'max(a_0, a_t)', unit: 'mm', meaning: 'as made, or as shown' },
    ],
    of: 'a_e',
    low: 'a_low',
    high: 'a_high',
  },
  cautions: [
    'Pressed on, the panel has no flat to heel on and the weld carries it by itself (see its strength). Better lap it onto the flat, past the corner radius.',
    'Corner radii differ from mill to mill: measure them before the lap is cut.',
  ],
}; // prettier-ignore
