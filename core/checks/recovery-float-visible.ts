import type { Check } from './check.ts';
import { onEitherBasis } from './lift-inputs.ts';
import { ofFloat, ofRecovery, withReleases } from './recovery-inputs.ts';
import { g, waterDensityOf } from '../water/sea-water.ts';
import { constant } from './inputs.ts';

/** The float stands far enough out of the water to be seen. */
export const recoveryFloatVisible: Check = {
  id: 'recovery-float-visible',
  title: 'Float is seen at the surface',
  limitState: 'handling',
  source: [{ document: 'Archimedes' }],
  places: () => ['recovery float'],
  applies: withReleases,
  once: true,
  inputs: {
    rho: ofRecovery('kg/m^3', 'density of the water', 'document: water', (_, { document }) => waterDensityOf(document)),
    g: constant(g, 'm/s^2', 'gravity', 'ISO 80000-3'),
    V: ofRecovery('m^3', 'volume of the float', 'document: recovery', ({ float }) => float.volume.si),
    m: ofRecovery('kg', 'its mass', 'document: recovery', ({ float }) => float.mass.si),
    u: ofRecovery('1', 'part filled with water at the end', 'document: recovery', ({ float }) => float.uptake),
    p: ofRecovery('1', 'part of its volume that must stand out', 'document: recovery', ({ float }) => float.visible),
    F_gr: ofFloat('N', 'weight of growth on it in water', 'loads: growth', ({ growth }) => growth),
    F_c: ofFloat('N', 'weight of the release that goes up with it', 'loads: recovery', ({ carried }) => carried),
    F_ro: ofFloat('N', 'weight of the rope that hangs from it, none where it floats', 'loads: recovery', ({ rope }) =>
      Math.max(0, rope),
    ),
  },
  steps: onEitherBasis(
    {
      symbol: 'F',
      expression: 'p * rho * V * g + F_gr + F_c + F_ro',
      unit: 'N',
      meaning: 'buoyancy that stands out, and what hangs from it',
    },
    { symbol: 'B', expression: 'g * (rho * V * (1 - u) - m)', unit: 'N', meaning: 'net buoyancy at the surface' },
  ),
  demand: 'F',
  capacity: 'B',
  second: {
    title: 'the dry float',
    source: [{ document: 'Archimedes' }],
    steps: [{ symbol: 'B_high', expression: 'g * (rho * V - m)', unit: 'N', meaning: 'dry' }],
    of: 'B',
    high: 'B_high',
  },
  cautions: [
    'Waves, dusk and glare hide what floats low: a light, a flag and a position sent by the float are worth more than volume.',
  ],
};
