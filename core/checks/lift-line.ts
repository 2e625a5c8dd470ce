import type { Check } from './check.ts';
import {
  hangingStages,
  liftCautions,
  notUnderWeight,
  ofLift,
  onEitherBasis,
  stageInputs,
  withLift,
} from './lift-inputs.ts';

/** Hoist line, stage by stage. */
export const liftLine: Check = {
  id: 'lift-line',
  title: 'Hoist line carries the hook load',
  limitState: 'handling',
  source: [
    { document: 'class rules for shiplifts', clause: 'hoist ropes at three times the load or more', memory: true },
    { document: 'EN 13414-1', clause: 'slings at five times', memory: true },
  ],
  places: hangingStages,
  applies: withLift,
  once: true,
  inputs: {
    ...stageInputs,
    F_br: ofLift(
      'kN',
      'breaking strength of the line by its certificate',
      'document: recovery',
      (_, { line }) => line.breakingStrength.si,
    ),
    k_d: ofLift(
      '1',
      'breaking strength over the largest pull',
      'document: recovery',
      (_, { line }) => line.designFactor,
    ),
  },
  steps: onEitherBasis({ symbol: 'F_max', expression: 'F_br / k_d', unit: 'kN', meaning: 'largest pull' }),
  demand: 'F',
  capacity: 'F_max',
  second: notUnderWeight,
  cautions: [
    ...liftCautions,
    'A line that has snapped taut once is inspected over its whole length before it is used again.',
  ],
};
