import type { Model } from '../model.ts';
import { bolted, boltAt, boltClassAt, boltInputs } from './bolt-inputs.ts';
import { boltTension } from './bolt-tension.ts';
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
import { carbonSteel } from './fatigue-steel.ts';
import { atBothEnds, restOfField } from './fatigue-swing.ts';
import { fieldPlaces } from './field-inputs.ts';
import { constant } from './inputs.ts';

function classAt(model: Model, bay: string): DetailClass | Missing {
  const { family, title } = boltClassAt(model, bay);
  return carbonSteel({ family, title }) ?? { category: 50, thickness: boltAt(model, bay).diameter };
}

/** Crack across a bolt under changing tension, at its thread. */
export const fatigueBoltTension: Check = {
  ...fatigueCheck,
  id: 'fatigue-bolt-tension',
  title: 'Fatigue of a bolt in tension: thread',
  source: detailSources('Table 8.1, detail 14, category 50, size effect from 30 mm', true),
  places: fieldPlaces,
  applies: bolted,
  inputs: {
    ...atBothEnds(() => boltTension, 'F_t', 'F', 'kN', 'tension of the worst bolt, prying included'),
    A_s: boltInputs.A_s,
    z: restOfField,
    ...damageInputs(classAt, 'same', () => fatigueBoltTension),
    t_d: { ...boltInputs.d, meaning: 'diameter of the bolt' },
    t_ref: constant(30, 'mm', 'diameter up to which the category holds', 'EN 1993-1-9, Table 8.1, from memory'),
    k_x: constant(0.25, '1', 'exponent of the size effect', 'EN 1993-1-9, Table 8.1, from memory'),
  },
  steps: underBoth([
    { symbol: 's_up', expression: 'F_up / A_s', unit: 'MPa', meaning: 'stress in the thread, force up' },
    { symbol: 's_dn', expression: 'F_dn / A_s', unit: 'MPa', meaning: 'stress in the thread, force down' },
    ...damageSteps('same'),
  ]),
  second: damageBounds('same'),
  cautions: [
    ...fatigueCautions,
    'No preload is counted: a bolt that stays preloaded above its tension feels a part of this only, one that has lost its preload feels all of it.',
    'Bolts above class 8.8 under cathodic protection take up hydrogen, and crack without a cycle.',
  ],
};
