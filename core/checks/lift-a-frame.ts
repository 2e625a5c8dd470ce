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

/** A-frame or crane, stage by stage. */
export const liftAFrame: Check = {
  id: 'lift-a-frame',
  title: 'A-frame or crane carries the hook load',
  limitState: 'handling',
  source: [
    { document: 'DNV-RP-N103', clause: 'section 4, simplified method', memory: true },
    { document: '0027/ND Guidelines for Marine Lifting', edition: 'Rev 11', clause: '5.5.1' },
  ],
  places: hangingStages,
  applies: withLift,
  once: true,
  inputs: {
    ...stageInputs,
    F_A: ofLift(
      'kN',
      'what A-frame or crane may carry at its reach, as stated',
      'document: recovery',
      (_, { aFrame }) => aFrame.si,
    ),
  },
  steps: onEitherBasis({ symbol: 'F_max', expression: 'F_A', unit: 'kN', meaning: 'capacity' }),
  demand: 'F',
  capacity: 'F_max',
  second: notUnderWeight,
  cautions: [
    ...liftCautions,
    'The capacity is the user’s word: at the reach, angle and side load of this lift, from the certificate.',
  ],
};
