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
import { panelStressAtBothEnds, stressBetween } from './fatigue-panel-stress.ts';
import { carbonSteel } from './fatigue-steel.ts';
import { restOfField } from './fatigue-swing.ts';
import { fieldPlaces, panelAt } from './field-inputs.ts';
import { plugged, plugInputs } from './weld-plug-inputs.ts';

const { d_p, p_near } = plugInputs;

/** EN 1993-1-9 has no plug weld. Category E of AISC 360, (11e8 · 329 / N)^(1/3) MPa, is 56.6 MPa at two million cycles. */
function classAt(model: Model, bay: string): DetailClass | Missing {
  const { material, thickness } = panelAt(model, bay);
  return carbonSteel(material) ?? { category: 56, thickness };
}

/** Crack from the rim of a plug weld into the panel. */
export const fatigueWeldPlug: Check = {
  ...fatigueCheck,
  id: 'fatigue-weld-plug',
  title: 'Fatigue of a panel: plug weld',
  source: [
    { document: 'AISC 360', edition: '2016', clause: 'Table A-3.1, 8.3: base metal at plug welds, category E', memory: true },
    ...detailSources('curves through category 56; Tables 8.1 to 8.10 list no plug weld', true),
  ],
  places: fieldPlaces,
  applies: plugged,
  inputs: {
    ...panelStressAtBothEnds,
    ...{ d_p, p_near },
    z: restOfField,
    ...damageInputs(classAt, 'opposite', () => fatigueWeldPlug),
  },
  steps: underBoth([...stressBetween('plugs', 'p_near', 'd_p'), ...damageSteps('opposite')]),
  range: [{ holds: 'p_near > d_p', otherwise: 'the plugs run into each other' }],
  second: damageBounds('opposite'),
  cautions: [
    ...fatigueCautions,
    'The class is that of AISC 360, in air; its curves in the sea are those of a steel detail of the same strength: an analogy, no test of plug welds under water is known here.',
    'The plugs’ own shear is a detail of its own; a plug’s root cannot be inspected.',
  ],
}; // prettier-ignore
