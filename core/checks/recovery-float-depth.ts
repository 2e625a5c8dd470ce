import { crushOverRated } from '../recovery/float-of.ts';
import type { Check } from './check.ts';
import { constant } from './inputs.ts';
import { onEitherBasis } from './lift-inputs.ts';
import { ofFloat, ofRecovery, withReleases } from './recovery-inputs.ts';

/** The float stands the pressure at its depth. */
export const recoveryFloatDepth: Check = {
  id: 'recovery-float-depth',
  title: 'Float stands its depth',
  limitState: 'handling',
  source: [
    { document: 'the maker’s rating' },
    { document: 'common practice, no source', clause: 'collapse at 1.25 times the depth or more' },
  ],
  places: () => ['recovery float'],
  applies: withReleases,
  once: true,
  inputs: {
    z: ofRecovery('m', 'depth', 'loads: water', (_, { document }) => document.water.depth.si),
    z_r: ofRecovery('m', 'rated depth', 'document: recovery', ({ float }) => float.ratedDepth.si),
    z_c: ofFloat('m', 'depth at which it collapses', 'document: recovery', ({ crushDepth }) => crushDepth),
    k_c: constant(crushOverRated, '1', 'collapse over use', 'common practice, no source'),
  },
  steps: onEitherBasis({ symbol: 'z_max', expression: 'min(z_r, z_c / k_c)', unit: 'm', meaning: 'largest depth' }),
  demand: 'z',
  capacity: 'z_max',
  second: {
    title: 'no deeper than it collapses',
    source: [{ document: 'the maker’s rating' }],
    steps: [{ symbol: 'z_high', expression: 'z_c', unit: 'm', meaning: 'collapse' }],
    of: 'z_max',
    high: 'z_high',
  },
  cautions: [
    'A float that leaked under pressure may come up holding it: open it as a vessel under pressure.',
    'One hollow float that implodes takes its neighbours with it: keep them apart or use foam.',
  ],
};
