import type { Model } from '../model.ts';
import { missing, type Check, type Input, type Missing, type Reading } from './check.ts';
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
import { weldClass } from './fatigue-panel-weld.ts';
import { fromSwing, graver, graverAtEnd, restOfPlate, type End } from './fatigue-swing.ts';
import { tubeStressCaution } from './fatigue-tube-stress.ts';
import { fieldPlaces, panelAt } from './field-inputs.ts';
import { sectionAtEnd } from './tube-inputs.ts';
import { weldAt, welded } from './weld-inputs.ts';

const stress = (end: End): Input => ({
  unit: 'MPa',
  meaning: `largest nominal stress of the tubes that the panel is welded to, force ${end}, no load factor`,
  from: fromSwing('grid of tubes'),
  read: (model, bay, situation): Reading => {
    const rest = restOfPlate.read(model, bay, situation);
    let most: number | null = null;
    for (const { tube } of panelAt(model, bay).bearings.filter(({ fixed }) => fixed)) {
      const forces = model.loads.swing[end].tubes.get(tube);
      if (!forces) return missing(`the forces inside tube ${tube}`);
      const { elasticY, area } = sectionAtEnd(model, tube);
      const stress = (M: number, N: number): number => Math.abs(M) / elasticY + Math.abs(N) / area;
      const gravest = graverAtEnd(model, end, rest, stress(forces.moment, forces.axial), ({ tubes }) => tubes[tube] && stress(tubes[tube].M, tubes[tube].N)); // prettier-ignore
      if (typeof gravest !== 'number') return gravest;
      most = most === null ? gravest : graver(rest, end, most, gravest);
    }
    return most ?? missing('a tube that the panel is welded to');
  },
});

/** By the length of a run along the tube, as of an attachment. */
function classAt(model: Model, bay: string): DetailClass | Missing {
  const { run } = weldAt(model, bay);
  const L = run?.si ?? Infinity;
  return weldClass(L <= 0.05 ? 80 : L <= 0.08 ? 71 : L <= 0.1 ? 63 : 56)(model, bay);
}

/** Crack in the tube's wall at the end of a run of an intermittent weld. */
export const fatigueWeldIntermittent: Check = {
  ...fatigueCheck,
  id: 'fatigue-weld-intermittent',
  title: 'Fatigue of a tube: ends of the runs of an intermittent weld',
  source: detailSources('Table 8.4, detail 1, by the length of a run'),
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = welded(model, bay);
    return applies !== true ? applies : weldAt(model, bay).pattern === 'intermittent' || 'the weld is continuous';
  },
  inputs: {
    s_up: stress('up'),
    s_dn: stress('down'),
    z: restOfPlate,
    ...damageInputs(classAt, 'opposite', () => fatigueWeldIntermittent),
  },
  steps: underBoth(damageSteps('opposite')),
  second: damageBounds('opposite'),
  cautions: [
    ...fatigueCautions,
    tubeStressCaution,
    'Every end of a run is a start for a crack and for crevice corrosion: under water a continuous weld is the rule.',
  ],
};
