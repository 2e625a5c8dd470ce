import { bolted, boltAt, boltInputs, fixingAt } from './bolt-inputs.ts';
import { boltShear } from './bolt-shear.ts';
import { missing, type Check, type Missing } from './check.ts';
import type { Model } from '../model.ts';
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
import { atBothEnds, restOfField } from './fatigue-swing.ts';
import { fieldPlaces } from './field-inputs.ts';

/** No curve serves: that for shear holds in air, for fitted bolts or a shear that does not turn round. */
const classAt = (model: Model, bay: string): DetailClass | Missing =>
  fixingAt(model, bay).shear === 'clearance'
    ? missing(
        'a detail category for bolts in clearance holes under shear that turns round: EN 1993-1-9 gives none, and the hole wears. Take fitted or slip-resistant bolts',
      )
    : missing(
        `an S-N curve for an M${Math.round(1000 * boltAt(model, bay).diameter)} in shear in the sea: category 100 with a slope of 5 (EN 1993-1-9, Table 8.1, detail 15) holds in air. Take slip-resistant bolts, which friction keeps from shear`,
      );

/** Crack across the shank of a bolt that bears the shear. */
export const fatigueBoltShear: Check = {
  ...fatigueCheck,
  id: 'fatigue-bolt-shear',
  title: 'Fatigue of a bolt in shear',
  source: detailSources('Table 8.1, detail 15', true),
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = bolted(model, bay);
    if (applies !== true) return applies;
    return (
      fixingAt(model, bay).shear !== 'slip-resistant' ||
      'friction carries the shear as long as the joint does not slip: see the check of slip'
    );
  },
  inputs: {
    ...atBothEnds(() => boltShear, 'F_v', 'F', 'kN', 'shear of the worst bolt'),
    A_s: boltInputs.A_s,
    z: restOfField,
    ...damageInputs(classAt, 'same', () => fatigueBoltShear),
  },
  steps: underBoth([
    { symbol: 's_up', expression: 'F_up / A_s', unit: 'MPa', meaning: 'shear stress, force up' },
    { symbol: 's_dn', expression: 'F_dn / A_s', unit: 'MPa', meaning: 'shear stress, force down' },
    ...damageSteps('same'),
  ]),
  second: damageBounds('same'),
  cautions: [...fatigueCautions],
};
