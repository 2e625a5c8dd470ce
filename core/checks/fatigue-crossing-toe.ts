import type { Model } from '../model.ts';
import type { Check, Missing } from './check.ts';
import { chordAt, crossingPlaces } from './crossing-inputs.ts';
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
import { hotSpot } from './fatigue-hot-spot.ts';
import { restOfPlate } from './fatigue-swing.ts';
import { steelOfTube } from './fatigue-tube-stress.ts';

const classAt = (model: Model, id: string): DetailClass | Missing =>
  steelOfTube(model, chordAt(model, id).id) ?? { category: 90, thickness: chordAt(model, id).section.nominalWall };

/** Crack from the weld toe at a crossing into the wall of the main tube. */
export const fatigueCrossingToe: Check = {
  ...fatigueCheck,
  id: 'fatigue-crossing-toe',
  title: 'Fatigue of a crossing: weld toe, into the wall of the main tube',
  source: detailSources('Annex B, Table B.1, detail 7: hot-spot stress, load-carrying fillets, category 90'),
  places: crossingPlaces,
  applies: () => true,
  inputs: {
    s_up: hotSpot('up'),
    s_dn: hotSpot('down'),
    z: restOfPlate,
    ...damageInputs(classAt, 'opposite', () => fatigueCrossingToe),
  },
  steps: underBoth(damageSteps('opposite')),
  second: damageBounds('opposite'),
  cautions: [
    ...fatigueCautions,
    'Where tubes cross, the plate lives on a few welds: have every one of them inspected.',
  ],
};
