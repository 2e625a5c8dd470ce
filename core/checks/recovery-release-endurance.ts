import type { Check } from './check.ts';
import { constant } from './inputs.ts';
import { onEitherBasis } from './lift-inputs.ts';
import { ofRecovery, ofRelease, releasePlaces, releaseCautions, withReleases } from './recovery-inputs.ts';

/** A release outlasts the deployment. */
export const recoveryReleaseEndurance: Check = {
  id: 'recovery-release-endurance',
  title: 'Release outlasts the deployment',
  limitState: 'handling',
  source: [
    { document: 'the maker’s endurance' },
    { document: 'common practice, no source', clause: 'a quarter of the time to spare' },
  ],
  places: releasePlaces,
  applies: withReleases,
  once: true,
  inputs: {
    T_d: ofRecovery('day', 'deployment', 'loads: recovery', ({ deployment }) => deployment.si),
    k_t: constant(1.25, '1', 'time to spare: weather, a vessel that comes late', 'common practice, no source'),
    T_b: ofRelease('day', 'life of the battery, or longest time of the link', ({ endurance }) => endurance.si),
  },
  steps: onEitherBasis(
    { symbol: 'T_need', expression: 'T_d * k_t', unit: 'day', meaning: 'time needed' },
    { symbol: 'T_there', expression: 'T_b', unit: 'day', meaning: 'endurance' },
  ),
  demand: 'T_need',
  capacity: 'T_there',
  second: {
    title: 'the deployment alone',
    source: [{ document: 'arithmetic' }],
    steps: [{ symbol: 'T_low', expression: 'T_d', unit: 'day', meaning: 'deployment' }],
    of: 'T_need',
    low: 'T_low',
  },
  cautions: [
    ...releaseCautions,
    'Cold takes capacity from batteries; a corroding link is as quick as its water is warm and salt.',
  ],
};
