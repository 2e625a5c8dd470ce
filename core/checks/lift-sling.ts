import type { Check } from './check.ts';
import { constant } from './inputs.ts';
import { legInputs, liftCautions, ofLift, onEitherBasis, withLift } from './lift-inputs.ts';

/** Material factor by kind of sling. Source: 0027/ND Rev 11, 7.3.1. */
const materialFactor = { wire: 1.5, polyester: 1.65, HMPE: 2, 'other fibre': 2.5 } as const;

/** The sling that carries most, in the stage that pulls hardest. */
export const liftSling: Check = {
  id: 'lift-sling',
  title: 'Sling carries its part of the hook load',
  limitState: 'handling',
  source: [{ document: '0027/ND Guidelines for Marine Lifting', edition: 'Rev 11', clause: '5.6.12, 7.3.1, 7.7.1' }],
  places: () => ['slings'],
  applies: withLift,
  once: true,
  inputs: {
    ...legInputs,
    F_br: ofLift(
      'kN',
      'breaking strength of a sling by its certificate',
      'document: recovery',
      (_, { sling }) => sling.breakingStrength.si,
    ),
    g_f: constant(1.3, '1', 'load factor', '0027/ND, 7.3.1'),
    g_c: constant(1.3, '1', 'consequence factor', '0027/ND, 7.3.1'),
    g_w: constant(1.1, '1', 'wear and use, frequent', '0027/ND, 7.3.1'),
    g_m: ofLift(
      '1',
      'material factor: wire 1.5, polyester 1.65, HMPE 2, other fibre 2.5',
      '0027/ND, 7.3.1',
      (_, { sling }) => materialFactor[sling.kind],
    ),
    g_r: ofLift(
      '1',
      'reduction by the worse of termination and bend',
      'document: recovery',
      (_, { sling }) => sling.termination,
    ),
    k_min: constant(2.3, '1', 'least of the other factors together', '0027/ND, 7.3.1'),
  },
  steps: onEitherBasis(
    { symbol: 'F_s', expression: 'F_h * k_leg * k_SKL', unit: 'kN', meaning: 'pull in the leg that carries most' },
    {
      symbol: 'k_s',
      expression: 'max(g_f * g_c * g_r * g_w * g_m, k_min * g_r * g_w)',
      unit: '1',
      meaning: 'safety factor of the sling',
    },
    { symbol: 'F_max', expression: 'F_br / k_s', unit: 'kN', meaning: 'largest pull in a leg' },
  ),
  demand: 'F_s',
  capacity: 'F_max',
  second: {
    title:
      'upright legs that share alike; and all of the load in one leg, leaning as flat as 30 degrees over the horizontal',
    source: [
      { document: 'statics' },
      { document: 'sling tables', clause: 'twice the load at 30 degrees over the horizontal' },
    ],
    steps: [
      { symbol: 'F_low', expression: 'F_h / n', unit: 'kN', meaning: 'upright, shared alike' },
      { symbol: 'F_high', expression: '2 * F_h', unit: 'kN', meaning: 'one leg at 30 degrees' },
    ],
    of: 'F_s',
    low: 'F_low',
    high: 'F_high',
  },
  cautions: [
    ...liftCautions,
    'No aluminium ferrules in the sea. A sling bent over a pin thinner than itself loses half its strength.',
  ],
};
