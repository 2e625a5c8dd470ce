import type { Model } from '../model.ts';
import type { Check, Input, Missing } from './check.ts';
import { chordAt, crossingAt, crossingPlaces, isFlush } from './crossing-inputs.ts';
import { crossingThroat } from './crossing-throat.ts';
import { crossingWeldInputs } from './crossing-weld-inputs.ts';
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
import { flankForce } from './fatigue-hot-spot.ts';
import { atBothEnds, restOfPlate } from './fatigue-swing.ts';
import { steelOfTube } from './fatigue-tube-stress.ts';

const classAt = (model: Model, id: string): DetailClass | Missing =>
  steelOfTube(model, chordAt(model, id).id) ??
  steelOfTube(model, crossingAt(model, id).cross) ?? {
    category: 36,
    thickness: chordAt(model, id).section.nominalWall,
  };

/** A flush crossing's force per length of weld by its ring; that of the flanks of tubes that lie on each other from their walls. */
const forces: Readonly<Record<string, Input>> = Object.fromEntries(
  Object.entries(
    atBothEnds(() => crossingThroat, 'f_w', 'f', 'N/mm', 'largest force per length of the weld', restOfPlate),
  ).map(([symbol, input]) => [
    symbol,
    {
      ...input,
      read: (model, id, situation) =>
        (isFlush(model) === true ? input : flankForce(symbol === 'f_up' ? 'up' : 'down')).read(model, id, situation),
    } satisfies Input,
  ]),
);

/** Crack from the root of a crossing's weld through its throat. */
export const fatigueCrossingRoot: Check = {
  ...fatigueCheck,
  id: 'fatigue-crossing-root',
  title: 'Fatigue of a crossing: weld root, through the throat',
  source: detailSources('5(6); Table 8.5, detail 3, category 36'),
  places: crossingPlaces,
  applies: () => true,
  inputs: {
    ...forces,
    a_w: crossingWeldInputs.a_w,
    z: restOfPlate,
    ...damageInputs(classAt, 'opposite', () => fatigueCrossingRoot),
  },
  steps: underBoth([
    { symbol: 's_up', expression: 'f_up / a_w', unit: 'MPa', meaning: 'stress on the throat, force up' },
    { symbol: 's_dn', expression: 'f_dn / a_w', unit: 'MPa', meaning: 'stress on the throat, force down' },
    ...damageSteps('opposite'),
  ]),
  second: damageBounds('opposite'),
  cautions: [
    ...fatigueCautions,
    'Of a flush crossing the largest forces along the cross tube are taken at every crossing on it; of tubes that lie on each other those at the crossing, spread over the flanks by both walls as shells.',
    'The face of the main tube gives way in its middle, so the weld’s sides carry more than their share: a throat of the wall’s thickness or more.',
  ],
};
