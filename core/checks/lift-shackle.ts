import type { Check } from './check.ts';
import { legInputs, liftCautions, ofLift, onEitherBasis, withLift } from './lift-inputs.ts';

/** The shackle in the leg that carries most. */
export const liftShackle: Check = {
  id: 'lift-shackle',
  title: 'Shackle works within its limit',
  limitState: 'handling',
  source: [{ document: 'EN 13889', edition: '2003', clause: 'working load limit, in line', memory: true }],
  places: () => ['shackles'],
  applies: withLift,
  once: true,
  inputs: {
    ...legInputs,
    WLL: ofLift(
      'kN',
      'working load limit by its mark',
      'document: recovery',
      (_, { shackle }) => shackle.workingLoad.si,
    ),
  },
  steps: onEitherBasis(
    {
      symbol: 'F_s',
      expression: 'F_h * k_leg * k_SKL',
      unit: 'kN',
      meaning: 'pull in the leg that carries most, dynamic load included',
    },
    { symbol: 'F_max', expression: 'WLL', unit: 'kN', meaning: 'working load limit' },
  ),
  demand: 'F_s',
  capacity: 'F_max',
  second: {
    title: 'upright legs that share alike',
    source: [{ document: 'statics' }],
    steps: [{ symbol: 'F_low', expression: 'F_h / n', unit: 'kN', meaning: 'upright, shared alike' }],
    of: 'F_s',
    low: 'F_low',
  },
  cautions: [
    ...liftCautions,
    'In line only: pulled from the side at 45 degrees a shackle is worth 70 % of its mark, at 90 degrees half.',
    'Secure the pin; moused or with a split pin where it stays in the sea.',
  ],
};
