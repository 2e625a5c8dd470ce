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

/** Winch, stage by stage. */
export const liftWinch: Check = {
  id: 'lift-winch',
  title: 'Winch holds the hook load',
  limitState: 'handling',
  source: [{ document: 'DNV-RP-N103', clause: 'section 4, simplified method', memory: true }],
  places: hangingStages,
  applies: withLift,
  once: true,
  inputs: {
    ...stageInputs,
    F_w: ofLift(
      'kN',
      'what the winch may pull and its brake hold on the layer of rope in use, as stated',
      'document: recovery',
      (_, { winch }) => winch.si,
    ),
  },
  steps: onEitherBasis({ symbol: 'F_max', expression: 'F_w', unit: 'kN', meaning: 'capacity' }),
  demand: 'F',
  capacity: 'F_max',
  second: notUnderWeight,
  cautions: [...liftCautions, 'One part of line is taken: friction of sheaves is not counted.'],
};
