import type { Check } from './check.ts';
import {
  damageBounds,
  damageInputs,
  damageSteps,
  detailSources,
  fatigueCautions,
  fatigueCheck,
  underBoth,
} from './fatigue-damage.ts';
import { weldClass } from './fatigue-panel-weld.ts';
import { atBothEnds, restOfField } from './fatigue-swing.ts';
import { fieldPlaces } from './field-inputs.ts';
import { weldPlug } from './weld-plug.ts';
import { plugged, plugInputs } from './weld-plug-inputs.ts';

/** Crack through a plug weld, from the slit between panel and tube round it. */
export const fatigueWeldPlugShear: Check = {
  ...fatigueCheck,
  id: 'fatigue-weld-plug-shear',
  title: 'Fatigue of a plug weld in shear',
  source: [
    { document: 'DNV-RP-C203', edition: '2016', clause: '2.3.5: throat of a weld, shear across it counted in full, curve W3', memory: true },
    ...detailSources('5(6); Table 8.5, detail 3, category 36'),
  ],
  places: fieldPlaces,
  applies: plugged,
  inputs: {
    ...atBothEnds(() => weldPlug, 'F_v', 'F', 'kN', 'shear of the plug with the largest pitch'),
    d_p: plugInputs.d_p,
    z: restOfField,
    // as a fillet's throat that is sheared across: front and back of the plug, the graver beside its flanks
    ...damageInputs(weldClass(36), 'same', () => fatigueWeldPlugShear),
  },
  steps: underBoth([
    { symbol: 'A_w', expression: 'pi / 4 * d_p^2', unit: 'mm^2', meaning: 'area of a plug where panel and tube meet' },
    { symbol: 's_up', expression: 'F_up / A_w', unit: 'MPa', meaning: 'shear stress of the plug, force up' },
    { symbol: 's_dn', expression: 'F_dn / A_w', unit: 'MPa', meaning: 'shear stress of the plug, force down' },
    ...damageSteps('same'),
  ]),
  second: damageBounds('same'),
  cautions: [
    ...fatigueCautions,
    'No table lists a plug weld in shear in the sea. Along a throat EN 1993-1-9 knows category 80 with slope 5, across it 36; AISC 360 (Table A-3.1, 8.4, from memory) category F in air, some 66 MPa at two million: the lowest of these is taken, in its curve in the sea.',
    'The plugs are counted as if the weld of the edge took none of the pull. Their root cannot be inspected: let the weld of the edge take the shear that comes with every wave.',
  ],
}; // prettier-ignore
