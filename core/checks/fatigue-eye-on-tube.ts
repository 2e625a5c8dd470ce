import type { Model } from '../model.ts';
import { missing, type Check, type Input, type Missing, type Reading } from './check.ts';
import { eyeAt, eyePlaces, onTube } from './eye-inputs.ts';
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
import { eyeFatigueCaution, isSuspended, steelOfEye } from './fatigue-eye-force.ts';
import { restOfPlate } from './fatigue-swing.ts';
import { tubeStressCaution, tubeStressInputs, tubeStressSteps } from './fatigue-tube-stress.ts';

/** An attachment along the tube, by its length. */
function classAt(model: Model, id: string): DetailClass | Missing {
  const other = steelOfEye(model, id);
  if (other) return other;
  const { eye, tube } = eyeAt(model, id);
  if (eye.footPlate)
    return missing(
      'a class for a wall that a bolted foot pulls at every wave: its bending under the bolts follows none. Weld the eye, or have the foot tested',
    );
  const L = eye.width.si;
  return { category: L <= 0.05 ? 80 : L <= 0.08 ? 71 : L <= 0.1 ? 63 : 56, thickness: tube!.section.nominalWall };
}

/** The inputs of a tube, read at the tube under the eye. */
const underEye: Readonly<Record<string, Input>> = Object.fromEntries(
  Object.entries<Input>(tubeStressInputs).map(([symbol, input]) => [
    symbol,
    {
      ...input,
      read: (model, id, situation) => onTube(model, id, (tube): Reading => input.read(model, tube.id, situation)),
    } satisfies Input,
  ]),
);

/** Crack in the tube's wall at the end of an eye's foot. */
export const fatigueEyeOnTube: Check = {
  ...fatigueCheck,
  id: 'fatigue-eye-on-tube',
  title: 'Fatigue of a tube: end of an eye’s foot',
  source: detailSources('Table 8.4, detail 1, by the length of the foot'),
  places: eyePlaces,
  applies: isSuspended,
  inputs: {
    ...underEye,
    z: restOfPlate,
    ...damageInputs(classAt, 'opposite', () => fatigueEyeOnTube),
  },
  steps: underBoth([...tubeStressSteps(), ...damageSteps('opposite')]),
  second: damageBounds('opposite'),
  cautions: [
    ...fatigueCautions,
    eyeFatigueCaution,
    tubeStressCaution,
    'Bending of the wall itself under the eye comes on top and is not in the nominal stress; a plate through the tube or a pad under the eye takes it away.',
  ],
};
