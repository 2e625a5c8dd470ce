import type { Model } from '../model.ts';
import type { Check, Missing } from './check.ts';
import { braceAt, chordAt, crossingAt, crossingPlaces } from './crossing-inputs.ts';
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
  steelOfTube(model, chordAt(model, id).id) ??
  steelOfTube(model, crossingAt(model, id).cross) ?? {
    category: 90,
    thickness: Math.max(chordAt(model, id).section.nominalWall, braceAt(model, id).section.nominalWall),
  };

/** Crack from a weld toe at a crossing into the wall of either tube. */
export const fatigueCrossingToe: Check = {
  ...fatigueCheck,
  id: 'fatigue-crossing-toe',
  title: 'Fatigue of a crossing: weld toe, into the wall of a tube',
  source: [
    ...detailSources('Annex B, Table B.1, detail 7: hot-spot stress, load-carrying fillets, category 90'),
    {
      document: 'DNV-RP-C203',
      edition: '2016',
      clause: '4.3: shells without welds, cells of a wall thickness, read at 0.5 t and 1.5 t, effective stress',
      memory: true,
    },
  ],
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
    'Both tubes’ walls are solved as flat shells that meet at their middles, corners sharp, no weld modelled: beside published T-joints the stress comes out 1.0 to 1.6 times as large. On a finer mesh it grows by a tenth where the cross tube hands over its force, by up to 0.4 at the ends of flank welds.',
    'Every tube is taken to run on past the crossing by two and a half times its larger side. A crossing closer to a tube’s end or to another crossing, or an attachment’s force that enters right at it, is not covered: add a diaphragm or an analysis of its own.',
    'Where tubes cross, the plate lives on a few welds: have every one of them inspected.',
  ],
};
