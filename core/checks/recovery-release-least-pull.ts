import type { Check } from './check.ts';
import { constant } from './inputs.ts';
import { onEitherBasis } from './lift-inputs.ts';
import { ofFloat, ofRelease, releasePlaces, releaseCautions, withReleases } from './recovery-inputs.ts';

/** A release lets go even where its float hardly pulls. */
export const recoveryReleaseLeastPull: Check = {
  id: 'recovery-release-least-pull',
  title: 'Release lets go under the least pull',
  limitState: 'handling',
  source: [
    { document: 'the maker’s test at near-zero pull' },
    { document: 'common practice, no source', clause: 'twice the pull needed' },
  ],
  places: releasePlaces,
  applies: withReleases,
  once: true,
  inputs: {
    F_0: ofRelease('N', 'pull below which it may hang on', ({ leastPull }) => leastPull.si),
    k_l: constant(2, '1', 'pull there is over pull needed', 'common practice, no source'),
    B: ofFloat('N', 'net buoyancy at depth at the end', 'document: recovery', ({ net }) => net),
    F_gr: ofFloat('N', 'weight of growth on the float in water', 'loads: growth', ({ growth }) => growth),
  },
  steps: onEitherBasis(
    { symbol: 'F', expression: 'F_0 * k_l', unit: 'N', meaning: 'pull needed' },
    { symbol: 'F_there', expression: 'B - F_gr', unit: 'N', meaning: 'pull there is' },
  ),
  demand: 'F',
  capacity: 'F_there',
  second: {
    title: 'a float without growth',
    source: [{ document: 'Archimedes' }],
    steps: [{ symbol: 'F_high', expression: 'B', unit: 'N', meaning: 'without growth' }],
    of: 'F_there',
    high: 'F_high',
  },
  cautions: [...releaseCautions, 'Let the maker show a release at full pull and at none: each fails in its own way.'],
};
