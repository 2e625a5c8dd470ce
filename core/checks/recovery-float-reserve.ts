import type { Check } from './check.ts';
import { g, waterDensityOf } from '../water/sea-water.ts';
import { constant } from './inputs.ts';
import { onEitherBasis } from './lift-inputs.ts';
import { ofFloat, ofRecovery, releaseCautions, withReleases } from './recovery-inputs.ts';

/** The float pulls its rope out at depth. */
export const recoveryFloatReserve: Check = {
  id: 'recovery-float-reserve',
  title: 'Float comes up with its rope',
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
    z: ofRecovery('m', 'depth', 'document: water', (_, { document }) => document.water.depth.si),
    z_r: ofRecovery('m', 'rated depth', 'document: recovery', ({ float }) => float.ratedDepth.si),
    c: ofRecovery(
      '1',
      'part of the volume lost at the rated depth',
      'document: recovery',
      ({ float }) => float.compression,
    ),
    u: ofRecovery('1', 'part filled with water at the end', 'document: recovery', ({ float }) => float.uptake),
    F_gr: ofFloat('N', 'weight of growth on it in water', 'loads: growth', ({ growth }) => growth),
    F_c: ofFloat('N', 'weight of the release that goes up with it', 'loads: recovery', ({ carried }) => carried),
    F_ro: ofFloat('N', 'weight of the rope that it pulls out, none where it floats', 'loads: recovery', ({ rope }) =>
      Math.max(0, rope),
    ),
    F_sn: ofFloat('N', 'pull set aside for a snag', 'loads: recovery', ({ snag }) => snag),
  },
  steps: onEitherBasis(
    { symbol: 'F', expression: 'F_gr + F_c + F_ro + F_sn', unit: 'N', meaning: 'pull needed' },
    {
      symbol: 'B',
      expression: 'g * (rho * V * (1 - c * z / z_r) * (1 - u) - m)',
      unit: 'N',
      meaning: 'net buoyancy at depth',
    },
  ),
  demand: 'F',
  capacity: 'B',
  range: [{ holds: 'z <= z_r', otherwise: 'the float lies deeper than its rated depth' }],
  second: {
    title: 'with both losses taken off the whole volume; and the dry float at the surface',
    source: [{ document: 'Archimedes' }],
    steps: [
      { symbol: 'B_low', expression: 'g * (rho * V * (1 - c - u) - m)', unit: 'N', meaning: 'all lost' },
      { symbol: 'B_high', expression: 'g * (rho * V - m)', unit: 'N', meaning: 'dry, at the surface' },
    ],
    of: 'B',
    low: 'B_low',
    high: 'B_high',
  },
  cautions: releaseCautions,
};
