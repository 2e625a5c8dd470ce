import type { Panel } from '../geometry/geometry.ts';
import type { Model } from '../model.ts';
import type { Check, Missing } from './check.ts';
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
import { steelOfTube, tubeStressCaution, tubeStressInputs, tubeStressSteps } from './fatigue-tube-stress.ts';
import { tubeAt, tubePlaces } from './tube-inputs.ts';

const weldedTo = (model: Model, tube: string): readonly Panel[] =>
  [...model.panels.values()].filter(
    ({ design, bearings }) =>
      design.fixing.kind === 'welded' && bearings.some((side) => side.tube === tube && side.fixed),
  );

/** End zone of a plate welded along a flange: by the wall's thickness, and one row lower for a plate as thick or thicker. */
function classAt(model: Model, id: string): DetailClass | Missing {
  const other = steelOfTube(model, id);
  if (other) return other;
  const wall = tubeAt(model, id).section.nominalWall;
  const thick = weldedTo(model, id).some(({ thickness }) => thickness >= wall);
  const rows = [56, 50, 45, 40, 36] as const;
  const row = (wall <= 0.02 ? 0 : wall <= 0.03 ? 1 : wall <= 0.05 ? 2 : 3) + (thick ? 1 : 0);
  return { category: rows[row]!, thickness: wall };
}

/** Crack in the tube's wall at the end of a panel's weld: the panel is a cover plate on the tube. */
export const fatigueWeldEnd: Check = {
  ...fatigueCheck,
  id: 'fatigue-weld-end',
  title: 'Fatigue of a tube: end of a panel’s weld',
  source: detailSources('Table 8.5, detail 6, categories 56 to 36'),
  places: tubePlaces,
  applies: (model, id) => weldedTo(model, id).length > 0 || 'no panel is welded to this tube',
  inputs: {
    ...tubeStressInputs,
    z: restOfPlate,
    ...damageInputs(classAt, 'opposite', () => fatigueWeldEnd),
  },
  steps: underBoth([...tubeStressSteps(), ...damageSteps('opposite')]),
  second: damageBounds('opposite'),
  cautions: [
    ...fatigueCautions,
    tubeStressCaution,
    'Bending of the wall itself under the panel’s edge comes on top and is not in the nominal stress: see the hot places of the whole plate.',
  ],
};
