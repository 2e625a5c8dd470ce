import type { Check } from './check.ts';
import { constant } from './inputs.ts';
import { onEitherBasis } from './lift-inputs.ts';
import { ofFloat, ofRelease, releasePlaces, releaseCautions, withReleases } from './recovery-inputs.ts';

/** A release holds its float down, in waves and current. */
export const recoveryReleaseLoad: Check = {
  id: 'recovery-release-load',
  title: 'Release holds its float',
  limitState: 'handling',
  source: [
    { document: 'the maker’s rating' },
    { document: 'common practice, no source', clause: 'twice the steady pull in waves' },
  ],
  places: releasePlaces,
  applies: withReleases,
  once: true,
  inputs: {
    F_0: ofFloat('N', 'steady pull: float dry, with the current', 'loads: recovery', ({ waiting }) => waiting),
    k_w: constant(2, '1', 'waves, and jerks while lifting', 'common practice, no source'),
    F_r: ofRelease('kN', 'load rating', ({ rating }) => rating.si),
  },
  steps: onEitherBasis(
    { symbol: 'F', expression: 'F_0 * k_w', unit: 'kN', meaning: 'largest pull' },
    { symbol: 'F_max', expression: 'F_r', unit: 'kN', meaning: 'rating' },
  ),
  demand: 'F',
  capacity: 'F_max',
  second: {
    title: 'the steady pull at the least',
    source: [{ document: 'statics' }],
    steps: [{ symbol: 'F_low', expression: 'F_0', unit: 'kN', meaning: 'steady' }],
    of: 'F',
    low: 'F_low',
  },
  cautions: releaseCautions,
};
