import type { Check, Missing } from './check.ts';
import type { Model } from '../model.ts';
import {
  damageBounds,
  damageInputs,
  damageSteps,
  detailSources,
  fatigueCautions,
  fatigueCheck,
  underBoth,
  type DetailClass,
} from './fatigue-damage.ts';
import { restOfPlate } from './fatigue-swing.ts';
import {
  flangeWidth,
  steelOfTube,
  tubeStressCaution,
  tubeStressInputs,
  tubeStressSteps,
} from './fatigue-tube-stress.ts';
import { rowsDrilled, tubeAt, tubeInputs, tubePlaces } from './tube-inputs.ts';

const { n_h, d_h } = tubeInputs;

const classAt = (model: Model, id: string): DetailClass | Missing =>
  steelOfTube(model, id) ?? { category: 90, thickness: tubeAt(model, id).section.nominalWall };

/** Crack from a bolt hole into the wall of a tube. */
export const fatigueBoltHoleTube: Check = {
  ...fatigueCheck,
  id: 'fatigue-bolt-hole-tube',
  title: 'Fatigue of a tube: bolt hole in its wall',
  source: detailSources('Table 8.1, detail 11: element with holes, on the net section, category 90', true),
  places: tubePlaces,
  applies: (model, id) => rowsDrilled(model, id) > 0 || 'no bolt drills this tube',
  inputs: {
    ...tubeStressInputs,
    ...{ n_h, d_h },
    B: flangeWidth,
    z: restOfPlate,
    ...damageInputs(classAt, 'opposite', () => fatigueBoltHoleTube),
  },
  steps: underBoth([...tubeStressSteps('1 - n_h * d_h / B'), ...damageSteps('opposite')]),
  range: [{ holds: 'n_h * d_h < B', otherwise: 'the holes take all of the flange' }],
  second: damageBounds('opposite'),
  cautions: [
    ...fatigueCautions,
    tubeStressCaution,
    'Drill and deburr both faces; seal the hole, or its rim corrodes from inside.',
  ],
};
