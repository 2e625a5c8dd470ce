import type { Model } from '../model.ts';
import { missing, type Check, type Input, type Missing } from './check.ts';
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
import { atBothEnds, restOfPlate } from './fatigue-swing.ts';
import { steelOfTube } from './fatigue-tube-stress.ts';

const classAt = (model: Model, id: string): DetailClass | Missing =>
  steelOfTube(model, chordAt(model, id).id) ??
  steelOfTube(model, crossingAt(model, id).cross) ?? {
    category: 36,
    thickness: chordAt(model, id).section.nominalWall,
  };

/** A flush crossing's force per length of weld; of tubes that lie on each other nobody says how much of the flare weld carries. */
const forces: Readonly<Record<string, Input>> = Object.fromEntries(
  Object.entries(
    atBothEnds(() => crossingThroat, 'f_w', 'f', 'N/mm', 'force per length of the weld, largest round the tube'),
  ).map(([symbol, input]) => [
    symbol,
    {
      ...input,
      read: (model, id, situation) =>
        isFlush(model) === true
          ? input.read(model, id, situation)
          : missing(
              'the force per length of the flare weld between tubes that lie on each other: no published rule says how it is spread. Analyse both walls as shells, or test the joint',
            ),
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
    'The largest forces along the cross tube are taken at every crossing on it.',
    'The face of the main tube gives way in its middle, so the weld’s sides carry more than their share: a throat of the wall’s thickness or more.',
  ],
};
