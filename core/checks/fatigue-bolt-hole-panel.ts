import type { Model } from '../model.ts';
import { bolted, boltInputs, fixingAt, isSlotted } from './bolt-inputs.ts';
import { missing, type Check, type Missing } from './check.ts';
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
import { panelStressAtBothEnds, stressBetween } from './fatigue-panel-stress.ts';
import { carbonSteel } from './fatigue-steel.ts';
import { restOfField } from './fatigue-swing.ts';
import { fieldPlaces, panelAt } from './field-inputs.ts';

const { d_0, p_1 } = boltInputs;
const categories = { 'slip-resistant': 90, fitted: 80, clearance: 50 } as const;

function classAt(model: Model, bay: string): DetailClass | Missing {
  const fixing = fixingAt(model, bay);
  if (isSlotted(fixing)) return missing(`a class of a ${fixing.hole}: Table 8.1 of EN 1993-1-9 holds for round holes`);
  const { material, thickness } = panelAt(model, bay);
  return carbonSteel(material) ?? { category: categories[fixing.shear], thickness };
}

/** Crack from a bolt hole into the panel. */
export const fatigueBoltHolePanel: Check = {
  ...fatigueCheck,
  id: 'fatigue-bolt-hole-panel',
  title: 'Fatigue of a panel: bolt hole',
  source: detailSources(
    'Table 8.1, details 10, 12 and 13: one-sided joint, preloaded 90, fitted 80, clearance 50',
    true,
  ),
  places: fieldPlaces,
  applies: bolted,
  inputs: {
    ...panelStressAtBothEnds,
    ...{ d_0, p_1 },
    z: restOfField,
    ...damageInputs(classAt, 'opposite', () => fatigueBoltHolePanel),
  },
  steps: underBoth([...stressBetween('holes', 'p_1', 'd_0'), ...damageSteps('opposite')]),
  range: [{ holds: 'p_1 > d_0', otherwise: 'the holes run into each other' }],
  second: damageBounds('opposite'),
  cautions: [
    ...fatigueCautions,
    'Drill or ream the holes; punched or flame-cut holes are a lower class. The largest stress of the panel is taken at its holes.',
  ],
};
