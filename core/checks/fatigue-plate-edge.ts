import { isFilled } from '../geometry/geometry.ts';
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
import { panelStressAtBothEnds } from './fatigue-panel-stress.ts';
import { carbonSteel } from './fatigue-steel.ts';
import { restOfField } from './fatigue-swing.ts';
import { fieldInputs, fieldPlaces, panelAt } from './field-inputs.ts';

function classAt(model: Model, bay: string): DetailClass | Missing {
  const { material, thickness } = panelAt(model, bay);
  return carbonSteel(material) ?? { category: 125, thickness };
}

/** Crack from a cut edge of the panel: its outline, and the rims of holes that are no bolt holes. */
export const fatiguePlateEdge: Check = {
  ...fatigueCheck,
  id: 'fatigue-plate-edge',
  title: 'Fatigue of a panel: cut edge',
  source: [
    ...detailSources('Table 8.1, detail 5, category 125', true),
    {
      document: "Peterson's Stress Concentration Factors",
      edition: '3rd',
      clause:
        'round hole in a wide plate under simple bending; from memory, and right at both ends: 3 (Kirsch) for a small hole, (5 + 3 nu) / (3 + nu) for a large one (Reissner)',
      memory: true,
    },
  ],
  places: fieldPlaces,
  applies: () => true,
  inputs: {
    ...panelStressAtBothEnds,
    d_c: {
      unit: 'mm',
      meaning: 'smallest hole of the panel that is no bolt hole, 0 without',
      from: 'document: designs',
      read: (model, bay) => {
        const cut = panelAt(model, bay).cutouts.flatMap((hole) => (isFilled(hole) ? [] : [hole.diameter]));
        return cut.length > 0 ? Math.min(...cut) : 0;
      },
    },
    t: fieldInputs.t,
    z: restOfField,
    ...damageInputs(classAt, 'opposite', () => fatiguePlateEdge),
  },
  steps: underBoth([
    { symbol: 'r_c', expression: 'd_c / t', unit: '1', meaning: 'hole over thickness' },
    {
      symbol: 'K_h',
      expression: 'd_c > 0 * t ? 1.79 + 0.25 / (0.39 + r_c) + 0.81 / (1 + r_c^2) - 0.26 / (1 + r_c^3) : 1',
      unit: '1',
      meaning: 'stress at the rim of a hole over that around it; 1 at a straight edge',
    },
    { symbol: 's_up', expression: 'K_h * b_up', unit: 'MPa', meaning: 'stress at the cut edge, force up' },
    { symbol: 's_dn', expression: 'K_h * b_dn', unit: 'MPa', meaning: 'stress at the cut edge, force down' },
    ...damageSteps('opposite'),
  ]),
  second: damageBounds('opposite'),
  cautions: [
    ...fatigueCautions,
    'The class asks for a machine cut with shallow, regular drag lines, or a hand cut that is dressed; take off burrs and hardened edges, and round every inner corner.',
    'The largest stress of the panel is taken at its edge, wherever it stands.',
  ],
};
